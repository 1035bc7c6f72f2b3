/** Words of a card that promise another angle than its pose. */
import { otherDegrees } from '../messages/en/author/words.ts';
import type { ExerciseCard, LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { anglesAlong, anglesAtStart, type Span } from '../wording/angles.ts';
import { brokenPromises, spanText, type Broken } from '../wording/brokenPromises.ts';
import { NAMES } from '../wording/promises.ts';
import { sentencesIn } from '../wording/sentences.ts';
import { refuse, warn } from './fieldPlace.ts';
import { exerciseSheet, type Text } from './text.ts';

/** A written number of degrees may lie so far beside the pose [choice]. */
const SAME_DEG = 5;

/** Under `Set up` the words speak of the start pose, elsewhere of the whole movement. A wrong number is an error. */
export function wordsAgainstAngle({ exercises }: LibraryFiles, placeOf: PlaceOf): Problem[] {
  return [...exercises.values()].flatMap((card) => {
    const [along, atStart] = [anglesAlong(card), anglesAtStart(card)];
    return exerciseSheet(card).texts.flatMap((text) => {
      const angles = isSetUp(card, text) ? atStart : along;
      return sentencesIn(text.text).flatMap((sentence) => {
        const at = (offset: number) =>
          ({ kind: 'exercise', id: card.id, path: text.path, offset: sentence.from + offset }) as const;
        return [
          ...brokenPromises(sentence.text, angles).map(({ offset, ...words }) =>
            warn(placeOf, at(offset), 'words-against-angle', words),
          ),
          ...wrongDegrees(sentence.text, along.hip).map(({ offset, ...words }) =>
            refuse(placeOf, at(offset), 'words-against-angle', words),
          ),
        ];
      });
    });
  });
}

function isSetUp({ body }: ExerciseCard, { path: [root, section] }: Text): boolean {
  return root === 'body' && body[Number(section)]?.heading === 'Set up';
}

/** Degrees written of the hip that are neither end of its bend. */
function wrongDegrees(sentence: string, hip: Span | null): Broken[] {
  if (hip === null || !/\bhips?\b/i.test(sentence)) return [];
  return [...sentence.matchAll(/(\d+(?:\.\d+)?) ?(?:°|degrees\b)/gi)].flatMap(
    ({ index, 0: words, 1: written }) => {
      const near = (deg: number) => Math.abs(Number(written) - deg) <= SAME_DEG;
      if (near(hip.leastDeg) || near(hip.mostDeg)) return [];
      return [
        {
          offset: index,
          ...otherDegrees(words, `${NAMES.hip} ${spanText(hip)}`),
        },
      ];
    },
  );
}
