/** What a bend looks like for this body: the model's landmarks turned round, from words to degrees. */
import { cappedAngleOf } from '../../content/guardedAngle.ts';
import { bodyOf } from '../../decisions/person/body.ts';
import { distanceTo, isPosed, modelIn } from '../../decisions/person/model.ts';
import { intervalFrom } from '../../mechanics/sweep.ts';
import { landmarks } from '../../mechanics/landmark.ts';
import { seenText } from '../../messages/en/desk/seen.ts';
import type { Ask, Landmark } from '../talk.ts';
import type { Bench } from './bench.ts';

/** Every so many degrees of the card's way is looked at. */
const GRAIN_DEG = 5;
const MOST_DEG = 140;

/** Of a card's first landmark that can be seen, each way of saying it once, at the fewest degrees that look so. */
export function landmarksOf(
  { card: id, protocol, heightM, massKg }: Extract<Ask, { ask: 'landmarks' }>,
  { library, workshop }: Bench,
): readonly Landmark[] {
  const card = library.exercises.get(id);
  const angle = library.protocols.get(protocol)?.angle;
  if (card === undefined || angle === undefined || !isPosed(card) || card.movement.range === 'fixed')
    return [];
  const size = { ...(heightM === null ? {} : { heightM }), ...(massKg === null ? {} : { massKg }) };
  const model = modelIn(workshop.models, library.version, bodyOf(size, library.clinic), cappedAngleOf(angle));
  const gentleEnd = model.gentleEnd(card);
  const seen = degrees().flatMap((deg): Landmark[] => {
    const way = distanceTo(card, deg, model);
    if (way <= 0 || way >= 1) return [];
    const found = landmarks(card.movement, model.body, 0, intervalFrom(gentleEnd, way), gentleEnd);
    const words = found.flatMap((one) => seenText(one) ?? []);
    return words[0] === undefined ? [] : [{ words: words[0], deg }];
  });
  return seen.filter(({ words }, at) => seen.findIndex((one) => one.words === words) === at);
}

function degrees(): number[] {
  return Array.from({ length: MOST_DEG / GRAIN_DEG }, (_, at) => (at + 1) * GRAIN_DEG);
}
