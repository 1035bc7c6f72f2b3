/** The form in the order of a consult. Every key of the schema has its place here; a test looks. */

import {
  ENTRY_WORDS,
  KEY_LABELS,
  PART_WORDS,
  type PartId,
  SCREEN_GROUP_TITLES,
  SCREEN_LABELS,
} from '../../messages/en/desk/form.ts';

/** How a key is asked. `help` and limits come from the schema. */
export type Ask =
  | 'text'
  | 'long'
  | 'number'
  | 'date'
  | 'choice'
  | 'pain'
  /** A whole number up to ten, a press each. */
  | 'upToTen'
  | 'yesNo'
  | 'marks'
  | 'numbers'
  | 'names'
  | 'bands'
  | 'card'
  | 'test'
  | 'protocol'
  | 'country'
  | 'stage'
  | 'loose';

export interface Field {
  /** The key; within a list, from its entry. */
  readonly path: string;
  readonly label: string;
  readonly ask: Ask;
  /** After a number. */
  readonly unit?: string;
  /** Shown only where this key has one of these values, or where the field has a value itself. */
  readonly when?: { readonly path: string; readonly is: readonly unknown[] };
}

/** A list of entries with keys of their own. */
export interface Entries {
  readonly path: string;
  readonly label: string;
  readonly add: string;
  readonly one: string;
  readonly fields: readonly (Field | Entries)[];
}

export type Row = Field | Entries;

/** As they are laid out, before they are called anything. */
type LaidField = Omit<Field, 'label'>;
interface LaidEntries {
  readonly path: string;
  readonly fields: readonly LaidRow[];
}
type LaidRow = LaidField | LaidEntries;
type LaidPart = Pick<Part, 'id' | 'by'> & { readonly rows: readonly LaidRow[] };

export interface Part {
  readonly id: PartId;
  readonly title: string;
  /** Rows that a hand-made control shows; the others follow it. */
  readonly by?: 'screen' | 'tests' | 'kit' | 'days' | 'running' | 'dates';
  readonly lead?: string;
  readonly rows: readonly Row[];
}

export function isEntries(row: Row): row is Entries {
  return 'fields' in row;
}

const SCREEN = [
  {
    id: 'nerves',
    items: ['saddleNumbness', 'bladderBowel', 'bothLegWeakness', 'worseningWeakness', 'footDrop'],
  },
  { id: 'illness', items: ['fever', 'weightLoss', 'cancerNightPain', 'clotSigns'] },
  {
    id: 'injury',
    items: [
      'popBruise',
      'suspectedFracture',
      'hopPain',
      'focalBonePain',
      'nightBonePain',
      'suddenOnsetUnder18',
    ],
  },
  { id: 'energy', items: ['missedPeriods', 'lowEnergy'] },
  { id: 'medicines', items: ['fluoroquinolone', 'oralSteroid', 'recentInjection'] },
  { id: 'straining', items: ['uncontrolledBloodPressure', 'hernia'] },
] as const;

/** The groups of the screen with what they and their items are called. */
export const SCREEN_GROUPS = SCREEN.map(({ id, items }) => ({
  id,
  title: SCREEN_GROUP_TITLES[id],
  items: items.map((item) => [item, SCREEN_LABELS[item]] as const),
}));

const bySide = { path: 'side', is: ['both'] } as const;
const runs = { path: 'running.runs', is: ['yes', true] } as const;

