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

/** Around the controls. */
export const FIELD_WORDS = {
  consult: 'Consult',
  notes: 'Notes for the record',
  cannotEdit:
    'This file cannot be changed here: its head is not what a consult begins with. Mend it in an editor and open it again.',
  needed: 'needed',
  notRecorded: 'Not recorded',
  askedNone: 'Asked, none',
  add: 'Add',
  none: 'None',
  isNone: 'none',
  takeOut: 'Take out',
} as const;

export function mustBeText(expected: string): string {
  return `must be ${expected}`;
}

/** @example takeOutText('Dumbbells', 2) // => 'Take out Dumbbells 2' */
export function takeOutText(label: string, place: number): string {
  return `Take out ${label} ${place}`;
}

export function addToText(label: string): string {
  return `Add to ${label}`;
}
