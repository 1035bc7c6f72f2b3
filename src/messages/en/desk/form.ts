/** What the form calls its parts, its keys and the entries of its lists. */

export type PartId =
  | 'who'
  | 'screen'
  | 'findings'
  | 'weights'
  | 'kit'
  | 'time'
  | 'running'
  | 'life'
  | 'besides'
  | 'goals'
  | 'choices';

/** Titles of the parts, and what is said first in one. */
export const PART_WORDS: Readonly<Record<PartId, { readonly title: string; readonly lead?: string }>> = {
  who: {
    title: 'Who',
  },
  screen: {
    title: 'Screen',
  },
  findings: {
    title: 'Findings and tests',
  },
  weights: {
    title: 'Tried with a weight',
    lead: 'Without a tested set no exercise is given a weight in kilograms: it begins by feel, or without one.',
  },
  kit: {
    title: 'Kit at home',
  },
  time: {
    title: 'Days and minutes',
  },
  running: {
    title: 'Running',
  },
  life: {
    title: 'Sitting and recovery',
  },
  besides: {
    title: 'What else, and what changed',
  },
  goals: {
    title: 'Goals and scores',
  },
  choices: {
    title: 'Choices',
    lead: 'Left alone, the tests decide. Whatever is chosen here stands on the record with its reason.',
  },
};

/** Groups of keys that share a part. */
export const GROUP_LABELS: Readonly<Record<string, string>> = {
  sitting: 'Sitting',
  recovery: 'Recovery',
};

/** By key; within a list `*` for its entry. */
export const KEY_LABELS: Readonly<Record<string, string>> = {
  alias: 'Alias',
  revision: 'Revision',
  clinician: 'Clinician',
  seenOn: 'Seen on',
  startOn: 'First day',
  reviewOn: 'Next review',
  country: 'Country',
  ageYears: 'Age',
  heightM: 'Height',
  massKg: 'Body mass',
  protocol: 'Protocol',
  side: 'Painful side',
  worseSide: 'Worse side',
  symptomWeeks: 'Weeks since it began',
  painArea: 'Where it hurts',
  clearances: 'Cleared by a recorded decision',
  'clearances.*.flag': 'Screen item',
  'clearances.*.by': 'Who decided',
  'clearances.*.on': 'When',
  'clearances.*.decision': 'Decision and ground',
  'clearances.*.imaging.kind': 'Picture taken',
  'clearances.*.imaging.on': 'Picture taken on',
  'clearances.*.imaging.result': 'What it showed',
  cannotDo: 'Cannot do, or must not',
  'pregnancy.weeks': 'Pregnant: full weeks',
  'afterBirth.weeks': 'After birth: full weeks since',
  'afterBirth.clearance.by': 'Impact after birth cleared by',
  'afterBirth.clearance.on': 'Cleared on',
  'afterBirth.clearance.decision': 'Decision and ground',
  irritability: 'Irritability',
  response24h: 'By the next day',
  usualMorningPain: 'Usual morning pain',
  tests: 'Tests done today',
  'tests.*.test': 'Test',
  'tests.*.pain': 'Pain during it',
  'tests.*.painFreeHipFlexionDeg': 'Hip bend where pain began',
  'tests.*.painFreeKneeFlexionDeg': 'Knee bend where pain began',
  'tests.*.painFreeAnkleDorsiflexionDeg': 'Dorsiflexion where pain began',
  'tests.*.seconds': 'Held for',
  'tests.*.repetitions': 'Repetitions',
  'tests.*.side': 'Leg',
  notExamined: 'Not examined',
  testedSets: 'Tested sets',
  'testedSets.*.card': 'Exercise',
  'testedSets.*.side': 'Side',
  'testedSets.*.loadKg': 'Weight',
  'testedSets.*.repetitions': 'Repetitions',
  'testedSets.*.reserve': 'In reserve',
  'testedSets.*.rangeDeg': 'Angle reached',
  'testedSets.*.tempo.go': 'Seconds out',
  'testedSets.*.tempo.hold': 'Seconds still',
  'testedSets.*.tempo.back': 'Seconds back',
  'testedSets.*.pain': 'Pain during it',
  'kit.dumbbellsKg': 'Dumbbells',
  'kit.kettlebellsKg': 'Kettlebells',
  'kit.platesKg': 'Plates',
  'kit.barKg': 'Empty bar',
  'kit.bands': 'Bands',
  'kit.rucksack': 'Rucksack',
  'kit.bottlesL': 'Bottles',
  'kit.bench': 'Bench or sofa edge',
  'kit.ball': 'Exercise ball',
  'kit.stepCm': 'Steps',
  days: 'Days with time for exercises',
  minutesPerDay: 'Minutes on such a day',
  'running.runs': 'Runs',
  'running.decision': 'Decision on running now',
  'running.weeklyKm': 'A usual week',
  'running.longestIn30DaysKm': 'Longest run in 30 days',
  'running.runsPerWeek': 'Runs a week',
  'running.weeksOff': 'Weeks without running just now',
  'running.trainingYears': 'Years of regular running',
  'running.hills': 'Used to hill work',
  'running.speed': 'Used to fast running',
  'running.hillyRoutes': 'Everyday routes hilly',
  'running.overStriding': 'Over-striding seen',
  'running.stepsPerMin': 'Step rate',
  'running.races': 'Races that stand',
  'running.races.*.on': 'Day',
  'running.races.*.km': 'Length',
  'running.races.*.decision': 'Decided on although early',
  'sitting.toleranceMinutes': 'Sits before it hurts',
  'sitting.fixedBlocksMinutes': 'Sitting that cannot be broken',
  'sitting.goalMinutes': 'Wishes to sit',
  'recovery.sleep': 'Sleep',
  'recovery.stress': 'Stress',
  'recovery.tired': 'Tired most days',
  changedBefore: 'Changed in the four weeks before',
  doesNow: 'Does now besides',
  'doesNow.*.what': 'Activity',
  'doesNow.*.times': 'Times a week',
  'doesNow.*.days': 'On fixed days',
  goals: 'Goals',
  'goals.*.what': 'In their words',
  'goals.*.on': 'By',
  'goals.*.doneTimes': 'Done again, settled by the next day',
  outcomes: 'Scores',
  'outcomes.*.on': 'Day',
  'outcomes.*.visaH': 'VISA-H',
  'outcomes.*.sittingMinutes': 'Sitting without more pain',
  'outcomes.*.globalChange': 'Global change, -3 to 3',
  'outcomes.*.activities': 'Activities, 0 unable to 10 able',
  'outcomes.*.activities.*.what': 'Activity',
  'outcomes.*.activities.*.score': 'Score',
  stage: 'Stage',
  stageBecause: 'Why a later stage than proposed',
  step: 'Step',
  'discharge.decidedBy': 'Treatment ended by',
  'discharge.on': 'Ended on',
  chosen: 'Exercises chosen',
  'chosen.*.slot': 'Slot',
  'chosen.*.card': 'Exercise',
  'chosen.*.reason': 'Reason',
  'chosen.*.beyondCap.decidedBy': 'Above the cap: decided by',
  'chosen.*.beyondCap.reason': 'Above the cap: on what ground',
  leftOut: 'Exercises left out',
  'leftOut.*.card': 'Exercise',
  'leftOut.*.reason': 'Reason',
  added: 'Exercises added',
  'added.*.card': 'Exercise',
  'added.*.afterSlot': 'After the slot',
  'added.*.reason': 'Reason',
  'added.*.beyondCap.decidedBy': 'Above the cap: decided by',
  'added.*.beyondCap.reason': 'Above the cap: on what ground',
  overrides: 'Own numbers',
  'overrides.*.path': 'Exercise and number',
  'overrides.*.value': 'Value',
  'overrides.*.reason': 'Reason',
  confirmed: 'Confirmed although it looks like a slip',
  'confirmed.*.path': 'Where it stands',
  'confirmed.*.value': 'Value',
  'confirmed.*.reason': 'How it was checked',
  draft: 'Still a draft',
  language: 'Language',
  withdraw: 'Take the leaflet out of force',
  withdrawOn: 'Out of force from',
};

