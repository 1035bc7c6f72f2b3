/** A card's words and numbers held against what its figure shows. */
import type { ExerciseCard, LibraryFiles } from '../content/library.ts';
import type { Path } from '../content/path.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { REFERENCE_BODY } from '../mechanics/body.ts';
import type { Look, SeenFrame } from '../mechanics/seen.ts';
import { modelOf } from '../decisions/person/model.ts';
import { pictureFor } from '../decisions/candidates/scene.ts';
import { HELD, MOVED } from '../messages/en/author/pictured.ts';
import {
  arcAgainstNumber,
  entersThing,
  FIGURE_MISSING,
  footFloats,
  handInTheAir,
  saidToMove,
} from '../messages/en/author/poses.ts';
import type { CureWords } from '../messages/shapes.ts';
import { isShown } from './picturedWords.ts';
import { sentencesIn } from '../wording/sentences.ts';
import { warn } from './fieldPlace.ts';
import { exerciseSheet } from './text.ts';

/** Reaching into a thing by less is the line's own width, metres [choice]. */
const ENTERS_FROM_M = 0.02;
/** What is said to move is seen to move from here on, metres [choice]. */
const MOVES_FROM_M = 0.05;
/** A foot that stands hangs no higher over its ground, metres [choice]. */
const FLOATS_FROM_M = 0.03;
/** An arc under this is a hook beside a number; arc and number may differ by so much, degrees [choice]. */
const ARC = { fromDeg: 12, withinDeg: 6 } as const;

/** Warnings of every card whose figure is missing or shows something else than its words; `look` reads drawings. */
export function againstPictures({ exercises }: LibraryFiles, look: Look, placeOf: PlaceOf): Problem[] {
  const model = modelOf(REFERENCE_BODY);
  return [...exercises.values()].flatMap((card) => {
    const scene = pictureFor(card, null, null, model, 'right')?.scene ?? null;
    const at = (path: Path, offset?: number) =>
      ({ kind: 'exercise', id: card.id, path, ...(offset === undefined ? {} : { offset }) }) as const;
    if (scene === null)
      return card.movement === null ? [warn(placeOf, at(['title']), 'figure-missing', FIGURE_MISSING)] : [];
    const seen = look(scene);
    return [
      ...seen.flatMap((frame, index) =>
        drawnFaults(frame).map(({ code, ...words }) =>
          warn(placeOf, at(framePath(card, index)), code, words),
        ),
      ),
      ...saidFaults(card, seen).map(({ path, offset, code, ...words }) =>
        warn(placeOf, at(path, offset), code, words),
      ),
    ];
  });
}

function framePath({ movement }: ExerciseCard, index: number): Path {
  if (movement === null) return ['picture', 'frames', index];
  return [index === 0 ? 'start' : 'end'];
}

type Drawn = CureWords & {
  readonly code: 'body-enters-thing' | 'arc-against-number' | 'foot-off-the-ground';
};

/** What a drawing alone shows to be wrong. */
export function drawnFaults({ entered, arcDeg, shownDeg, floatsM }: SeenFrame): readonly Drawn[] {
  const into = entered.find(({ depthM }) => depthM > ENTERS_FROM_M);
  return [
    ...(into === undefined ? [] : [{ code: 'body-enters-thing', ...entersThing(into) } as const]),
    ...(isArcWrong(arcDeg, shownDeg)
      ? [{ code: 'arc-against-number', ...arcAgainstNumber(arcDeg ?? 0, shownDeg, ARC) } as const]
      : []),
    ...(floatsM > FLOATS_FROM_M ? [{ code: 'foot-off-the-ground', ...footFloats(floatsM) } as const] : []),
  ];
}

function isArcWrong(arcDeg: number | null, shownDeg: number | null): boolean {
  if (arcDeg === null) return shownDeg !== null && Math.abs(shownDeg) >= ARC.fromDeg;
  return shownDeg === null || Math.abs(shownDeg) < ARC.fromDeg || Math.abs(arcDeg - shownDeg) > ARC.withinDeg;
}

interface Said extends CureWords {
  readonly code: 'hand-in-the-air' | 'said-to-move-stays';
  readonly path: Path;
  readonly offset: number;
}

/** What the card says under `Set up` and `Move` and its figure does not show. */
export function saidFaults(card: ExerciseCard, seen: readonly SeenFrame[]): readonly Said[] {
  return exerciseSheet(card).texts.flatMap(({ path, text }) => {
    const heading = path[0] === 'body' ? card.body[Number(path[1])]?.heading : null;
    if (heading !== 'Set up' && heading !== 'Move') return [];
    return sentencesIn(text).flatMap((sentence) => {
      const field = { path, offset: sentence.from };
      return [
        ...(heading === 'Set up'
          ? handFaults(sentence.text, seen).map((words) => ({ ...field, ...words }))
          : []),
        ...(heading === 'Move'
          ? moveFaults(sentence.text, seen).map((words) => ({ ...field, ...words }))
          : []),
      ];
    });
  });
}

function handFaults(sentence: string, seen: readonly SeenFrame[]): readonly Omit<Said, 'path' | 'offset'>[] {
  // What is left to the reader need not be drawn.
  if (/\bif you (?:like|must)\b/i.test(sentence)) return [];
  const said = HELD.find(({ phrase }) => phrase.test(sentence));
  if (said === undefined) return [];
  const first = seen.filter((_, index) => index === 0);
  if (first.every(({ hands }) => said.touches.some((touched) => hands.includes(touched)))) return [];
  return [{ code: 'hand-in-the-air', ...handInTheAir(said.name) }];
}

function moveFaults(sentence: string, seen: readonly SeenFrame[]): readonly Omit<Said, 'path' | 'offset'>[] {
  const said = MOVED.find(({ phrase }) => phrase.test(sentence));
  const [first, last] = [seen[0], seen[seen.length - 1]];
  if (said === undefined || first === undefined || last === undefined || seen.length < 2) return [];
  if (isShown(said.moves, first, last, MOVES_FROM_M)) return [];
  return [{ code: 'said-to-move-stays', ...saidToMove(said.name) }];
}
