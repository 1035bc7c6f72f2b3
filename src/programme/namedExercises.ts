/** Exercises the leaflet names besides the present ones: of each its picture and words, so that it can be done. */
import type { Messages } from '../messages/messages.ts';
import type { ExerciseCard } from '../content/library.ts';
import { cardWords } from './cardWords.ts';
import type { Decided } from '../decisions/decide.ts';
import type { Shown } from '../decisions/days/work.ts';
import { figureText } from './figureText.ts';
import { gentlyDone } from '../decisions/candidates/morningTask.ts';
import { painfulSide, type Person } from '../decisions/person/person.ts';

import type { Where } from '../messages/en/patient/named.ts';
import type { NamedExercise, NamedExercises } from './programme.ts';
import { pictureOf, type Picture } from '../decisions/candidates/scene.ts';

/** In the order morning check, flare, steps to come; each once, with every place that names it. */
export function namedExercises(
  say: Messages,
  { person, shown, following, morningTask, flareHolds }: Decided,
): NamedExercises {
  const present = new Set(shown[0].prescriptions.map(({ card }) => card.id));
  const named = [
    ...(morningTask === null ? [] : [doneNow(morningTask, { kind: 'morning-check' }, person)]),
    ...flareHolds.map(({ card }) => doneNow(card, { kind: 'flare' }, person)),
    // Of dated rungs every exercise stands among the exercises themselves.
    ...(following.length > 0 ? [] : shown.slice(1).flatMap((one) => laterOnes(one))),
  ].filter(({ card }) => !present.has(card.id));
  const cards = [...new Map(named.map(({ card }) => [card.id, card])).keys()];
  return {
    heading: say.NAMED_HEADING,
    exercises: cards.flatMap((id) => {
      const places = named.filter(({ card }) => card.id === id);
      const [first] = places;
      return first === undefined
        ? []
        : [
            exerciseOf(
              say,
              first,
              places.map(({ where }) => where),
              person,
            ),
          ];
    }),
  };
}

interface Named {
  readonly card: ExerciseCard;
  readonly where: Where;
  readonly picture: Picture | null;
  readonly weighted: boolean;
}

function doneNow(card: ExerciseCard, where: Where, person: Person): Named {
  const rangeDeg = gentlyDone(card, person)?.rangeDeg ?? null;
  const picture = pictureOf(card, rangeDeg, null, person);
  return { card, where, picture, weighted: false };
}

function laterOnes({ rung, prescriptions }: Shown): Named[] {
  return prescriptions.map(({ card, picture, at, byFeel }) => ({
    card,
    where: { kind: 'step', step: rung.step },
    picture,
    weighted: byFeel || at.loadKg > 0,
  }));
}

/** What is done today has all its words, what comes later how to begin and how to move. */
function exerciseOf(
  say: Messages,
  { card, picture, weighted }: Named,
  places: readonly Where[],
  person: Person,
): NamedExercise {
  const isLater = places.every(({ kind }) => kind === 'step');
  const shown = isLater
    ? { ...card, body: card.body.filter(({ heading }) => SHORT.includes(heading)) }
    : card;
  const { body, cautions } = cardWords(say, shown, weighted);
  const side = say.sideText(card, card.legs === 'together' ? 'both' : painfulSide(person.consult));
  return {
    card: card.id,
    title: card.title,
    side,
    where: say.whereText(places),
    figures: figureText(say, card.title, side, picture, false),
    body,
    cautions: isLater ? [] : cautions,
  };
}

/** The headings of a card that say how to do it. */
const SHORT: readonly string[] = ['Set up', 'Move'];
