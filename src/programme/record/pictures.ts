/** The clinician's pictures: what the log and the revisions hold, laid out over days. None of what is not there. */
import type { Protocol } from '../../content/library.ts';
import type { Messages } from '../../messages/messages.ts';
import type { PictureWords } from '../../messages/en/clinician/record/pictures.ts';
import type { ReviewSeries } from '../../review/terms.ts';
import type { Review } from '../../review/terms.ts';
import { addDays, daysBetween, type IsoDate } from '../../units/date.ts';
import type { DayChart } from '../../units/dayChart.ts';
import type { CourseEntry, Picture } from '../programme.ts';
import { scoreSeries } from './scores.ts';

/** Of the revision before by its log (null where none was kept), then of all revisions. */
export function picturesOf(
  say: Messages,
  review: Review | null,
  course: readonly CourseEntry[],
  protocol: Protocol,
): readonly Picture[] {
  return [
    ...(review === null ? [] : logPictures(say, review, course.at(-2))),
    ...bendPictures(say, course),
    ...scorePictures(say, course, protocol),
  ];
}

interface Point {
  readonly on: IsoDate;
  readonly value: number;
}

interface Lines {
  readonly asked?: readonly (readonly Point[])[];
  readonly done?: readonly (readonly Point[])[];
  readonly limits?: readonly number[];
}

function logPictures(
  say: Messages,
  { from, until, series }: Review,
  before: CourseEntry | undefined,
): Picture[] {
  const span: Span = { from, to: addDays(until, -1) };
  const { sessions, mornings, runs, sitting } = series;
  const written = mornings.filter(({ score }) => score !== null).length;
  return [
    ...(sessions.some(({ done }) => done)
      ? [pictureOf(say, say.sessionsPicture(series), span, sessionLines(series, span))]
      : []),
    ...(written > 1
      ? [pictureOf(say, say.morningsPicture(series), span, morningLines(series), [0, 10])]
      : []),
    ...loadPictures(say, series, span, before),
    ...(['km', 'minutes'] as const).flatMap((unit) =>
      runs.done.some((one) => one[unit] !== null)
        ? [pictureOf(say, say.runsPicture(series, unit), span, runLines(series, unit))]
        : [],
    ),
    ...(sitting.done.length > 0
      ? [pictureOf(say, say.sittingPicture(series), span, sittingLines(series))]
      : []),
  ];
}

// Counted up, so that a session that was late meets its line again.
function sessionLines({ sessions }: ReviewSeries, { from, to }: Span): Lines {
  const counted = (which: 'planned' | 'done'): Point[] => {
    const days = sessions.filter((one) => one[which]).map(({ on }) => on);
    const points = days.map((on, index) => ({ on, value: index + 1 }));
    return [...(days[0] === from ? [] : [{ on: from, value: 0 }]), ...points];
  };
  const [planned, done] = [counted('planned'), counted('done')];
  const last = planned.at(-1);
  return {
    asked: [last === undefined || last.on === to ? planned : [...planned, { on: to, value: last.value }]],
    done: [done],
  };
}

function morningLines({ mornings, bands }: ReviewSeries): Lines {
  return {
    done: stretchesOf(mornings.map(({ on, score: value }) => ({ on, value }))),
    limits: [bands.usual, bands.carryOnTo, bands.easeBackFrom],
  };
}

function stretchesOf(days: readonly { readonly on: IsoDate; readonly value: number | null }[]): Point[][] {
  const stretches: Point[][] = [[]];
  for (const { on, value } of days)
    if (value === null) stretches.push([]);
    else stretches.at(-1)?.push({ on, value });
  return stretches.filter(({ length }) => length > 0);
}

function loadPictures(
  say: Messages,
  { loads }: ReviewSeries,
  span: Span,
  before: CourseEntry | undefined,
): Picture[] {
  return loads.flatMap((load) => {
    const exercise = before?.exercises.find(({ card }) => card === load.card);
    if (load.done.length === 0 || exercise === undefined) return [];
    const value = load.plannedKg;
    const asked = [span.from, span.to].map((on) => ({ on, value }));
    const done = load.done.map(({ on, loadKg }) => [{ on, value: loadKg }]);
    const words = say.loadPicture(load, exercise.title, exercise.hipFlexionDeg);
    return [pictureOf(say, words, span, { asked: [asked], done })];
  });
}

function runLines({ runs }: ReviewSeries, unit: 'km' | 'minutes'): Lines {
  const points = (of: ReviewSeries['runs']['done']) =>
    of.flatMap((one) => (one[unit] === null ? [] : [[{ on: one.on, value: one[unit] }]]));
  return { asked: points(runs.planned), done: points(runs.done) };
}

