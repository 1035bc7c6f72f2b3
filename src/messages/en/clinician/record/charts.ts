/** Words of the record's charts: the range ruler of an exercise and the ladder of all cards by squeeze. */

/** What the keep-going stage is called on a flag in a chart, where its name has no room. */
export const KEEP_GOING_FLAG = 'keep going';

/** Text alternative of a range ruler; whole degrees. */
export function recordRulerAlt(
  fromDeg: number,
  toDeg: number,
  caps: readonly { readonly stage: string; readonly capDeg: number }[],
): string {
  const words = caps.map(({ stage, capDeg }) => `stage ${stage} up to ${capDeg}°`).join('; ');
  return `Hip bend from ${fromDeg}° to ${toDeg}° of 120°. ${words}.`;
}

/** Text alternative of the ladder; body weights. */
export function recordLadderAlt(cards: number, leastBw: number, mostBw: number): string {
  return `${cards} cards from ${leastBw} to ${mostBw} body weights of squeeze; cards of one bracket are not told apart. Model estimate.`;
}
