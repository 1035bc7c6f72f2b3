/** What a sentence promises of hip, knee and trunk, held against the angles there are. */
import type { Angles, Span } from './angles.ts';
import { NAMES, PROMISES, promisesAny } from './promises.ts';

/** A phrase that promises another angle than the pose has. */
export interface Broken {
  readonly offset: number;
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** The phrases of a sentence that promise another angle, each with where it begins. */
export function brokenPromises(sentence: string, angles: Angles): Broken[] {
  if (!promisesAny(sentence)) return [];
  const taken = new Set<number>();
  return PROMISES.flatMap(({ phrase, joint, isKept, kept }) =>
    [...sentence.matchAll(phrase)].flatMap(({ index, 0: words }) => {
      const span = angles[joint];
      if (taken.has(index) || isDenied(sentence.slice(0, index))) return [];
      taken.add(index);
      if (span === null || isKept(span)) return [];
      return [
        {
          offset: index,
          found: `text with “${words.trim()}”, and the pose has ${NAMES[joint]} ${spanText(span)}`,
          expected: `text that agrees with the pose; these words mean ${kept}`,
          fix: 'say what the pose does, or mend the pose',
        },
      ];
    }),
  );
}

// "Do not let your hips bend", "rather than stand tall": said of what shall not be.
function isDenied(before: string): boolean {
  return /(?:\bnot|\bnever|\bwithout|\bno|n['’]t|\bthan|\binstead of)\s+(?:[\p{L}'’]+\s+){0,2}$/iu.test(
    before,
  );
}

/** @example spanText({ leastDeg: 5, mostDeg: 45 }) // => 'from 5° to 45°' */
export function spanText({ leastDeg, mostDeg }: Span): string {
  const [least, most] = [Math.round(leastDeg), Math.round(mostDeg)];
  return least === most ? `of ${most}°` : `from ${least}° to ${most}°`;
}
