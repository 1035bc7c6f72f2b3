/**
 * The one finished value: every number, date and sentence of one person's programme, decided and frozen.
 * Page, paper and record choose places and sizes; none of them works out or words anything.
 */
import type { Consult } from '../content/library.ts';
import type { EasedExercise } from '../decisions/session/easier.ts';
import type { Review } from '../review/terms.ts';
import type { PlanEntry, PlanGrowth } from '../decisions/terms/planEntry.ts';
import type { StageName } from '../decisions/terms/stageName.ts';
import type { ModelEstimate } from '../decisions/candidates/estimate.ts';
import type { CellName, DecidedBy, DecidedCell } from '../decisions/terms/cell.ts';
import type { DoseSign, EmergencyBox, LogSheet, SaidPart, Section, Table } from '../messages/shapes.ts';
import type { Language } from '../content/schema/words.ts';
import type { Block } from '../content/prose/block.ts';
import type { Scene } from '../mechanics/scene.ts';
import type { Post } from './posted.ts';
import type { IsoDate } from '../units/date.ts';
import type { DayChart } from '../units/dayChart.ts';
import type { Weekday } from '../units/weekday.ts';
import type { PacedExercise, RulesInUse, SittingInUse, StepRateInUse } from './sheetInUse.ts';

export interface Programme {
  readonly format: 1;
  readonly alias: string;
  readonly revision: number;
  readonly language: Language;
  readonly paper: 'A4' | 'Letter';
  /** Size of running text on paper, points. */
  readonly bodyTypePt: number;
  /** Document title, for example `Home exercises for otter`. */
  readonly title: string;
  /** Alias, revision and dates in one line, for headers and footers. */
  readonly runningLine: string;
  /** `n of m` wording is the paper's; this is the word before it. */
  readonly pageWord: string;
  /**
   * By which its page, paper, record and note are known as one make: a short hash of all the rest. It is put in when a
   * programme is finished and about to be laid out (`record/mark.ts`); until then there is none, and none is printed.
   */
  readonly mark?: string | undefined;
  readonly clinic: {
    readonly name: string;
    readonly contact: readonly string[];
    readonly logo: string | null;
  };
  readonly clinician: string;
  readonly seenOn: IsoDate;
  readonly startOn: IsoDate;
  readonly reviewOn: IsoDate;
  /** `Use this from 3 March to 23 March 2026. Next review: 24 March.` */
  readonly dates: string;
  readonly stage: StageChoice;
  readonly step: number;
  /** Who it is for and why it hurts, three sentences or so. */
  readonly opening: readonly string[];
  readonly emergency: EmergencyBox;
  /** `For use by or under a licensed clinician; local rules come first.` and its like. */
  readonly notice: readonly string[];
  readonly nextSession: NextSession;
  /** The present step, in the order of the session. */
  readonly exercises: readonly Exercise[];
  /** The present step in full, then the next two as a preview. */
  readonly steps: readonly StepTable[];
  /** What to heed because of blood pressure, a medicine, pregnancy or birth; without parts where nothing is. */
  readonly precautions: Section;
  readonly painRule: Section;
  readonly morningCheck: Section;
  /** Easier numbers for after a flare or two bad mornings. */
  readonly easier: Section;
  readonly flare: Section;
  readonly missedDays: Section;
  readonly getHelp: Section;
  readonly week: Section;
  readonly running: Section;
  readonly sitting: Section;
  readonly stretching: Section;
  /** Keep, change how, leave until. */
  readonly activities: Section;
  /** Named on this leaflet besides the present exercises: morning check, flare, steps to come. */
  readonly named: NamedExercises;
  readonly whatComesNext: Section;
  readonly advice: readonly AdviceText[];
  readonly log: LogSheet;
  readonly calendar: readonly DatedSession[];
  /** Every day from the start to the day before the review (a race on the review day included), as codes and numbers. */
  readonly plan: readonly PlanEntry[];
  /** What grows in which week of the plan. */
  readonly growth: readonly PlanGrowth[];
  /** What the page goes on with by itself: rules that answer an entry of the log, doses to count through. */
  readonly inUse: {
    readonly emergencyNumber: string;
    readonly rules: RulesInUse;
    readonly sitting: readonly SittingInUse[];
    readonly exercises: readonly PacedExercise[];
    readonly stepRate: StepRateInUse | null;
  };
  /** The one-page letter to the referrer at the end of treatment; null before it. */
  readonly letter: Section | null;
  /** The easier numbers of each exercise, where they are other ones; felt-for weights have none. */
  readonly eased: readonly EasedExercise[];
  /** What the log of the revision before led to, as codes and numbers; null where none was kept. */
  readonly review: Review | null;
  /** What goes to the patient by mail and calendar. */
  readonly post: Post;
  readonly record: ProgrammeRecord;
}

