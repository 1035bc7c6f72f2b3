/** An exercise card's front matter as the card the other rooms use. */
import type { Movement } from '../mechanics/movement.ts';
import type { ExerciseCard } from './library.ts';
import { drawnPicture } from './picture.ts';
import type { ProseSection } from './prose/block.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';
import { tempoOf } from './tempo.ts';

/** The card with the id of its file. Heights come out in metres; a card without a pose has no movement. */
export function exerciseCard(
  id: string,
  front: ExerciseFrontMatter,
  body: readonly ProseSection[],
): ExerciseCard {
  return {
    id,
    title: front.title,
    alsoCalled: front.alsoCalled,
    muscles: front.muscles,
    kind: front.kind,
    positions: front.positions,
    movement: movementOf(front),
    statedHipFlexion: statedHipFlexion(front),
    legs: legsOf(front),
    alternating: front.alternating ?? false,
    pickUpHeightM: front.pickUpHeightCm === undefined ? null : front.pickUpHeightCm / 100,
    props: front.props,
    hands: front.hands ?? null,
    picture: front.picture === undefined ? null : drawnPicture(front.picture),
    equipment: front.equipment,
    needs: front.needs,
    tempo: tempoOf(front.tempo),
    easier: front.easier ?? null,
    harder: front.harder ?? null,
    fewAtFirst: front.fewAtFirst ?? false,
    landmark: front.landmark ?? null,
    photos: front.photos ?? [],
    cautions: front.cautions,
    withWeight: front.withWeight,
    evidence: front.evidence,
    changed: front.changed,
    reviewedOn: front.reviewedOn,
    nextReviewOn: front.nextReviewOn,
    body,
  };
}

function movementOf({ start, end, ...front }: ExerciseFrontMatter): Movement | null {
  if (start === undefined) return null;
  return {
    supports: front.supports ?? [],
    mode: front.mode ?? 'active',
    horizontal: front.horizontal ?? 'minEffort',
    start,
    range: front.range,
    ...(end === undefined ? {} : { end }),
    ...(front.solve === undefined ? {} : { solve: front.solve }),
    ...(front.loadAt === undefined ? {} : { loadAt: front.loadAt }),
  };
}

function statedHipFlexion({
  peakHipFlexionDeg,
  mark,
}: ExerciseFrontMatter): ExerciseCard['statedHipFlexion'] {
  return peakHipFlexionDeg === undefined || mark === undefined ? null : { deg: peakHipFlexionDeg, mark };
}

// A pose that sets the other leg apart works one leg at a time; the symmetric pose works both.
function legsOf({ start, legs }: ExerciseFrontMatter): ExerciseCard['legs'] {
  if (start === undefined) return legs ?? 'together';
  return start.other === undefined ? 'together' : 'each';
}
