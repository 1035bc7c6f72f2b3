/** Fixed labels of the sheets: headings of columns and parts that carry no number of any person. */
import type { Language } from '../../content/schema/words.ts';
import type { DecidedBy } from '../../decisions/terms/cell.ts';
import type { StageChoice } from '../../decisions/terms/stageChoice.ts';

/** Labels the patient sees, on page and paper alike. */
export interface LeafletLabels {
  /** Over the exercises at a glance. */
  readonly atAGlance: string;
  /** Before how far to go in an exercise. */
  readonly howFar: string;
  /** Before what is measured besides, overleaf. */
  readonly alsoFar: string;
  /** Over the cautions of an exercise. */
  readonly watchFor: string;
  /** Over the table of an exercise's dose. */
  readonly dose: string;
  /** Over the steps to come. */
  readonly steps: string;
  /** Before the list of what must be true to go on. */
  readonly goOnWhen: string;
  /** Before who wrote the programme. */
  readonly from: string;
  /** The buttons. */
  readonly print: string;
  readonly toDark: string;
  readonly toLight: string;
  /** Columns of a coming step: what, and how much. */
  readonly exercise: string;
  readonly amount: string;
  /** Above the numbers of a coming step that stay as they are. */
  readonly asBefore: string;
  /** On the sheet for the fridge: where the days stand that are not on it, and the numbers of later steps. */
  readonly otherDays: string;
  readonly laterNumbers: string;
  /** Before the mark by which the sheets of one make are known. */
  readonly mark: string;
  /** Before who took a photo, and what opens a short loop. */
  readonly photoBy: string;
  readonly loop: string;
}

/** Labels of the clinician's record. */
export interface RecordLabels {
  readonly stage: string;
  readonly step: string;
  readonly proposed: string;
  readonly chosenBy: Readonly<Record<StageChoice['chosenBy'], string>>;
  readonly findings: string;
  readonly screen: string;
  readonly exercises: string;
  readonly decidedBy: string;
  readonly decided: Readonly<Record<DecidedBy, string>>;
  readonly squeeze: Readonly<Record<'low' | 'middle' | 'high', string>>;
  readonly noEstimate: string;
  /** The numbers of the estimate, shown on demand. */
  readonly estimate: Readonly<{
    heading: string;
    hipFlexionDeg: string;
    trunkLeanDeg: string;
    tensionBw: string;
    compressionBw: string;
    compressionVerticalOnlyBw: string;
    hipMomentNm: string;
    kneeMomentNm: string;
    demand: string;
    tensionTimeBwS: string;
    compressionTimeBwS: string;
  }>;
  readonly estimateNote: string;
  /** Unfolds the protocol's numbers. */
  readonly everySetting: string;
  readonly pictures: string;
  readonly pictureNumbers: string;
  readonly cells: string;
  readonly cell: string;
  readonly value: string;
  readonly rule: string;
  readonly inputs: string;
  readonly source: string;
  readonly ladder: string;
  /** In its place on paper, where its words would be too small. */
  readonly ladderOnScreen: string;
  readonly prescribed: string;
  readonly passedOver: string;
  readonly card: string;
  readonly slot: string;
  readonly because: string;
  /** Column heading over the number of a stage. */
  readonly stageColumn: string;
  readonly remarks: string;
  readonly week: string;
  readonly day: string;
  readonly entries: string;
  readonly gaveUp: string;
  readonly stepsAhead: string;
  readonly changes: string;
  readonly noChanges: string;
  readonly versions: string;
  readonly library: string;
  readonly protocol: string;
  readonly loadleaf: string;
  readonly part: string;
  readonly version: string;
  readonly note: string;
}

/** Labels of the public pages, which know no person. */
export interface PublicLabels {
  readonly startTitle: string;
  readonly aboutFolder: string;
  readonly styleTitle: string;
  readonly aboutStyle: string;
  /** Headings of the style page. */
  readonly colour: string;
  readonly type: string;
  readonly session: string;
  readonly charts: string;
  readonly folded: string;
}

/** Headings of a card's file that are shown in other words, which nobody takes for those of the cautions. */
const SHOWN_HEADINGS: Readonly<Record<string, string>> = { 'Look out for': 'Do it well' };

/** @example headingText('Look out for') // => 'Do it well' */
export function headingText(heading: string): string {
  return SHOWN_HEADINGS[heading] ?? heading;
}

