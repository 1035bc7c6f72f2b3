/**
 * The plain, slow ways to the same answers, kept to check the fast ones and to time them against:
 * every subset of free muscles, a scan with bisection, a golden section.
 */

/** Load sharing by trying all 2^n sets of muscles off their lower bounds; the upper bound of the last muscle at the end. */
export function enumerateShares({ arms, hipNm, kneeNm, leastN, mostN, weights }) {
  const n = weights.length;
  const w = weights;
  let best = null;
  for (let set = 0; set < 2 ** n; set++) {
    const free = (i) => (set >> i) % 2 === 1;
    let [mh, mk, hh, hk, kk] = [hipNm, kneeNm, 0, 0, 0];
    for (let i = 0; i < n; i++) {
      const [rh, rk] = [arms.hipM[i], arms.kneeM[i]];
      if (free(i)) {
        hh += w[i] * rh * rh;
        hk += w[i] * rh * rk;
        kk += w[i] * rk * rk;
      } else {
        mh -= rh * leastN[i];
        mk -= rk * leastN[i];
      }
    }
    const pair = solvePair(hh, hk, kk, mh, mk);
    if (!pair) continue;
    const wished = w.map((wi, i) => wi * (pair[0] * arms.hipM[i] + pair[1] * arms.kneeM[i]));
    const fits = wished.every((force, i) =>
      free(i) ? force >= leastN[i] - 1e-7 : force <= leastN[i] + 1e-7,
    );
    if (!fits) continue;
    const forcesN = wished.map((force, i) => (free(i) ? force : leastN[i]));
    const cost = forcesN.reduce((sum, force, i) => sum + (force * force) / w[i], 0);
    if (!best || cost < best.cost) best = { forcesN, cost };
  }
  const held = best ? best.forcesN.findIndex((force, i) => force > mostN[i]) : -1;
  return held < 0 ? best : withHeld({ arms, hipNm, kneeNm, leastN, mostN, weights }, held);
}

/** The first root of `gap` between `low` and `high`: 72 steps, then 60 bisections; null without a sign change. */
export function scanRoot(gap, low, high) {
  const width = (high - low) / 72;
  for (let step = 0; step < 72; step++) {
    let [from, to] = [low + step * width, low + (step + 1) * width];
    if (gap(from) * gap(to) > 0) continue;
    const sign = Math.sign(gap(from));
    for (let i = 0; i < 60; i++) {
      const middle = (from + to) / 2;
      if (Math.sign(gap(middle)) === sign) from = middle;
      else to = middle;
    }
    return (from + to) / 2;
  }
  return null;
}

/** Where a function with one valley is least between `low` and `high`, 50 golden sections. */
export function goldenLow(cost, low, high) {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [low, high];
  let [left, right] = [to - ratio * (to - from), from + ratio * (to - from)];
  let [atLeft, atRight] = [cost(left), cost(right)];
  for (let step = 0; step < 50; step++) {
    if (atLeft < atRight) {
      [to, right, atRight] = [right, left, atLeft];
      left = to - ratio * (to - from);
      atLeft = cost(left);
    } else {
      [from, left, atLeft] = [left, right, atRight];
      right = from + ratio * (to - from);
      atRight = cost(right);
    }
  }
  return (from + to) / 2;
}

function solvePair(hh, hk, kk, mh, mk) {
  const det = hh * kk - hk * hk;
  if (det > 1e-12 * hh * kk) return [(mh * kk - mk * hk) / det, (mk * hh - mh * hk) / det];
  if (hh > 0 && Math.abs(mk - (hk / hh) * mh) < 1e-9) return [mh / hh, 0];
  if (kk > 0 && Math.abs(mh - (hk / kk) * mk) < 1e-9) return [0, mk / kk];
  return Math.abs(mh) < 1e-9 && Math.abs(mk) < 1e-9 ? [0, 0] : null;
}

// Exact because the cost is convex: a bound that the free optimum breaks is met by the bounded one.
function withHeld({ arms, hipNm, kneeNm, leastN, mostN, weights }, held) {
  const without = (list) => list.filter((_, i) => i !== held);
  const rest = enumerateShares({
    arms: { hipM: without(arms.hipM), kneeM: without(arms.kneeM) },
    hipNm: hipNm - arms.hipM[held] * mostN[held],
    kneeNm: kneeNm - arms.kneeM[held] * mostN[held],
    leastN: without(leastN),
    mostN: without(mostN),
    weights: without(weights),
  });
  const forcesN = [...rest.forcesN];
  forcesN.splice(held, 0, mostN[held]);
  return { forcesN, cost: rest.cost + mostN[held] ** 2 / weights[held] };
}
