/** The form in the order of a consult. Every key of the schema has its place here; a test looks. */

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

export interface Part {
  readonly id: string;
  readonly title: string;
  /** Rows that a hand-made control shows; the others follow it. */
  readonly by?: 'screen' | 'tests' | 'kit' | 'days' | 'running' | 'dates';
  readonly lead?: string;
  readonly rows: readonly Row[];
}

export function isEntries(row: Row): row is Entries {
  return 'fields' in row;
}

const SCREEN: readonly {
  readonly id: string;
  readonly title: string;
  readonly items: Readonly<Record<string, string>>;
}[] = [
  {
    id: 'nerves',
    title: 'Nerves',
    items: {
      saddleNumbness: 'Numb between the legs or when wiping',
      bladderBowel: 'New change of bladder or bowel',
      bothLegWeakness: 'Weakness in both legs',
      worseningWeakness: 'Weakness getting worse',
      footDrop: 'Foot that drops',
    },
  },
  {
    id: 'illness',
    title: 'General illness',
    items: {
      fever: 'Fever, or feeling ill with it',
      weightLoss: 'Weight loss without a reason',
      cancerNightPain: 'Cancer in the past, with pain at night',
      clotSigns: 'Signs of a clot in leg or lung',
    },
  },
  {
    id: 'injury',
    title: 'Injury and bone',
    items: {
      popBruise: 'Sudden pop with a bruise, or could not walk',
      suspectedFracture: 'Suspected fracture',
      hopPain: 'Bone pain on hopping',
      focalBonePain: 'Pain on one spot of bone',
      nightBonePain: 'Bone pain at night or at rest',
      suddenOnsetUnder18: 'Under 18 with a sudden start',
    },
  },
  {
    id: 'energy',
    title: 'Energy',
    items: { missedPeriods: 'Missed periods', lowEnergy: 'Eats too little for the training' },
  },
  {
    id: 'medicines',
    title: 'Medicines',
    items: {
      fluoroquinolone: 'Fluoroquinolone antibiotic, last six months',
      oralSteroid: 'Steroid tablets',
      recentInjection: 'Injection near the tendon, last two weeks',
    },
  },
  {
    id: 'straining',
    title: 'Straining',
    items: {
      uncontrolledBloodPressure: 'Blood pressure not under control',
      hernia: 'Hernia',
    },
  },
];
export const SCREEN_GROUPS = SCREEN;

const bySide = { path: 'side', is: ['both'] } as const;
const runs = { path: 'running.runs', is: ['yes', true] } as const;