const LAID: readonly LaidPart[] = [
  {
    id: 'who',
    by: 'dates',
    rows: [
      { path: 'alias', ask: 'text' },
      { path: 'revision', ask: 'number' },
      { path: 'clinician', ask: 'text' },
      { path: 'seenOn', ask: 'date' },
      { path: 'startOn', ask: 'date' },
      { path: 'reviewOn', ask: 'date' },
      { path: 'country', ask: 'country' },
      { path: 'ageYears', ask: 'number', unit: 'years' },
      { path: 'heightM', ask: 'number', unit: 'm' },
      { path: 'massKg', ask: 'number', unit: 'kg' },
      { path: 'protocol', ask: 'protocol' },
      { path: 'side', ask: 'choice' },
      { path: 'worseSide', ask: 'choice', when: bySide },
      { path: 'symptomWeeks', ask: 'number', unit: 'weeks' },
      { path: 'painArea', ask: 'text' },
    ],
  },
  {
    id: 'screen',
    by: 'screen',
    rows: [
      ...SCREEN.flatMap(({ items }) =>
        items.map((item): LaidField => ({ path: `screen.${item}`, ask: 'choice' })),
      ),
      {
        path: 'clearances',
        fields: [
          { path: 'flag', ask: 'choice' },
          { path: 'by', ask: 'text' },
          { path: 'on', ask: 'date' },
          { path: 'decision', ask: 'text' },
          { path: 'imaging.kind', ask: 'text' },
          { path: 'imaging.on', ask: 'date' },
          { path: 'imaging.result', ask: 'text' },
        ],
      },
      { path: 'cannotDo', ask: 'marks' },
      { path: 'pregnancy.weeks', ask: 'number', unit: 'weeks' },
      { path: 'afterBirth.weeks', ask: 'number', unit: 'weeks' },
      {
        path: 'afterBirth.clearance.by',
        ask: 'text',
        when: { path: 'afterBirth.weeks', is: [] },
      },
      {
        path: 'afterBirth.clearance.on',
        ask: 'date',
        when: { path: 'afterBirth.weeks', is: [] },
      },
      {
        path: 'afterBirth.clearance.decision',
        ask: 'text',
        when: { path: 'afterBirth.weeks', is: [] },
      },
    ],
  },
  {
    id: 'findings',
    by: 'tests',
    rows: [
      { path: 'irritability', ask: 'choice' },
      { path: 'response24h', ask: 'choice' },
      { path: 'usualMorningPain', ask: 'pain' },
      {
        path: 'tests',
        fields: [
          { path: 'test', ask: 'test' },
          { path: 'pain', ask: 'pain' },
          { path: 'painFreeHipFlexionDeg', ask: 'number', unit: '°' },
          { path: 'painFreeKneeFlexionDeg', ask: 'number', unit: '°' },
          {
            path: 'painFreeAnkleDorsiflexionDeg',
            ask: 'number',
            unit: '°',
          },
          { path: 'seconds', ask: 'number', unit: 'seconds' },
          { path: 'repetitions', ask: 'number' },
          { path: 'side', ask: 'choice' },
        ],
      },
      { path: 'notExamined', ask: 'names' },
    ],
  },
  {
    id: 'weights',
    rows: [
      {
        path: 'testedSets',
        fields: [
          { path: 'card', ask: 'card' },
          { path: 'side', ask: 'choice' },
          { path: 'loadKg', ask: 'number', unit: 'kg' },
          { path: 'repetitions', ask: 'number' },
          { path: 'reserve', ask: 'upToTen' },
          { path: 'rangeDeg', ask: 'number', unit: '°' },
          { path: 'tempo.go', ask: 'number', unit: 's' },
          { path: 'tempo.hold', ask: 'number', unit: 's' },
          { path: 'tempo.back', ask: 'number', unit: 's' },
          { path: 'pain', ask: 'pain' },
        ],
      },
    ],
  },
  {
    id: 'kit',
    by: 'kit',
    rows: [
      { path: 'kit.dumbbellsKg', ask: 'numbers', unit: 'kg' },
      { path: 'kit.kettlebellsKg', ask: 'numbers', unit: 'kg' },
      { path: 'kit.platesKg', ask: 'numbers', unit: 'kg' },
      { path: 'kit.barKg', ask: 'number', unit: 'kg' },
      { path: 'kit.bands', ask: 'bands' },
      { path: 'kit.rucksack', ask: 'yesNo' },
      { path: 'kit.bottlesL', ask: 'numbers', unit: 'litres' },
      { path: 'kit.bench', ask: 'yesNo' },
      { path: 'kit.ball', ask: 'yesNo' },
      { path: 'kit.stepCm', ask: 'numbers', unit: 'cm' },
    ],
  },
  {
    id: 'time',
    by: 'days',
    rows: [
      { path: 'days', ask: 'marks' },
      { path: 'minutesPerDay', ask: 'number', unit: 'minutes' },
    ],
  },
  {
    id: 'running',
    by: 'running',
    rows: [
      { path: 'running.runs', ask: 'yesNo' },
      { path: 'running.decision', ask: 'choice' },
      { path: 'running.weeklyKm', ask: 'number', unit: 'km', when: runs },
      {
        path: 'running.longestIn30DaysKm',
        ask: 'number',
        unit: 'km',
        when: runs,
      },
      { path: 'running.runsPerWeek', ask: 'number', when: runs },
      {
        path: 'running.weeksOff',
        ask: 'number',
        unit: 'weeks',
        when: runs,
      },
      {
        path: 'running.trainingYears',
        ask: 'number',
        unit: 'years',
        when: runs,
      },
      { path: 'running.hills', ask: 'yesNo', when: runs },
      { path: 'running.speed', ask: 'yesNo', when: runs },
      { path: 'running.hillyRoutes', ask: 'yesNo', when: runs },
      { path: 'running.overStriding', ask: 'choice', when: runs },
      { path: 'running.stepsPerMin', ask: 'number', unit: 'steps a minute', when: runs },
      {
        path: 'running.races',
        fields: [
          { path: 'on', ask: 'date' },
          { path: 'km', ask: 'number', unit: 'km' },
          { path: 'decision', ask: 'text' },
        ],
      },
    ],
  },
  {
    id: 'life',
    rows: [
      { path: 'sitting.toleranceMinutes', ask: 'number', unit: 'minutes' },
      {
        path: 'sitting.fixedBlocksMinutes',
        ask: 'numbers',
        unit: 'minutes',
      },
      { path: 'sitting.goalMinutes', ask: 'number', unit: 'minutes' },
      { path: 'recovery.sleep', ask: 'choice' },
      { path: 'recovery.stress', ask: 'choice' },
      { path: 'recovery.tired', ask: 'yesNo' },
    ],
  },
  {
    id: 'besides',
    rows: [
      { path: 'changedBefore', ask: 'marks' },
      {
        path: 'doesNow',
        fields: [
          { path: 'what', ask: 'text' },
          { path: 'times', ask: 'number' },
          { path: 'days', ask: 'marks' },
        ],
      },
    ],
  },
  {
    id: 'goals',
    rows: [
      {
        path: 'goals',
        fields: [
          { path: 'what', ask: 'text' },
          { path: 'on', ask: 'date' },
          { path: 'doneTimes', ask: 'number', unit: 'times' },
        ],
      },
      {
        path: 'outcomes',
        fields: [
          { path: 'on', ask: 'date' },
          { path: 'visaH', ask: 'number' },
          { path: 'sittingMinutes', ask: 'number', unit: 'minutes' },
          { path: 'globalChange', ask: 'number' },
          {
            path: 'activities',
            fields: [
              { path: 'what', ask: 'text' },
              { path: 'score', ask: 'number' },
            ],
          },
        ],
      },
    ],
  },
  {
    id: 'choices',
    rows: [
      { path: 'stage', ask: 'stage' },
      { path: 'stageBecause', ask: 'text' },
      { path: 'step', ask: 'number' },
      {
        path: 'discharge.decidedBy',
        ask: 'text',
        when: { path: 'stage', is: ['keepGoing'] },
      },
      { path: 'discharge.on', ask: 'date', when: { path: 'stage', is: ['keepGoing'] } },
      {
        path: 'chosen',
        fields: [
          { path: 'slot', ask: 'text' },
          { path: 'card', ask: 'card' },
          { path: 'reason', ask: 'text' },
          { path: 'beyondCap.decidedBy', ask: 'text' },
          { path: 'beyondCap.reason', ask: 'text' },
        ],
      },
      {
        path: 'leftOut',
        fields: [
          { path: 'card', ask: 'card' },
          { path: 'reason', ask: 'text' },
        ],
      },
      {
        path: 'added',
        fields: [
          { path: 'card', ask: 'card' },
          { path: 'afterSlot', ask: 'text' },
          { path: 'reason', ask: 'text' },
          { path: 'beyondCap.decidedBy', ask: 'text' },
          { path: 'beyondCap.reason', ask: 'text' },
        ],
      },
      {
        path: 'overrides',
        fields: [
          { path: 'path', ask: 'text' },
          { path: 'value', ask: 'loose' },
          { path: 'reason', ask: 'text' },
        ],
      },
      {
        path: 'confirmed',
        fields: [
          { path: 'path', ask: 'text' },
          { path: 'value', ask: 'loose' },
          { path: 'reason', ask: 'text' },
        ],
      },
      { path: 'draft', ask: 'yesNo' },
      { path: 'language', ask: 'choice' },
      { path: 'withdraw', ask: 'yesNo' },
      { path: 'withdrawOn', ask: 'date' },
    ],
  },
];

