/** The clinician's own numbers that look like a slip beside the programme they stand in: asked about, and lifted by `confirmed`. */
import { idleKey, isOverride, weighed } from '../../content/plausible/confirmed.ts';
import { type Doubt, above, outside } from '../../content/plausible/doubt.ts';
import type { Consult } from '../../content/library.ts';
import type { Refusal } from '../terms/refusal.ts';
import { anglesAlong } from '../../wording/angles.ts';
import { brokenPromises } from '../../wording/brokenPromises.ts';
import { largestHipBendDeg } from './howFar.ts';
import { ownEntries, ownTempo } from './overrides.ts';
import type { Person } from '../person/person.ts';
import { promisedDepth } from '../../wording/depth.ts';
import type { Prescription } from './prescribe.ts';
import type { CellName } from '../terms/cell.ts';
import { sessionDaySeconds } from './sessionTime.ts';

/** A refusal for every such number of the present step that is not confirmed, and for every entry that confirms none. */
export function ownDoubtRefusals(prescriptions: readonly Prescription[], person: Person): Refusal[] {
  const { consult } = person;
  const { open, idle } = weighed(ownDoubts(prescriptions, person), consult.confirmed, isOverride);
  return [
    ...open.map((doubt): Refusal => ({
      code: 'implausible',
      id: consult.id,
      path: doubt.path,
      why: { reason: 'doubt', doubt },
    })),
    ...idle.map((one): Refusal => ({
      code: 'does-not-fit',
      id: consult.id,
      path: ['confirmed', one.index, idleKey(one)],
      why: { reason: 'idle', idle: one },
    })),
  ];
}

/** Everything that is doubtful among the clinician's own numbers. */
export function ownDoubts(prescriptions: readonly Prescription[], person: Person): Doubt[] {
  return [
    ...prescriptions.flatMap((one) => [
      ...countDoubts(one, person),
      ...loadDoubt(one, person),
      ...harderDoubts(one, person),
      ...wordsDoubt(one, person),
    ]),
    ...minutesDoubt(prescriptions, person),
    ...longestRunDoubt(person),
  ];
}

// The counts a protocol gives a slot: the larger of its dose and the end of its progression. With each of them inside,
// sets times repetitions are inside too.
const COUNTS = [
  { cell: 'sets', change: 'sets' },
  { cell: 'repetitions', change: 'repetitions' },
  { cell: 'holdSeconds', change: 'hold' },
] as const;

function countDoubts({ exercise: { slot }, card }: Prescription, person: Person): Doubt[] {
  return COUNTS.flatMap(({ cell, change }) => {
    const value = ownNumber(card.id, cell, person.consult);
    const ends = slot.progression.flatMap((one) => (one.change === change ? (one.to ?? []) : []));
    const most = Math.max(slot.dose[cell] ?? 0, ...ends);
    if (value === null || most === 0 || value <= most) return [];
    return [
      {
        rule: 'overrideCount',
        path: pathOf(card.id, cell, person.consult),
        value,
        most,
        inputs: { slot: slot.name },
      } as const,
    ];
  });
}

/** Closer to failure, more often a day, without a pause or without time: harder than the protocol in another way. */
function harderDoubts({ exercise: { slot }, card }: Prescription, person: Person): Doubt[] {
  const { consult, clinic } = person;
  const rest = clinic.plausible.restFromSeconds.value;
  const own = (cell: CellName) => ownNumber(card.id, cell, consult);
  const at = (cell: CellName) => ({ path: pathOf(card.id, cell, consult), inputs: { slot: slot.name } });
  const [reserve, times, pause] = [own('reserve'), own('timesPerDay'), own('restSeconds')];
  const tempo = ownTempo(ownEntries(card.id, consult));
  return [
    ...outside(reserve ?? undefined, [slot.dose.reserve ?? 0, Infinity], {
      rule: 'overrideReserve',
      ...at('reserve'),
    }),
    ...above(times ?? undefined, slot.dose.timesPerDay, { rule: 'overrideCount', ...at('timesPerDay') }),
    ...(pause === 0
      ? []
      : outside(pause ?? undefined, [rest, Infinity], { rule: 'overrideRest', ...at('restSeconds') })),
    ...(tempo !== null && tempo.goSeconds + tempo.holdSeconds + tempo.backSeconds === 0
      ? [{ rule: 'overrideTempo', ...at('tempo'), value: '0-0-0' } as const]
      : []),
  ];
}