/** What adds an entry to a list, and what one is called. */
export const ENTRY_WORDS: Readonly<Record<string, { readonly add: string; readonly one: string }>> = {
  clearances: {
    add: 'Add a clearance',
    one: 'Clearance',
  },
  tests: {
    add: 'Add a test',
    one: 'Test',
  },
  testedSets: {
    add: 'Add a tested set',
    one: 'Tested set',
  },
  'running.races': {
    add: 'Add a race',
    one: 'Race',
  },
  doesNow: {
    add: 'Add an activity',
    one: 'Activity',
  },
  goals: {
    add: 'Add a goal',
    one: 'Goal',
  },
  outcomes: {
    add: 'Add scores',
    one: 'Scores',
  },
  'outcomes.*.activities': {
    add: 'Add a scored activity',
    one: 'Scored activity',
  },
  chosen: {
    add: 'Choose an exercise',
    one: 'Choice',
  },
  leftOut: {
    add: 'Leave an exercise out',
    one: 'Left out',
  },
  added: {
    add: 'Add an exercise',
    one: 'Added',
  },
  overrides: {
    add: 'Set a number',
    one: 'Own number',
  },
  confirmed: {
    add: 'Confirm a value',
    one: 'Confirmed',
  },
};

export const SCREEN_GROUP_TITLES = {
  nerves: 'Nerves',
  illness: 'General illness',
  injury: 'Injury and bone',
  energy: 'Energy',
  medicines: 'Medicines',
  straining: 'Straining',
} as const;

/** The items of the screen, in its groups' order. */
export const SCREEN_LABELS = {
  saddleNumbness: 'Numb between the legs or when wiping',
  bladderBowel: 'New change of bladder or bowel',
  bothLegWeakness: 'Weakness in both legs',
  worseningWeakness: 'Weakness getting worse',
  footDrop: 'Foot that drops',
  fever: 'Fever, or feeling ill with it',
  weightLoss: 'Weight loss without a reason',
  cancerNightPain: 'Cancer in the past, with pain at night',
  clotSigns: 'Signs of a clot in leg or lung',
  popBruise: 'Sudden pop with a bruise, or could not walk',
  suspectedFracture: 'Suspected fracture',
  hopPain: 'Bone pain on hopping',
  focalBonePain: 'Pain on one spot of bone',
  nightBonePain: 'Bone pain at night or at rest',
  suddenOnsetUnder18: 'Under 18 with a sudden start',
  missedPeriods: 'Missed periods',
  lowEnergy: 'Eats too little for the training',
  fluoroquinolone: 'Fluoroquinolone antibiotic, last six months',
  oralSteroid: 'Steroid tablets',
  recentInjection: 'Injection near the tendon, last two weeks',
  uncontrolledBloodPressure: 'Blood pressure not under control',
  hernia: 'Hernia',
} as const;
