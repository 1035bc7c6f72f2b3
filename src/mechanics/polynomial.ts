/** The form in which the muscle geometry was fitted: a polynomial in the joint angle over 90 degrees. */

/**
 * The polynomial with `coefficients` in ascending powers of angle / 90, the angle held inside `heldDeg`.
 * Result in the coefficients' unit.
 */
export function polynomial(
  coefficients: readonly number[],
  angleDeg: number,
  heldDeg: readonly [number, number],
): number {
  const x = held(angleDeg, heldDeg) / 90;
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--)
    sum = sum * x + (coefficients[power] as number);
  return sum;
}

/** Its integral from 0 to the angle, in the coefficients' unit times radians. */
export function polynomialIntegral(
  coefficients: readonly number[],
  angleDeg: number,
  heldDeg: readonly [number, number],
): number {
  const x = held(angleDeg, heldDeg) / 90;
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--)
    sum = sum * x + (coefficients[power] as number) / (power + 1);
  return (Math.PI / 2) * (sum * x);
}

function held(angleDeg: number, heldDeg: readonly [number, number]): number {
  return Math.min(heldDeg[1], Math.max(heldDeg[0], angleDeg));
}