export const PARTS: readonly Part[] = [
  {
    id: 'who',
    title: 'Who',
    by: 'dates',
    rows: [
      { path: 'alias', label: 'Alias', ask: 'text' },
      { path: 'revision', label: 'Revision', ask: 'number' },
      { path: 'clinician', label: 'Clinician', ask: 'text' },
      { path: 'seenOn', label: 'Seen on', ask: 'date' },
      { path: 'startOn', label: 'First day', ask: 'date' },
      { path: 'reviewOn', label: 'Next review', ask: 'date' },
      { path: 'country', label: 'Country', ask: 'country' },
      { path: 'ageYears', label: 'Age', ask: 'number', unit: 'years' },
      { path: 'heightM', label: 'Height', ask: 'number', unit: 'm' },
      { path: 'massKg', label: 'Body mass', ask: 'number', unit: 'kg' },
      { path: 'protocol', label: 'Protocol', ask: 'protocol' },
      { path: 'side', label: 'Painful side', ask: 'choice' },
      { path: 'worseSide', label: 'Worse side', ask: 'choice', when: bySide },
      { path: 'symptomWeeks', label: 'Weeks since it began', ask: 'number', unit: 'weeks' },
      { path: 'painArea', label: 'Where it hurts', ask: 'text' },
    ],
  },
  {
    id: 'screen',
    title: 'Screen',
    by: 'screen',
    rows: [
      ...SCREEN.flatMap(({ items }) =>
        Object.entries(items).map(([item, label]): Field => ({
          path: `screen.${item}`,
          label,
          ask: 'choice',
        })),
      ),
      {
        path: 'clearances',
        label: 'Cleared by a recorded decision',
        add: 'Add a clearance',
        one: 'Clearance',
        fields: [
          { path: 'flag', label: 'Screen item', ask: 'choice' },
          { path: 'by', label: 'Who decided', ask: 'text' },
          { path: 'on', label: 'When', ask: 'date' },
          { path: 'decision', label: 'Decision and ground', ask: 'text' },
          { path: 'imaging.kind', label: 'Picture taken', ask: 'text' },
          { path: 'imaging.on', label: 'Picture taken on', ask: 'date' },
          { path: 'imaging.result', label: 'What it showed', ask: 'text' },
        ],
      },
      { path: 'cannotDo', label: 'Cannot do, or must not', ask: 'marks' },
      { path: 'pregnancy.weeks', label: 'Pregnant: full weeks', ask: 'number', unit: 'weeks' },
      { path: 'afterBirth.weeks', label: 'After birth: full weeks since', ask: 'number', unit: 'weeks' },
      {
        path: 'afterBirth.clearance.by',
        label: 'Impact after birth cleared by',
        ask: 'text',
        when: { path: 'afterBirth.weeks', is: [] },
      },
      {
        path: 'afterBirth.clearance.on',
        label: 'Cleared on',
        ask: 'date',
        when: { path: 'afterBirth.weeks', is: [] },
      },
      {
        path: 'afterBirth.clearance.decision',
        label: 'Decision and ground',
        ask: 'text',
        when: { path: 'afterBirth.weeks', is: [] },
      },
    ],
  },
  {
    id: 'findings',
    title: 'Findings and tests',
    by: 'tests',
    rows: [
      { path: 'irritability', label: 'Irritability', ask: 'choice' },
      { path: 'response24h', label: 'By the next day', ask: 'choice' },
      { path: 'usualMorningPain', label: 'Usual morning pain', ask: 'pain' },
      {
        path: 'tests',
        label: 'Tests done today',
        add: 'Add a test',
        one: 'Test',
        fields: [
          { path: 'test', label: 'Test', ask: 'test' },
          { path: 'pain', label: 'Pain during it', ask: 'pain' },
          { path: 'painFreeHipFlexionDeg', label: 'Hip bend where pain began', ask: 'number', unit: '°' },
          { path: 'painFreeKneeFlexionDeg', label: 'Knee bend where pain began', ask: 'number', unit: '°' },
          {
            path: 'painFreeAnkleDorsiflexionDeg',
            label: 'Dorsiflexion where pain began',
            ask: 'number',
            unit: '°',
          },
          { path: 'seconds', label: 'Held for', ask: 'number', unit: 'seconds' },
          { path: 'repetitions', label: 'Repetitions', ask: 'number' },
          { path: 'side', label: 'Leg', ask: 'choice' },
        ],
      },
      { path: 'notExamined', label: 'Not examined', ask: 'names' },
    ],
  },
  {
    id: 'weights',
    title: 'Tried with a weight',
    lead: 'Without a tested set no exercise is given a weight in kilograms: it begins by feel, or without one.',
    rows: [
      {
        path: 'testedSets',
        label: 'Tested sets',
        add: 'Add a tested set',
        one: 'Tested set',
        fields: [
          { path: 'card', label: 'Exercise', ask: 'card' },
          { path: 'side', label: 'Side', ask: 'choice' },
          { path: 'loadKg', label: 'Weight', ask: 'number', unit: 'kg' },
          { path: 'repetitions', label: 'Repetitions', ask: 'number' },
          { path: 'reserve', label: 'In reserve', ask: 'upToTen' },
          { path: 'rangeDeg', label: 'Angle reached', ask: 'number', unit: '°' },
          { path: 'tempo.go', label: 'Seconds out', ask: 'number', unit: 's' },
          { path: 'tempo.hold', label: 'Seconds still', ask: 'number', unit: 's' },
          { path: 'tempo.back', label: 'Seconds back', ask: 'number', unit: 's' },
          { path: 'pain', label: 'Pain during it', ask: 'pain' },
        ],
      },
    ],
  },
  {
    id: 'kit',
    title: 'Kit at home',
    by: 'kit',
    rows: [
      { path: 'kit.dumbbellsKg', label: 'Dumbbells', ask: 'numbers', unit: 'kg' },
      { path: 'kit.kettlebellsKg', label: 'Kettlebells', ask: 'numbers', unit: 'kg' },
      { path: 'kit.platesKg', label: 'Plates', ask: 'numbers', unit: 'kg' },
      { path: 'kit.barKg', label: 'Empty bar', ask: 'number', unit: 'kg' },
      { path: 'kit.bands', label: 'Bands', ask: 'bands' },
      { path: 'kit.rucksack', label: 'Rucksack', ask: 'yesNo' },
      { path: 'kit.bottlesL', label: 'Bottles', ask: 'numbers', unit: 'litres' },
      { path: 'kit.bench', label: 'Bench or sofa edge', ask: 'yesNo' },
      { path: 'kit.ball', label: 'Exercise ball', ask: 'yesNo' },
      { path: 'kit.stepCm', label: 'Steps', ask: 'numbers', unit: 'cm' },
    ],
  },
  {
    id: 'time',
    title: 'Days and minutes',
    by: 'days',
    rows: [
      { path: 'days', label: 'Days with time for exercises', ask: 'marks' },
      { path: 'minutesPerDay', label: 'Minutes on such a day', ask: 'number', unit: 'minutes' },
    ],
  },
  {
    id: 'running',
    title: 'Running',
    by: 'running',
    rows: [
      { path: 'running.runs', label: 'Runs', ask: 'yesNo' },
      { path: 'running.decision', label: 'Decision on running now', ask: 'choice' },
      { path: 'running.weeklyKm', label: 'A usual week', ask: 'number', unit: 'km', when: runs },
      {
        path: 'running.longestIn30DaysKm',
        label: 'Longest run in 30 days',
        ask: 'number',
        unit: 'km',
        when: runs,
      },
      { path: 'running.runsPerWeek', label: 'Runs a week', ask: 'number', when: runs },
      {
        path: 'running.weeksOff',
        label: 'Weeks without running just now',
        ask: 'number',
        unit: 'weeks',
        when: runs,
      },
      {
        path: 'running.trainingYears',
        label: 'Years of regular running',
        ask: 'number',
        unit: 'years',
        when: runs,
      },
      { path: 'running.hills', label: 'Used to hill work', ask: 'yesNo', when: runs },
      { path: 'running.speed', label: 'Used to fast running', ask: 'yesNo', when: runs },
      { path: 'running.hillyRoutes', label: 'Everyday routes hilly', ask: 'yesNo', when: runs },
      { path: 'running.overStriding', label: 'Over-striding seen', ask: 'choice', when: runs },
      { path: 'running.stepsPerMin', label: 'Step rate', ask: 'number', unit: 'steps a minute', when: runs },
      {
        path: 'running.races',
        label: 'Races that stand',
        add: 'Add a race',
        one: 'Race',
        fields: [
          { path: 'on', label: 'Day', ask: 'date' },
          { path: 'km', label: 'Length', ask: 'number', unit: 'km' },
          { path: 'decision', label: 'Decided on although early', ask: 'text' },
        ],
      },
    ],
  },
  {
    id: 'life',
    title: 'Sitting and recovery',
    rows: [
      { path: 'sitting.toleranceMinutes', label: 'Sits before it hurts', ask: 'number', unit: 'minutes' },
      {
        path: 'sitting.fixedBlocksMinutes',
        label: 'Sitting that cannot be broken',
        ask: 'numbers',
        unit: 'minutes',
      },
      { path: 'sitting.goalMinutes', label: 'Wishes to sit', ask: 'number', unit: 'minutes' },
      { path: 'recovery.sleep', label: 'Sleep', ask: 'choice' },
      { path: 'recovery.stress', label: 'Stress', ask: 'choice' },
      { path: 'recovery.tired', label: 'Tired most days', ask: 'yesNo' },
    ],
  },
  {
    id: 'besides',
    title: 'What else, and what changed',
    rows: [
      { path: 'changedBefore', label: 'Changed in the four weeks before', ask: 'marks' },
      {
        path: 'doesNow',
        label: 'Does now besides',
        add: 'Add an activity',
        one: 'Activity',
        fields: [
          { path: 'what', label: 'Activity', ask: 'text' },
          { path: 'times', label: 'Times a week', ask: 'number' },
          { path: 'days', label: 'On fixed days', ask: 'marks' },
        ],
      },
    ],
  },
  {
    id: 'goals',
    title: 'Goals and scores',
    rows: [
      {
        path: 'goals',
        label: 'Goals',
        add: 'Add a goal',
        one: 'Goal',
        fields: [
          { path: 'what', label: 'In their words', ask: 'text' },
          { path: 'on', label: 'By', ask: 'date' },
          { path: 'doneTimes', label: 'Done again, settled by the next day', ask: 'number', unit: 'times' },
        ],
      },
      {
        path: 'outcomes',
        label: 'Scores',
        add: 'Add scores',
        one: 'Scores',
        fields: [
          { path: 'on', label: 'Day', ask: 'date' },
          { path: 'visaH', label: 'VISA-H', ask: 'number' },
          { path: 'sittingMinutes', label: 'Sitting without more pain', ask: 'number', unit: 'minutes' },
          { path: 'globalChange', label: 'Global change, -3 to 3', ask: 'number' },
          {
            path: 'activities',
            label: 'Activities, 0 unable to 10 able',
            add: 'Add a scored activity',
            one: 'Scored activity',
            fields: [
              { path: 'what', label: 'Activity', ask: 'text' },
              { path: 'score', label: 'Score', ask: 'number' },
            ],
          },
        ],
      },
    ],
  },
  {
    id: 'choices',
    title: 'Choices',
    lead: 'Left alone, the tests decide. Whatever is chosen here stands on the record with its reason.',
    rows: [
      { path: 'stage', label: 'Stage', ask: 'stage' },
      { path: 'stageBecause', label: 'Why a later stage than proposed', ask: 'text' },
      { path: 'step', label: 'Step', ask: 'number' },
      {
        path: 'discharge.decidedBy',
        label: 'Treatment ended by',
        ask: 'text',
        when: { path: 'stage', is: ['keepGoing'] },
      },
      { path: 'discharge.on', label: 'Ended on', ask: 'date', when: { path: 'stage', is: ['keepGoing'] } },
      {
        path: 'chosen',
        label: 'Exercises chosen',
        add: 'Choose an exercise',
        one: 'Choice',
        fields: [
          { path: 'slot', label: 'Slot', ask: 'text' },
          { path: 'card', label: 'Exercise', ask: 'card' },
          { path: 'reason', label: 'Reason', ask: 'text' },
          { path: 'beyondCap.decidedBy', label: 'Above the cap: decided by', ask: 'text' },
          { path: 'beyondCap.reason', label: 'Above the cap: on what ground', ask: 'text' },
        ],
      },
      {
        path: 'leftOut',
        label: 'Exercises left out',
        add: 'Leave an exercise out',
        one: 'Left out',
        fields: [
          { path: 'card', label: 'Exercise', ask: 'card' },
          { path: 'reason', label: 'Reason', ask: 'text' },
        ],
      },
      {
        path: 'added',
        label: 'Exercises added',
        add: 'Add an exercise',
        one: 'Added',
        fields: [
          { path: 'card', label: 'Exercise', ask: 'card' },
          { path: 'afterSlot', label: 'After the slot', ask: 'text' },
          { path: 'reason', label: 'Reason', ask: 'text' },
          { path: 'beyondCap.decidedBy', label: 'Above the cap: decided by', ask: 'text' },
          { path: 'beyondCap.reason', label: 'Above the cap: on what ground', ask: 'text' },
        ],
      },
      {
        path: 'overrides',
        label: 'Own numbers',
        add: 'Set a number',
        one: 'Own number',
        fields: [
          { path: 'path', label: 'Exercise and number', ask: 'text' },
          { path: 'value', label: 'Value', ask: 'loose' },
          { path: 'reason', label: 'Reason', ask: 'text' },
        ],
      },
      {
        path: 'confirmed',
        label: 'Confirmed although it looks like a slip',
        add: 'Confirm a value',
        one: 'Confirmed',
        fields: [
          { path: 'path', label: 'Where it stands', ask: 'text' },
          { path: 'value', label: 'Value', ask: 'loose' },
          { path: 'reason', label: 'How it was checked', ask: 'text' },
        ],
      },
      { path: 'draft', label: 'Still a draft', ask: 'yesNo' },
      { path: 'language', label: 'Language', ask: 'choice' },
      { path: 'withdraw', label: 'Take the leaflet out of force', ask: 'yesNo' },
      { path: 'withdrawOn', label: 'Out of force from', ask: 'date' },
    ],
  },
];

/** Every key that has its place, lists as `*`. */
export function placedKeys(parts: readonly Part[] = PARTS): string[] {
  const of = (row: Row, around: string): string[] => {
    const path = around === '' ? row.path : `${around}.${row.path}`;
    return isEntries(row) ? row.fields.flatMap((field) => of(field, `${path}.*`)) : [path];
  };
  return parts.flatMap(({ rows }) => rows.flatMap((row) => of(row, '')));
}