const LEAFLET: LeafletLabels = {
  atAGlance: 'The exercises',
  photoBy: 'Photo:',
  loop: 'Show it moving',
  howFar: 'How far',
  alsoFar: 'Also',
  watchFor: 'Take care',
  dose: 'Your numbers',
  steps: 'Your steps',
  goOnWhen: 'Go on when',
  from: 'From',
  print: 'Print',
  toDark: 'Dark',
  toLight: 'Light',
  exercise: 'Exercise',
  amount: 'What is new',
  asBefore: 'All else as before',
  otherDays: 'The days after these are in your leaflet.',
  laterNumbers: 'The numbers above are those of the first days. Those of later steps are in your leaflet.',
  mark: 'Mark',
};

const RECORD: RecordLabels = {
  stage: 'Stage and step',
  step: 'Step',
  proposed: 'Proposed',
  chosenBy: { proposal: 'Chosen as proposed', clinician: 'Chosen by the clinician' },
  findings: 'Findings',
  screen: 'Screen',
  exercises: 'Exercises',
  decidedBy: 'Decided by',
  decided: {
    hipFlexion: 'the hip flexion cap',
    kneeFlexion: 'the knee flexion cap',
    ankleDorsiflexion: 'the ankle dorsiflexion cap',
    compression: 'the squeeze cap',
    tension: 'the pull cap',
    demand: 'the demand cap',
    provokedAngle: 'the angle that provoked pain',
    testedSet: 'the tested set',
    step: 'the step',
    dose: 'the dose of the protocol',
    kit: 'the kit at home',
    minutes: 'the minutes there are',
    clinician: 'the clinician',
  },
  squeeze: { low: 'Low squeeze', middle: 'Middling squeeze', high: 'High squeeze' },
  noEstimate: 'No estimate.',
  estimate: {
    heading: 'Estimates in numbers',
    hipFlexionDeg: 'Hip flexion, degrees',
    trunkLeanDeg: 'Trunk lean, degrees',
    tensionBw: 'Pull, body weights',
    compressionBw: 'Squeeze, body weights',
    compressionVerticalOnlyBw: 'Squeeze without friction, body weights (a cue, not a cap)',
    hipMomentNm: 'Hip moment, one leg, N m',
    kneeMomentNm: 'Knee moment, one leg, N m',
    demand: 'Demand, share of strength',
    tensionTimeBwS: 'Pull over a repetition, body weights × seconds',
    compressionTimeBwS: 'Squeeze over a repetition, body weights × seconds',
  },
  estimateNote: 'Model estimates for ordering positions and limiting early stages. What hurt overrides them.',
  cells: 'Every number and its reason',
  cell: 'Number',
  value: 'Value',
  rule: 'Rule',
  inputs: 'From',
  source: 'Source',
  ladder: 'Ladder of cards by squeeze',
  ladderOnScreen:
    'It stands in the file, to be looked at on the screen: on paper its words would be too small.',
  prescribed: 'prescribed',
  passedOver: 'Passed over',
  card: 'Card',
  slot: 'Slot',
  because: 'Because',
  stageColumn: 'Stage',
  remarks: 'Remarks',
  week: 'Week',
  day: 'Day',
  entries: 'Planned',
  gaveUp: 'Given up',
  stepsAhead: 'Steps ahead',
  changes: 'Changes since the last revision',
  noChanges: 'None recorded.',
  versions: 'Versions',
  library: 'Library',
  protocol: 'Protocol',
  loadleaf: 'Loadleaf',
  part: 'Part',
  version: 'Version',
  note: 'Note for the clinic’s own system',
  everySetting: 'Every setting and its source',
  pictures: 'In lines',
  pictureNumbers: 'The numbers of this picture',
};

const PUBLIC: PublicLabels = {
  startTitle: 'Exercise library',
  aboutFolder: 'This folder may be published. It holds nothing about any person.',
  styleTitle: 'How the sheets look',
  aboutStyle: 'Every element of the sheets, with invented words and numbers.',
  colour: 'Colour',
  type: 'Type',
  session: 'An exercise',
  charts: 'Charts of the record',
  folded: 'Folded until asked for',
};

/** @example recordHeading({ alias: 'otter', revision: 2 }) // => 'Record for otter, revision 2' */
export function recordHeading({ alias, revision }: { alias: string; revision: number }): string {
  return `Record for ${alias}, revision ${revision}`;
}

/** The fixed labels of a programme's language. */
export function labelsOf(_language: Language): {
  readonly leaflet: LeafletLabels;
  readonly record: RecordLabels;
  readonly public: PublicLabels;
} {
  return { leaflet: LEAFLET, record: RECORD, public: PUBLIC };
}