/** What was lifted by the log and borne counts like a set that was tested: the easier numbers of a review lie below it. */
function loadDoubt({ card }: Prescription, { consult, protocol, logged }: Person): Doubt[] {
  const value = ownNumber(card.id, 'loadKg', consult);
  const tested = consult.testedSets
    .filter((set) => set.card === card.id && set.pain <= protocol.limits.testPainAtMost.value)
    .map(({ loadKg }) => loadKg);
  const lifted = (logged?.exercises ?? []).flatMap((one) => (one.card === card.id ? [one.loadKg] : []));
  const most = Math.max(0, ...tested, ...lifted);
  if (value === null || value <= most) return [];
  const inputs = { tested: tested.length + lifted.length === 0 ? 'no' : 'yes' };
  return [{ rule: 'overrideLoad', path: pathOf(card.id, 'loadKg', consult), value, most, inputs }];
}

/** Words of the clinician's own for how far, beside the hip bend that is printed with them. */
function wordsDoubt({ card, at }: Prescription, { consult, model }: Person): Doubt[] {
  const words = ownEntries(card.id, consult).get('howFar')?.value;
  const hipFlexionDeg = largestHipBendDeg(card, at, model);
  if (words === undefined || hipFlexionDeg === null) return [];
  const broken = brokenWords(String(words), hipFlexionDeg, card);
  if (broken === null) return [];
  const inputs = { hipFlexionDeg: Math.round(hipFlexionDeg), ...broken };
  return [{ rule: 'overrideWords', path: pathOf(card.id, 'howFar', consult), value: words, inputs }];
}

// Lying down, "to the floor" is no depth.
const UPRIGHT: ReadonlySet<string> = new Set(['standing', 'hinge', 'squat', 'lunge', 'step']);

function brokenWords(
  text: string,
  hipDeg: number,
  card: Prescription['card'],
): { readonly words: string; readonly means: string } | null {
  const deep = card.positions.some((position) => UPRIGHT.has(position)) ? promisedDepth(text) : null;
  if (deep !== null && hipDeg < deep.leastDeg) return { words: deep.words, means: deep.means };
  const hip = { leastDeg: Math.min(0, hipDeg), mostDeg: hipDeg };
  const [broken] = brokenPromises(text, { ...anglesAlong(card), hip });
  return broken === undefined
    ? null
    : { words: text, means: broken.expected.replace(/^.*these words mean /, '') };
}

/** No run of the last 30 days is longer than the log tells, in whole kilometres: a plan grows from it. */
function longestRunDoubt({ consult, logged }: Person): Doubt[] {
  const longest = logged?.longestRun ?? null;
  if (longest === null || !consult.running.runs) return [];
  return above(consult.running.longestIn30DaysKm, Math.ceil(longest.mostKm), {
    rule: 'longestLogged',
    path: ['running', 'longestIn30DaysKm'],
    inputs: { revision: longest.revision, loggedKm: longest.loggedKm },
  });
}

const TAKES_TIME: readonly CellName[] = ['sets', 'repetitions', 'holdSeconds', 'tempo', 'restSeconds'];

/** Told of the last entry that takes time: the session fitted before there were any. */
function minutesDoubt(prescriptions: readonly Prescription[], person: Person): Doubt[] {
  const { consult } = person;
  const minutes = Math.ceil(sessionDaySeconds(prescriptions, person) / 60);
  const own = prescriptions.flatMap(({ card }) =>
    TAKES_TIME.filter((cell) => ownEntries(card.id, consult).has(cell)).map((cell) =>
      pathOf(card.id, cell, consult),
    ),
  );
  const last = own.toSorted((a, b) => Number(a[1]) - Number(b[1])).at(-1);
  if (last === undefined || minutes <= consult.minutesPerDay) return [];
  const value = consult.overrides[Number(last[1])]?.value ?? '';
  return [
    { rule: 'overrideMinutes', path: last, value, inputs: { minutes, minutesPerDay: consult.minutesPerDay } },
  ];
}

function ownNumber(card: string, cell: CellName, consult: Consult): number | null {
  const value = ownEntries(card, consult).get(cell)?.value;
  return typeof value === 'number' ? value : null;
}

function pathOf(card: string, cell: CellName, { overrides }: Consult): Doubt['path'] {
  return ['overrides', overrides.findIndex(({ path }) => path === `${card}.${cell}`), 'value'];
}
