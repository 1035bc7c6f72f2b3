/** What the page's script knows: the plan and the rules of one person as codes and numbers. Data alone, no words. */
import type { MorningRules } from '../scheduling/morning.ts';
import type { PainPerson, PainRules } from '../scheduling/painLimits.ts';
import type { PlannedDay, Spacing } from '../scheduling/today.ts';
import type { AlarmItem } from '../decisions/terms/alarmItem.ts';
import type { IsoDate } from '../units/date.ts';

export type { AlarmItem };

/** What answers an entry of the log, and spaces the sessions. */
export interface RulesInUse {
  readonly pain: PainRules;
  readonly person: PainPerson;
  readonly morning: MorningRules;
  readonly spacing: Spacing;
}

/** Up to how many minutes of sitting, from a day on. */
export interface SittingInUse {
  readonly from: IsoDate;
  readonly uprightMinutes: number;
  readonly hardMinutes: number;
}

/** What is counted through with an exercise. */
export interface PacedExercise {
  readonly card: string;
  readonly sets: number;
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  /** Seconds out, at the far end, and back; null where there is no pace. */
  readonly tempo: {
    readonly goSeconds: number;
    readonly holdSeconds: number;
    readonly backSeconds: number;
  } | null;
  readonly restSeconds: number;
  readonly timesPerDay: number;
  readonly loadKg: number | null;
  /** `each`: one leg after the other, the first of them first; `turns`: both within a set. */
  readonly legs: 'together' | 'turns' | 'each';
  readonly firstSide: 'left' | 'right';
}

/** With what of it the easier numbers are, to which a bad morning or pain sends. */
export interface ExerciseInUse extends PacedExercise {
  readonly easierSets: number;
  readonly easierLoadKg: number | null;
}

/** The beat a runner is advised to step to, from its day on. */
export interface StepRateInUse {
  readonly stepsPerMin: number;
  readonly fromOn: IsoDate;
}

export interface DayInUse extends PlannedDay {
  /** Cards of the session, and of what is done between the sessions or every day. */
  readonly sessionCards: readonly string[];
  readonly betweenCards: readonly string[];
  readonly other: boolean;
  /** All of the day as the calendar says it; empty on a free day. */
  readonly text: string;
  /** Runs and races of it alone; empty where there are none. */
  readonly runText: string;
  /** Of its runs and races; null where they do not go by distance. */
  readonly runKm: number | null;
}

/** What is told before the first day. */
const PLAIN_DAY: Omit<DayInUse, 'on'> = {
  session: false,
  between: false,
  run: false,
  race: false,
  easyAfterRace: false,
  sessionCards: [],
  betweenCards: [],
  other: false,
  text: '',
  runText: '',
  runKm: null,
};

/** A day as the block says it: what is otherwise than on the day told before, or which day, by its place, is the same. */
export type SaidDay = Pick<DayInUse, 'on'> & (Partial<DayInUse> | { readonly like: number });

export function saidDays(days: readonly DayInUse[]): readonly SaidDay[] {
  const places = new Map<string, number>();
  let before = PLAIN_DAY;
  return days.map(({ on, ...rest }, at) => {
    const key = JSON.stringify(rest);
    const like = places.get(key);
    if (like !== undefined) return { on, like };
    places.set(key, at);
    const said = { on, ...unlike(before, rest) };
    before = rest;
    return said;
  });
}

/** The whole days again. */
export function wholeDays(said: readonly SaidDay[]): readonly DayInUse[] {
  const days: DayInUse[] = [];
  let before = PLAIN_DAY;
  for (const day of said) {
    if (!('like' in day)) before = { ...before, ...day };
    days.push({ ...('like' in day ? (days[day.like] as DayInUse) : before), on: day.on });
  }
  return days;
}

/** An exercise as the block says it: what is otherwise than in the one before. */
export type SaidExercise = Partial<ExerciseInUse>;

export function saidExercises(exercises: readonly ExerciseInUse[]): readonly SaidExercise[] {
  return exercises.map((one, at) => unlike(exercises[at - 1] ?? {}, one));
}

/** The whole exercises again. */
export function wholeExercises(said: readonly SaidExercise[]): readonly ExerciseInUse[] {
  let before = {};
  return said.map((one) => (before = { ...before, ...one }) as ExerciseInUse);
}

function unlike<Told extends object>(before: Partial<Told>, told: Told): Partial<Told> {
  const kept = Object.entries(told).filter(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(before[key as keyof Told]),
  );
  return Object.fromEntries(kept) as Partial<Told>;
}

/** The block that stands in the page. */
export interface SheetInUse {
  readonly alias: string;
  readonly revision: number;
  /** Of the make; empty where none is printed. */
  readonly mark: string;
  readonly startOn: IsoDate;
  readonly reviewOn: IsoDate;
  readonly seenOn: IsoDate;
  /** To call at once. */
  readonly emergencyNumber: string;
  readonly alarms: readonly AlarmItem[];
  readonly rules: RulesInUse;
  /** In order of their days; empty where nothing is counted. */
  readonly sitting: readonly SittingInUse[];
  /** In the order of the page. */
  readonly exercises: readonly ExerciseInUse[];
  /** Null where the plan advises no other step rate than the usual one before the review. */
  readonly stepRate: StepRateInUse | null;
  readonly days: readonly DayInUse[];
  /** Over what the sheet says of running, which is not read yet when the page leads to it. */
  readonly runHeading: string;
}
