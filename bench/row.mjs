// What a part of the bench measured, as data: handed to bench.mjs where that started the part, else printed as a line.

/**
 * A row of the table. `value` null: it could not be measured here. `limit` is what the value must stay below, with
 * `atLeast` what it must reach; left out, nothing is judged. `ratio` sets it against something else done for comparison.
 * @typedef {{
 *   what: string, value: number | null, unit: string, limit?: number, atLeast?: boolean,
 *   ratio?: { times: number, to: string },
 * }} Row
 */

/** Hands on a row. @param {Row} row */
export function tell(row) {
  if (process.send !== undefined) process.send(row);
  else {
    console.log(`${isMissed(row) ? 'MISSED ' : ''}${cellsOf(row).filter(Boolean).join(' | ')}`);
    if (isMissed(row)) process.exitCode = 1;
  }
}

/** Whether the value does not keep its limit. @param {Row} row */
export function isMissed({ value, limit, atLeast = false }) {
  if (value === null || limit === undefined) return false;
  return atLeast ? value < limit : value >= limit;
}

/** What, measured, limit and ratio as they are printed; an empty text where there is none. @param {Row} row */
export function cellsOf({ what, value, unit, limit, atLeast = false, ratio }) {
  return [
    what,
    value === null ? 'not measured' : `${figures(value)} ${unit}`,
    limit === undefined ? '' : `${atLeast ? 'at least' : 'under'} ${limit} ${unit}`,
    ratio === undefined ? '' : `${figures(ratio.times)} × ${ratio.to}`,
  ];
}

/** Three figures that say something. */
function figures(value) {
  return value.toFixed(value >= 100 ? 0 : value >= 10 ? 1 : 2);
}
