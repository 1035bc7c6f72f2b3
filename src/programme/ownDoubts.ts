/** The clinician's own numbers that look like a slip beside the programme they stand in: asked about, and lifted by `confirmed`. */
import { isOverride, weighed, type Idle } from '../content/plausible/confirmed.ts';
import type { Doubt } from '../content/plausible/doubt.ts';
import { doubtWords, idleWords } from '../content/plausible/doubtWords.ts';
import type { Consult } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { anglesAlong } from '../wording/angles.ts';
import { brokenPromises } from '../wording/brokenPromises.ts';
import { largestHipBendDeg } from './howFar.ts';
import { ownEntries } from './overrides.ts';
import type { Person } from './person.ts';
import { promisedDepth } from './phrases/depth.ts';
import type { Prescription } from './prescribe.ts';
import type { CellName } from './programme.ts';
import { sessionDaySeconds } from './sessionTime.ts';

/** A refusal for every such number of the present step that is not confirmed, and for every entry that confirms none. */
export function ownDoubtRefusals(prescriptions: readonly Prescription[], person: Person): Refusal[] {
  const { consult } = person;
  const { open, idle } = weighed(ownDoubts(prescriptions, person), consult.confirmed, isOverride);
  return [
    ...open.map((doubt) => refusal(consult, 'implausible', doubt.path, doubtWords(doubt))),
    ...idle.map((one) => idleRefusal(consult, one)),
  ];
}

/** Everything that is doubtful among the clinician's own numbers. */
export function ownDoubts(prescriptions: readonly Prescription[], person: Person): Doubt[] {
  return [
    ...prescriptions.flatMap((one) => [
      ...countDoubts(one, person),
      ...loadDoubt(one, person),
      ...wordsDoubt(one, person),
    ]),
    ...minutesDoubt(prescriptions, person),
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

function loadDoubt({ card }: Prescription, { consult, protocol }: Person): Doubt[] {
  const value = ownNumber(card.id, 'loadKg', consult);
  const tested = consult.testedSets
    .filter((set) => set.card === card.id && set.pain <= protocol.limits.testPainAtMost.value)
    .map(({ loadKg }) => loadKg);
  const most = Math.max(0, ...tested);
  if (value === null || value <= most) return [];
  const inputs = { tested: tested.length === 0 ? 'no' : 'yes' };
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

function idleRefusal(consult: Consult, idle: Idle): Refusal {
  const { key, ...words } = idleWords(idle);
  return refusal(consult, 'does-not-fit', ['confirmed', idle.index, key], words);
}

function refusal(
  consult: Consult,
  code: string,
  path: Refusal['path'],
  words: Pick<Refusal, 'found' | 'expected' | 'fix'>,
): Refusal {
  return { code, kind: 'consult', id: consult.id, path, ...words };
}
