/** How many of something there are, in words. */

/** Files found of each kind, right or wrong. */
export interface Counts {
  readonly exercises: number;
  readonly advice: number;
  readonly protocols: number;
  readonly consults: number;
}

/** @example counted(1, 'consult') // => '1 consult' */
export function counted(count: number, noun: string): string {
  return `${count === 0 ? 'no' : count} ${noun}${count === 1 ? '' : 's'}`;
}

/** @example libraryText({ exercises: 61, advice: 17, protocols: 3 }) // => '61 exercise cards, 17 advice cards, 3 protocols' */
export function libraryText({ exercises, advice, protocols }: Omit<Counts, 'consults'>): string {
  return [
    counted(exercises, 'exercise card'),
    counted(advice, 'advice card'),
    counted(protocols, 'protocol'),
  ].join(', ');
}
