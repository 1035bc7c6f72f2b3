/** Random people, drawn once for all the laws of a file, each with what is made of them. */
import fc from 'fast-check';
import type { Consult } from '../../src/content/library.ts';

export interface Drawn<Made> {
  readonly consult: Consult;
  readonly made: Made;
}

/** The same people whoever asks, made when first asked for; without those of whom nothing is made. */
export function drawn<Made>(
  somebody: fc.Arbitrary<Consult>,
  draw: { readonly seed: number; readonly numRuns: number },
  make: (consult: Consult) => Made | null,
): () => readonly Drawn<Made>[] {
  let people: readonly Drawn<Made>[] | null = null;
  return () =>
    (people ??= fc.sample(somebody, draw).flatMap((consult) => {
      const made = make(consult);
      return made === null ? [] : [{ consult, made }];
    }));
}

/** Holds a law to every one of them; the first whom it does not hold for is named whole. */
export function holdsForAll<Made>(
  people: readonly Drawn<Made>[],
  law: (made: Made, consult: Consult) => void,
): void {
  for (const { consult, made } of people)
    try {
      law(made, consult);
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      throw new Error(`${said}\nfor ${JSON.stringify(consult)}`, { cause: error });
    }
}
