/** The words after `npm run fuzz --`. */
import { FAMILIES } from './families.ts';

export interface FuzzFlags {
  /** The names of those that are run, in their order. */
  readonly families: readonly string[];
  /** For each family. */
  readonly seconds: number;
  readonly seed: number;
  /** The number of the first case; the case of a number is the same whatever ran before it. */
  readonly from: number;
  /** Cases at most of each family. */
  readonly cases: number;
  /** Whether each case is printed as it was made. */
  readonly show: boolean;
}

const NUMBERS = ['seconds', 'seed', 'from', 'cases'] as const;

/** The flags, or a sentence that says what is wrong with them. */
export function flagsOf(words: readonly string[]): FuzzFlags | string {
  const names = FAMILIES.map(({ name }) => name);
  const flags = {
    families: names,
    seconds: 60,
    // Another place to begin in every run; it is printed, so that the run can be repeated.
    seed: Date.now() % 1_000_000,
    from: 1,
    cases: Infinity,
    show: false,
  };
  const left = [...words];
  for (let word = left.shift(); word !== undefined; word = left.shift()) {
    const flag = word.replace(/^--/, '');
    if (flag === 'show') flags.show = true;
    else if (flag === 'family') {
      const name = left.shift() ?? '';
      if (!names.includes(name)) return `There is no family ${name}: ${names.join(', ')}.`;
      flags.families = [name];
    } else if (isNumberFlag(flag)) {
      const value = left.shift() ?? '';
      if (!/^\d+$/.test(value)) return `--${flag} needs a whole number, not ${value}.`;
      flags[flag] = Number(value);
    } else return `There is no ${word}: --family, --seconds, --seed, --from, --cases, --show.`;
  }
  return flags;
}

function isNumberFlag(flag: string): flag is (typeof NUMBERS)[number] {
  return (NUMBERS as readonly string[]).includes(flag);
}