export interface NextSession {
  readonly heading: string;
  /** `Tuesday 3 March, then leave one clear day.` */
  readonly when: string;
  /** `About 25 minutes with rests.` */
  readonly minutes: string;
  readonly minutesValue: number;
  /** `If you only have 15 minutes, do these two: ...`, as the week says it; empty where a session day has no exercise. */
  readonly short: string;
  /** The cards of that sentence, in the order of the session. */
  readonly shortCards: readonly string[];
}

/** One number of the dosage table with its words and its reason. */
export interface Cell extends Omit<DecidedCell, 'rule'> {
  /** As the patient reads it; plain words, no shorthand. Empty when the cell does not apply. */
  readonly text: string;
  /** The rule in words, for the record. */
  readonly rule: string;
}

/** Every exercise of a step carries all cells, in the order of CELLS; of the joint angles that of its protocol. */
export interface Prescription {
  readonly card: string;
  readonly title: string;
  readonly slot: string;
  readonly cells: readonly Cell[];
  /** Cells that read otherwise than in the step before; none in the present step, all of an exercise that is new. */
  readonly news: readonly CellName[];
}

export interface StepTable {
  readonly step: number;
  readonly heading: string;
  /** Column headings by cell, shared by page and paper. */
  readonly columns: Readonly<Record<CellName, string>>;
  readonly caption: string;
  /** What is new in this step, in a sentence; empty for the present one. */
  readonly change: string;
  /** `Go on when ...`; empty for the present step. */
  readonly goOnWhen: readonly string[];
  readonly present: boolean;
  readonly prescriptions: readonly Prescription[];
}

export interface Exercise {
  readonly card: string;
  readonly title: string;
  readonly slot: string;
  /** `Right leg`, `Both legs together`, `Each leg in turn`. */
  readonly side: string;
  /** Label and text where it is no part of the next session: `Between sessions`, `Tuesday and Thursday`. */
  readonly between: { readonly label: string; readonly text: string } | null;
  /** The dose in big type: `4 × 8` or `5 × 30 seconds`. */
  readonly dose: string;
  /** The same by its parts. */
  readonly doseSign: DoseSign;
  /** The dose in words for those who do not read signs: `4 sets of 8`. */
  readonly doseWords: string;
  /** The same by its parts, with the cells they say. */
  readonly doseParts: readonly SaidPart[];
  readonly figures: FigureText | null;
  /** Home landmarks, most useful first. */
  readonly howFar: readonly string[];
  /** Label and text: weight, tempo, rest, when to stop. */
  readonly facts: readonly { readonly label: string; readonly text: string; readonly cell: CellName }[];
  /** The card's own words under its fixed headings. */
  readonly body: readonly { readonly heading: string; readonly blocks: readonly Block[] }[];
  readonly cautions: readonly string[];
  readonly cells: readonly Cell[];
}

/** Exercises with pictures and words, but no dose of their own. */
export interface NamedExercises {
  readonly heading: string;
  readonly exercises: readonly NamedExercise[];
}

export interface NamedExercise {
  readonly card: string;
  readonly title: string;
  readonly side: string;
  /** Where it is named: `For the morning check.` */
  readonly where: string;
  readonly figures: FigureText | null;
  readonly body: Exercise['body'];
  readonly cautions: readonly string[];
}

export interface FigureText {
  readonly scene: Scene;
  /** One for each frame of the scene. */
  readonly captions: readonly string[];
  /** The same with the degrees, for a place where those in the drawing would be too small to read. */
  readonly captionsWithDegrees: readonly string[];
  /** How the sign of the hip's bend is read, once, with the first figure that has it; else null. */
  readonly legend: string | null;
  /** Text alternative of the whole figure. */
  readonly alt: string;
}

export interface AdviceText {
  readonly id: string;
  readonly heading: string;
  readonly body: readonly { readonly heading: string; readonly blocks: readonly Block[] }[];
}

