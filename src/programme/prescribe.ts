/** One exercise on one rung: its cells, how far in landmarks, its picture, and what the model says of it. */
import type { ExerciseCard, Slot } from '../content/library.ts';
import type { ChangeKind } from '../dose/dose.ts';
import type { KitLoad } from '../dose/kit.ts';
import type { Changed, Prescribed, Rung } from '../dose/rung.ts';
import { landmarks, type Landmark } from '../mechanics/landmark.ts';
import { stretchFrom } from '../mechanics/sweep.ts';
import { roundTo } from '../units/round.ts';
import type { Weekday } from '../units/weekday.ts';
import type { WeekPlan } from '../week/plan.ts';
import { cellsOf, type CellFacts } from './cells.ts';
import { cardOf, type Choice } from './choose.ts';
import { distanceTo, isPosed, type PosedCard } from './model.ts';
import { boundsOf, type Bounds, type Person } from './person.ts';
import { landmarkText, landmarkValue } from './phrases/landmarks.ts';
import { pictureOf, shownDeg, type Picture } from './scene.ts';
import { CELLS, type Cell, type CellName, type ModelEstimate } from './programme.ts';
import type { Session } from './session.ts';

export interface Prescription {
  readonly choice: Choice;
  readonly card: ExerciseCard;
  readonly at: Prescribed;
  readonly load: KitLoad | null;
  readonly cells: readonly Cell[];
  readonly howFar: readonly string[];
  readonly picture: Picture | null;
  readonly estimate: ModelEstimate | null;
}

/** Every exercise of a rung, in the order of the session. */
export function prescribe(
  session: Session,
  rung: Rung,
  person: Person,
  bounds: Bounds,
  plan: WeekPlan,
): Prescription[] {
  return session.choices.map((choice, index) => {
    const asked = rung.exercises[index] as Prescribed;
    const own = overridesOf(asked.card, person);
    const at = withOverrides(asked, own);
    const card = cardOf(person, at.card);
    const load = choice.fit.loads.find(({ loadKg }) => loadKg === at.loadKg) ?? null;
    const picture = isPosed(card) ? pictureOf(card, at.rangeDeg, load, person) : null;
    const far = isPosed(card) ? farLandmarks(card, at, person) : [];
    const howFar = far.map(landmarkText);
    const facts: CellFacts = {
      step: rung.step,
      slot: choice.slot,
      at,
      changes: changesOf(session, rung, choice.slot),
      startLoad: choice.fit.load,
      load,
      holdDecidedBy: session.holds.get(choice.slot.name) ?? null,
      fewerSetsForMinutes: session.gaveUp.some(
        ({ what, exercise }) => what === 'sets' && exercise === choice.slot.name,
      ),
      rangeDecidedBy: choice.fit.rangeDecidedBy,
      rangeInputs: rangeInputs(choice, at, person, bounds),
      shownDeg: degOf(card, at),
      howFar: farCell(card, at, far),
      way: picture?.way ?? 'out',
      days: daysOf(choice.slot, plan),
      overrides: own,
      byRule: new Map<CellName, number | string | null>(NUMBERS.map((name) => [name, numberOf(asked, name)])),
    };
    return {
      choice,
      card,
      at,
      load,
      cells: cellsOf(facts),
      howFar:
        facts.howFar.text === ''
          ? howFar
          : [facts.howFar.text, ...howFar.filter((text) => text !== facts.howFar.text)],
      picture,
      estimate: isPosed(card) ? estimateOf(card, at, person) : null,
    };
  });
}

type Own = ReadonlyMap<CellName, { readonly value: number | string; readonly reason: string }>;

const NUMBERS = [
  'sets',
  'repetitions',
  'holdSeconds',
  'restSeconds',
  'timesPerDay',
  'reserve',
  'loadKg',
  'hipFlexionDeg',
] as const;

function overridesOf(cardId: string, { consult }: Person): Own {
  const own = consult.overrides.filter(({ path }) => path.startsWith(`${cardId}.`));
  return new Map(
    own.flatMap(({ path, value, reason }) => {
      const cell = CELLS.find((name) => path === `${cardId}.${name}`);
      return cell === undefined ? [] : [[cell, { value, reason }]];
    }),
  );
}

function withOverrides(at: Prescribed, own: Own): Prescribed {
  const number = (name: CellName) => {
    const value = own.get(name)?.value;
    return typeof value === 'number' ? value : undefined;
  };
  const { dose } = at;
  return {
    ...at,
    loadKg: number('loadKg') ?? at.loadKg,
    rangeDeg: number('hipFlexionDeg') ?? at.rangeDeg,
    dose: {
      ...dose,
      sets: number('sets') ?? dose.sets,
      repetitions: number('repetitions') ?? dose.repetitions,
      holdSeconds: number('holdSeconds') ?? dose.holdSeconds,
      restSeconds: number('restSeconds') ?? dose.restSeconds,
      timesPerDay: number('timesPerDay') ?? dose.timesPerDay,
      reserve: number('reserve') ?? dose.reserve,
    },
  };
}

function numberOf(at: Prescribed, name: (typeof NUMBERS)[number]): number | null {
  if (name === 'loadKg') return at.loadKg;
  return name === 'hipFlexionDeg' ? at.rangeDeg : at.dose[name];
}