/** The parts of the form, with what each and every key in it is called. */
export const PARTS: readonly Part[] = LAID.map(({ rows, ...part }) => ({
  ...part,
  ...PART_WORDS[part.id],
  rows: rows.map((row) => worded(row, '')),
}));

function worded(row: LaidRow, around: string): Row {
  const path = around === '' ? row.path : `${around}.${row.path}`;
  const label = labelAt(path);
  if (!('fields' in row)) return { ...row, label };
  const { add = '', one = '' } = ENTRY_WORDS[path] ?? {};
  return { ...row, label, add, one, fields: row.fields.map((field) => worded(field, `${path}.*`)) };
}

function labelAt(path: string): string {
  const item = SCREEN.flatMap(({ items }) => items).find((one) => path === `screen.${one}`);
  return item === undefined ? (KEY_LABELS[path] ?? '') : SCREEN_LABELS[item];
}

/** Every key that has its place, lists as `*`. */
export function placedKeys(parts: readonly Part[] = PARTS): string[] {
  const of = (row: Row, around: string): string[] => {
    const path = around === '' ? row.path : `${around}.${row.path}`;
    return isEntries(row) ? row.fields.flatMap((field) => of(field, `${path}.*`)) : [path];
  };
  return parts.flatMap(({ rows }) => rows.flatMap((row) => of(row, '')));
}
