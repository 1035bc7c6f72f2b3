/** Words of the schema as they are read on a button, where the word itself would not do. */

export const BUTTON_WORDS: Readonly<Record<string, string>> = {
  notAsked: 'Not asked',
  notSeen: 'Not seen',
  'walk-run': 'Walk and run',
  keep: 'Keep running',
  none: 'No running',
  unknown: 'Not known',
  auto: 'As the tests say',
  keepGoing: 'Keep going',
  mon: 'Mon',
  tue: 'Tue',
  wed: 'Wed',
  thu: 'Thu',
  fri: 'Fri',
  sat: 'Sat',
  sun: 'Sun',
};

/** @example stageWord(2) // => 'Stage 2' */
export function stageWord(stage: number): string {
  return `Stage ${stage}`;
}