/** What the ladder has changed of one exercise since its first rung; of each kind of change the whole way. */
function changesOf({ ladder }: Session, rung: Rung, slot: Slot): (Changed & { change: ChangeKind })[] {
  const all = ladder.rungs
    .slice(0, rung.step)
    .flatMap(({ change, changed }) =>
      changed
        .filter(({ exercise }) => exercise === slot.name)
        .flatMap((one) => (change === null ? [] : [{ ...one, change }])),
    );
  const kinds = [...new Set(all.map(({ change }) => change))];
  return kinds.map((kind) => {
    const steps = all.filter(({ change }) => change === kind);
    const [first, last] = [steps[0], steps.at(-1)] as [
      Changed & { change: ChangeKind },
      Changed & { change: ChangeKind },
    ];
    return { ...last, from: first.from };
  });
}

function daysOf({ when }: Slot, { days }: WeekPlan): Weekday[] {
  return days
    .filter((day) => (when === 'daily' ? day.daily : when === 'between' ? day.between : day.session))
    .map(({ weekday }) => weekday);
}

/** Largest hip bend of what is done, as it is shown: the prescribed range, or that of the whole card. */
function degOf(card: ExerciseCard, at: Prescribed): number | null {
  if (at.rangeDeg !== null) return shownDeg(at.rangeDeg);
  if (isPosed(card)) {
    const { start, end } = card.movement;
    return shownDeg(Math.max(0, start.work.hip, end?.work.hip ?? 0));
  }
  return card.statedHipFlexion === null ? null : shownDeg(card.statedHipFlexion.deg);
}

function stretchOf(card: PosedCard, at: Prescribed, { model }: Person) {
  const gentleEnd = model.gentleEnd(card);
  return stretchFrom(gentleEnd, distanceTo(card, at.rangeDeg, gentleEnd));
}

const MOST_LANDMARKS = 3;

/** Landmarks that say how far; those of standing say nothing of a card whose range is not graded by hip bend. */
function farLandmarks(card: PosedCard, at: Prescribed, person: Person): Landmark[] {
  const found = landmarks(card.movement, person.body, at.loadKg, stretchOf(card, at, person));
  const says = (landmark: Landmark) =>
    landmarkText(landmark) !== '' &&
    (at.rangeDeg !== null || !GRADED_ONLY.includes(landmark.kind)) &&
    // The foot of a curl goes all the way up; only of a lift that is held does its height say anything.
    (landmark.kind !== 'footLift' || at.dose.holdSeconds !== null);
  return found.filter(says).slice(0, MOST_LANDMARKS);
}

const GRADED_ONLY: readonly Landmark['kind'][] = [
  'handsAboveKnee',
  'handsBelowKnee',
  'buttockBack',
  'leanByClock',
  'hipsAboveFloor',
];

/** The author's own landmark comes before the model's: it was written for this card. */
function farCell(card: ExerciseCard, at: Prescribed, [first]: readonly Landmark[]): CellFacts['howFar'] {
  if (card.landmark !== null) return { value: 'card', text: card.landmark };
  if (first !== undefined) return { value: landmarkValue(first), text: landmarkText(first) };
  return {
    value: 'full',
    text: at.dose.holdSeconds === null ? 'The whole way, as in the picture' : 'As in the picture',
  };
}

function rangeInputs({ fit }: Choice, at: Prescribed, person: Person, bounds: Bounds): Cell['inputs'] {
  const { caps } = at.rangeDeg !== fit.rangeDeg ? boundsOf(person, bounds.name, bounds.stage, true) : bounds;
  return {
    capDeg: bounds.stage.caps.hipFlexionDeg,
    opensToDeg: bounds.stage.opensToDeg ?? null,
    provokedLessMarginDeg: person.provokedDeg,
    heldToDeg: caps.hipFlexionDeg,
    compressionCapBw: caps.compressionBw,
    tensionCapBw: caps.tensionBw,
    demandCap: caps.demand,
  };
}

/** Rounded as an estimate is: degrees to 1, body weights and shares to 0.01, newton metres to 1. Under 18 no estimate is given. */
function estimateOf(card: PosedCard, at: Prescribed, person: Person): ModelEstimate | null {
  if (person.effects.under18) return null;
  const swept = person.model.sweepTo(card, at.rangeDeg, at.loadKg, at.dose.tempo);
  if (swept === null) return null;
  const { peak, verticalOnly } = swept;
  const margin = card.movement.supports.length > 1 ? (person.protocol.stages[0]?.supportMargin ?? 1) : 1;
  return {
    hipFlexionDeg: roundTo(peak.hipFlexionDeg, 1),
    trunkLeanDeg: roundTo(peak.trunkLeanDeg, 1),
    tensionBw: roundTo(peak.tensionBw, 0.01),
    compressionBw: roundTo(peak.compressionBw, 0.01),
    compressionVerticalOnlyBw: roundTo(verticalOnly.compressionBw, 0.01),
    hipMomentNm: roundTo(peak.hipMomentNm, 1),
    kneeMomentNm: roundTo(peak.kneeMomentNm, 1),
    demand: roundTo(peak.demand, 0.01),
    tensionTimeBwS: roundTo(swept.tensionTimeBwS, 0.1),
    compressionTimeBwS: roundTo(swept.compressionTimeBwS, 0.1),
    squeeze: squeezeWord(margin * peak.compressionBw, person),
  };
}

/** Low up to the first stage's cap, middle up to the second's, high above: the words follow the protocol's own caps. */
function squeezeWord(compressionBw: number, { protocol }: Person): ModelEstimate['squeeze'] {
  const caps = protocol.stages.flatMap(({ caps: { compressionBw: cap } }) => cap ?? []);
  const [low = Infinity, middle = Infinity] = caps;
  return compressionBw <= low ? 'low' : compressionBw <= middle ? 'middle' : 'high';
}
