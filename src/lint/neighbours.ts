/** Easier and harder cards against what the model says of them. */
import { misplaced } from '../messages/en/author/library.ts';
import type { ExerciseCard, Library } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { NOT_SEPARABLE } from '../mechanics/bracket.ts';
import { referenceBody } from '../decisions/person/body.ts';
import { figuresOf, quickFigures, type Figures } from './figures.ts';
import { warn } from './fieldPlace.ts';

/** A figure that is compared, and the difference below which it says nothing [choice]. */
interface Measure {
  readonly figure: keyof Figures;
  readonly least: number;
}

const SQUEEZE: Measure = { figure: 'compressionBw', least: 0.1 };
const HIP_MOMENT: Measure = { figure: 'hipMomentNm', least: 5 };
const PULL: Measure = { figure: 'tensionBw', least: 0.1 };
const STRENGTH: Measure = { figure: 'demand', least: 0.05 };

/**
 * Easier cards that squeeze or load the hip more, and harder ones that ask for less of everything, by more than the
 * model can tell apart. Cards without a pose are left out.
 */
export function misplacedNeighbours({ exercises, clinic }: Library, placeOf: PlaceOf): Problem[] {
  const body = referenceBody(clinic);
  const quick = remembering((card) => quickFigures(card, body));
  const full = (card: ExerciseCard) => figuresOf(card, body);
  return [...exercises.values()].flatMap((card) =>
    RULES.flatMap(({ key, code, rule }) => {
      const other = exercises.get(card[key] ?? '');
      // What the quick figures say is looked at in full before anybody is told.
      if (other === undefined || faultBy(quick, card, other, rule) === null) return [];
      const fault = faultBy(full, card, other, rule);
      if (fault === null) return [];
      return [
        warn(placeOf, { kind: 'exercise', id: card.id, path: [key] }, code, misplaced(other.id, fault, key)),
      ];
    }),
  );
}

/** The measure by which a neighbour is on the wrong side of a card; undefined when it is on the right one. */
type Rule = (own: Figures, its: Figures) => Measure | undefined;

const RULES: readonly {
  readonly key: 'easier' | 'harder';
  readonly code: 'easier-is-harder' | 'harder-is-easier';
  readonly rule: Rule;
}[] = [
  { key: 'easier', code: 'easier-is-harder', rule: isHarder },
  { key: 'harder', code: 'harder-is-easier', rule: isEasier },
];

function isHarder(own: Figures, its: Figures): Measure | undefined {
  return [SQUEEZE, HIP_MOMENT].find((measure) => isMore(its, own, measure));
}

// Less squeeze with more pull may well be harder; less of everything is not.
function isEasier(own: Figures, its: Figures): Measure | undefined {
  const measures = [SQUEEZE, HIP_MOMENT, PULL, STRENGTH];
  if (measures.some(({ figure }) => its[figure] > own[figure])) return undefined;
  return measures.find((measure) => isMore(own, its, measure));
}

function isMore(figures: Figures, than: Figures, { figure, least }: Measure): boolean {
  const [value, other] = [figures[figure], than[figure]];
  return value > other * (1 + NOT_SEPARABLE) && value - other > least;
}

interface Fault {
  readonly figure: keyof Figures;
  readonly own: number;
  readonly its: number;
}

type FiguresOf = (card: ExerciseCard) => Figures | null;

function remembering(figures: FiguresOf): FiguresOf {
  const known = new Map<ExerciseCard, Figures | null>();
  return (card) => {
    if (!known.has(card)) known.set(card, figures(card));
    return known.get(card) ?? null;
  };
}

function faultBy(figures: FiguresOf, card: ExerciseCard, other: ExerciseCard, rule: Rule): Fault | null {
  const [own, its] = [figures(card), figures(other)];
  const measure = own === null || its === null ? undefined : rule(own, its);
  if (own === null || its === null || measure === undefined) return null;
  const { figure } = measure;
  return { figure, own: own[figure], its: its[figure] };
}