export interface DatedSession {
  readonly on: IsoDate;
  readonly weekday: Weekday;
  readonly kind: 'session' | 'between' | 'run' | 'race' | 'other' | 'easy';
  readonly text: string;
}

export interface StageChoice {
  readonly chosen: StageName;
  readonly name: string;
  readonly proposed: StageName;
  readonly chosenBy: 'proposal' | 'clinician';
  /** Why this stage was proposed, a sentence each, for the record. */
  readonly because: readonly string[];
}

export interface PassedOver {
  readonly card: string;
  readonly title: string;
  readonly slot: string;
  readonly stage: number | 'keepGoing';
  /** In a sentence: what stood against it. */
  readonly because: string;
  /** The name of the limit: position, hipFlexion, kneeFlexion, ankleDorsiflexion, compression, tension, demand, provokedAngle, pose, pain, testedSet, kit, cannotDo, screen, minutes, days, slotFull, entry, newStress, kind, clinician. */
  readonly limit: string;
  readonly value: number | string | null;
}

/** A thin scale of 0 to 120 degrees of hip flexion. */
export interface RangeRuler {
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly ticks: readonly { readonly stage: string; readonly capDeg: number }[];
  readonly alt: string;
}

/** All cards sorted by squeeze, with the stages' caps as lines. */
export interface CompressionLadder {
  readonly rungs: readonly {
    readonly card: string;
    readonly title: string;
    readonly compressionBw: number;
    readonly prescribed: boolean;
    /** Cards of one bracket lie within 25 % of its lowest and are not separable. */
    readonly bracket: number;
  }[];
  readonly caps: readonly { readonly stage: string; readonly compressionBw: number }[];
  readonly alt: string;
}

/** A picture for the clinician with its sentence and its numbers. */
export interface Picture {
  readonly heading: string;
  readonly sentence: string;
  readonly alt: string;
  readonly chart: DayChart;
  readonly table: Table;
}

/** What one revision found and asked for: the series over the revisions is made of these. */
export interface CourseEntry {
  readonly revision: number;
  readonly on: IsoDate;
  readonly usualMorningPain: number;
  readonly outcomes: Consult['outcomes'];
  readonly exercises: readonly {
    readonly card: string;
    readonly title: string;
    readonly hipFlexionDeg: number | null;
    readonly loadKg: number | null;
  }[];
}

/** What the log says: the move, its grounds, what to ask. */
export interface RecordedReview {
  readonly heading: string;
  readonly sentences: readonly string[];
  readonly table: Table;
  /** Planned and done, week by week. */
  readonly weeks: Table;
  readonly asksHeading: string;
  readonly asks: readonly string[];
}

export interface ProgrammeRecord {
  readonly heading: string;
  readonly findings: readonly Table[];
  readonly screen: Table;
  readonly effects: readonly string[];
  readonly notes: readonly { readonly heading: string; readonly blocks: readonly Block[] }[];
  readonly exercises: readonly {
    readonly card: string;
    readonly title: string;
    readonly decidedBy: DecidedBy;
    readonly because: string;
    readonly estimate: ModelEstimate | null;
    readonly ruler: RangeRuler | null;
    readonly remarks: readonly string[];
  }[];
  readonly ladder: CompressionLadder;
  readonly passedOver: readonly PassedOver[];
  /** Squeeze and pull over time, a session and a week, with runs and sitting beside them. */
  readonly totals: Table;
  readonly remarks: readonly string[];
  readonly week: {
    readonly days: readonly { readonly weekday: Weekday; readonly entries: readonly string[] }[];
    readonly gaveUp: readonly string[];
  };
  readonly running: Section;
  readonly sitting: Section;
  readonly stepsAhead: Section;
  readonly changes: readonly string[];
  /** Null where no log was kept of the revision before. */
  readonly review: RecordedReview | null;
  /** This revision and those before it, in order. */
  readonly course: readonly CourseEntry[];
  /** Only of what there is. */
  readonly pictures: readonly Picture[];
  readonly cert: Table;
  readonly settings: Table;
  readonly versions: { readonly library: string; readonly protocol: string; readonly loadleaf: string };
  /** The plain note to paste into the clinic's own system, an exercise a line. */
  readonly note: readonly string[];
}

/** Enough of a programme for what is sent. */
export type Posted = Pick<Programme, 'alias' | 'revision' | 'seenOn' | 'language' | 'mark' | 'post'>;