function sittingLines({ sitting: { toleranceMinutes, goalMinutes, done } }: ReviewSeries): Lines {
  return {
    done: done.map(({ on, minutes }) => [{ on, value: minutes }]),
    limits: [toleranceMinutes, ...(goalMinutes === null ? [] : [goalMinutes])],
  };
}

/** Hip bend from revision to revision, of what is done now and where it has changed. */
function bendPictures(say: Messages, course: readonly CourseEntry[]): Picture[] {
  const now = course.at(-1);
  return (now?.exercises ?? []).flatMap(({ card, title }) => {
    const bends = course.flatMap(({ revision, on, exercises }) => {
      const value = exercises.find((one) => one.card === card)?.hipFlexionDeg ?? null;
      return value === null ? [] : [{ revision, on, value }];
    });
    const span = spanOf(bends);
    const isLevel = bends.every(({ value }) => value === bends[0]?.value);
    return isLevel || span === null
      ? []
      : [pictureOf(say, say.bendPicture(title, bends), span, { asked: [bends] })];
  });
}

function scorePictures(say: Messages, course: readonly CourseEntry[], protocol: Protocol): Picture[] {
  return scoreSeries(course, protocol).flatMap(({ kind, points, minimal, bounds }) => {
    const span = spanOf(points);
    if (points.length < 2 || span === null) return [];
    const better = kind.score === 'usualMorningPain' ? -1 : 1;
    const limits = minimal === null ? [] : [(points[0]?.value ?? 0) + better * minimal.value];
    const words = say.scorePicture(kind, points, minimal);
    return [pictureOf(say, words, span, { done: [points], limits }, bounds ?? undefined)];
  });
}

interface Span {
  readonly from: IsoDate;
  readonly to: IsoDate;
}

type Bounds = readonly [low: number, high: number];

function spanOf(points: readonly { readonly on: IsoDate }[]): Span | null {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? null : { from: first.on, to: last.on };
}

function pictureOf(say: Messages, words: PictureWords, span: Span, lines: Lines, bounds?: Bounds): Picture {
  const { heading, sentence, table } = words;
  return {
    heading,
    sentence,
    alt: say.pictureAlt(words),
    chart: chartOf(say, words, span, lines, bounds),
    table,
  };
}

function chartOf(
  say: Messages,
  { up, asked, done, limits: limitWords }: PictureWords,
  { from, to }: Span,
  lines: Lines,
  bounds?: Bounds,
): DayChart {
  const dayOf = (on: IsoDate) => daysBetween(from, on);
  const values = [...(lines.asked ?? []), ...(lines.done ?? [])].flat().map(({ value }) => value);
  const limits = (lines.limits ?? []).map((value, index) => ({ value, text: limitWords[index] ?? '' }));
  const scale = scaleOf(bounds ?? [0, Math.max(...values, ...limits.map(({ value }) => value))]);
  const line = (name: string | null, kind: 'asked' | 'done', stretches: Lines['done'] = []) =>
    name === null || stretches.length === 0
      ? []
      : [
          {
            name,
            kind,
            stretches: stretches.map((points) => points.map(({ on, value }) => ({ day: dayOf(on), value }))),
          },
        ];
  return {
    up,
    across: say.PICTURE_ACROSS,
    ...scale,
    days: dayOf(to),
    ticks: ticksOf(dayOf(to)).map((day) => ({ day, text: say.dayTick(addDays(from, day)) })),
    limits: limits.filter(({ value }) => value >= scale.low && value <= scale.high),
    lines: [...line(asked, 'asked', lines.asked), ...line(done, 'done', lines.done)],
  };
}

const MOST_STEPS = 6;
const ROUND_STEPS = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500];

/** A scale of whole round steps, few enough to be read. */
function scaleOf([low, most]: Bounds): Pick<DayChart, 'low' | 'high' | 'step'> {
  const span = Math.max(1, most - low);
  const step = ROUND_STEPS.find((one) => span / one <= MOST_STEPS) ?? Math.ceil(span / MOST_STEPS);
  return { low, high: low + step * Math.ceil(span / step), step };
}

const MOST_TICKS = 6;

/** Days under which a date stands: every so many whole weeks, of a short time every so many days. */
function ticksOf(days: number): readonly number[] {
  const unit = days > MOST_TICKS ? 7 : 1;
  const every = unit * Math.max(1, Math.ceil(days / unit / MOST_TICKS));
  return Array.from({ length: Math.floor(days / every) + 1 }, (_, index) => index * every);
}
