/** What is said beside the form, around what is of the leaflet itself. */

export const BESIDE_WORDS = {
  beside: 'Leaflet as it will be',
  reading: 'The library is being read.',
  underWay: 'Still to be asked',
  refused: 'No programme from this',
  old: 'This is the last whole programme, from before the last changes.',
  week: 'The week',
  exercises: 'Exercises',
  why: 'How far, and what decided it',
  ladder: 'Squeeze of all cards, the chosen ones marked',
  passedOver: 'Passed over, and why',
  leaflet: 'The leaflet',
  close: 'Close',
} as const;

export function faultText(fault: string): string {
  return `The desk could not work this out: ${fault}`;
}

/** @example lineOf('consults/otter-r1.md', 3) // => 'consults/otter-r1.md, line 3' */
export function lineOf(file: string, line: number): string {
  return `${file}, line ${line}`;
}

/** A Problem at its field. */
export function problemText(
  label: string,
  { found, expected, fix }: { readonly found: string; readonly expected: string; readonly fix: string },
): string {
  return `${label}: ${found}; must be ${expected}. ${fix}`;
}

/** @example stageText('2', 'Slow and heavy', 1) // => 'Stage 2: Slow and heavy. Step 1.' */
export function stageText(chosen: string, name: string, step: number): string {
  return `${chosen === 'keepGoing' ? 'Keep going' : `Stage ${chosen}`}: ${name}. Step ${step}.`;
}

/** @example whyText('3 sets') // => 'Why 3 sets' */
export function whyText(number: string): string {
  return `Why ${number}`;
}

/** @example decidedByText('the tests') // => 'Decided by the tests.' */
export function decidedByText(decidedBy: string): string {
  return `Decided by ${decidedBy}.`;
}
