/** What stands in the slots of the stage, and what could. */

export const SLOT_WORDS = {
  none: 'no exercise',
  chosenHere: ', chosen here',
  another: 'Another',
  asProposed: 'As proposed',
  leaveOut: 'Leave out',
  fits: 'Fits now',
  nothingElse: 'Nothing else.',
  doesNotFit: 'Does not fit',
} as const;

/** Above a cap of the house. */
export function byDecisionText(title: string): string {
  return `${title}, by a decision`;
}
