/** Degrees at the interface, radians only inside a formula. */

/** Radians of an angle in degrees. @example toRadians(180) // => 3.141592653589793 */
export function toRadians(deg: number): number {
  return (deg * Math.PI) / 180;
}

/** Degrees of an angle in radians. @example toDegrees(Math.PI) // => 180 */
export function toDegrees(rad: number): number {
  return (rad * 180) / Math.PI;
}
