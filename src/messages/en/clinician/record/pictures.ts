/** Words of the clinician's pictures: a sentence, axes, and the numbers as a table. Counts as they are, no share and no score. */
import type { LoadSeries, ReviewSeries } from '../../../../review/terms.ts';
import type { IsoDate } from '../../../../units/date.ts';
import type { Source } from '../../../../units/source.ts';
import type { Table } from '../../../shapes.ts';
import { countText, dayText, numberText, shortDay } from '../../plain.ts';

export interface PictureWords {
  readonly heading: string;
  readonly sentence: string;
  /** What is counted upwards, with its unit. */
  readonly up: string;
  readonly asked: string | null;
  readonly done: string | null;
  /** Words of the limits across, in the order in which the numbers are given. */
  readonly limits: readonly string[];
  readonly table: Table;
}

/** What runs to the right. */
export const PICTURE_ACROSS = 'date';

export function pictureAlt({ heading, sentence }: PictureWords): string {
  return `${heading}: ${sentence} The numbers stand in the table below.`;
}

/** Under an axis. @example dayTick('2026-03-02') // => '2 Mar' */
export function dayTick(on: IsoDate): string {
  return shortDay(on).split(' ').slice(1).join(' ');
}

export function sessionsPicture({ sessions }: Pick<ReviewSeries, 'sessions'>): PictureWords {
  const planned = sessions.filter((one) => one.planned).length;
  const done = sessions.filter((one) => one.done).length;
  const inFull = sessions.filter((one) => one.inFull).length;
  return {
    heading: 'Sessions',
    sentence: `${countText(planned, 'session')} planned; ${done} written down as done, ${inFull} of them with the whole dose.`,
    up: 'sessions, counted up',
    asked: 'planned',
    done: 'done',
    limits: [],
    table: {
      caption: 'Sessions, day by day',
      columns: ['Day', 'Planned', 'Done'],
      rows: sessions.map((one) => [
        shortDay(one.on),
        one.planned ? 'yes' : 'no',
        one.inFull ? 'whole dose' : one.done ? 'in part' : one.written ? 'not done' : 'not written',
      ]),
    },
  };
}

export function morningsPicture({ mornings, bands }: Pick<ReviewSeries, 'mornings' | 'bands'>): PictureWords {
  const scores = mornings.flatMap(({ score }) => score ?? []);
  const { usual, carryOnTo, easeBackFrom } = bands;
  const span = spanText(Math.min(...scores), Math.max(...scores));
  return {
    heading: 'Morning scores',
    sentence: `${scores.length} of ${countText(mornings.length, 'morning')} written down, ${span} of 10. The usual is ${numberText(usual)}: up to ${numberText(carryOnTo)} carry on${easeBackFrom > 10 ? '' : `, from ${numberText(easeBackFrom)} ease back`}.`,
    up: 'pain in the morning, 0 to 10',
    asked: null,
    done: 'score; gap: not written down',
    limits: [
      `usual ${numberText(usual)}`,
      `carry on to ${numberText(carryOnTo)}`,
      `ease back from ${numberText(easeBackFrom)}`,
    ],
    table: {
      caption: 'Morning scores, day by day',
      columns: ['Day', 'Score'],
      rows: mornings.map(({ on, score }) => [
        shortDay(on),
        score === null ? 'not written' : numberText(score),
      ]),
    },
  };
}

/** `hipFlexionDeg`: the bend that was asked for; null where none is. */
export function loadPicture(
  { plannedKg, done }: LoadSeries,
  title: string,
  hipFlexionDeg: number | null,
): PictureWords {
  const loads = done.map(({ loadKg }) => loadKg);
  const bend =
    hipFlexionDeg === null
      ? ''
      : ` Hip bend asked for: ${numberText(hipFlexionDeg)}°; the log does not ask what was reached.`;
  const days = new Set(done.map(({ on }) => on)).size;
  return {
    heading: `Load: ${title}`,
    sentence: `${numberText(plannedKg)} kg asked for; ${spanText(Math.min(...loads), Math.max(...loads))} kg written down on ${countText(days, 'day')}.${bend}`,
    up: 'load, kg',
    asked: 'asked for',
    done: 'done',
    limits: [],
    table: {
      caption: `Load of ${title}, day by day`,
      columns: ['Day', 'Asked for, kg', 'Done, kg'],
      rows: done.map(({ on, loadKg }) => [shortDay(on), numberText(plannedKg), numberText(loadKg)]),
    },
  };
}

/** Hip bend asked for, from revision to revision. */
export function bendPicture(
  title: string,
  bends: readonly { readonly revision: number; readonly on: IsoDate; readonly value: number }[],
): PictureWords {
  const [first, last] = [bends[0]?.value ?? 0, bends.at(-1)?.value ?? 0];
  return {
    heading: `Hip bend: ${title}`,
    sentence: `From ${numberText(first)}° to ${numberText(last)}° asked for over ${countText(bends.length, 'revision')}. The log does not ask what was reached.`,
    up: 'hip bend, degrees',
    asked: 'asked for',
    done: null,
    limits: [],
    table: {
      caption: `Hip bend of ${title} by revision`,
      columns: ['Revision', 'Day', 'Asked for'],
      rows: bends.map(({ revision, on, value }) => [String(revision), dayText(on), `${numberText(value)}°`]),
    },
  };
}

type RunUnit = 'km' | 'minutes';

export function runsPicture(
  { runs: { planned, done } }: Pick<ReviewSeries, 'runs'>,
  unit: RunUnit,
): PictureWords {
  const written = done.flatMap((one) => one[unit] ?? []);
  const word = unit === 'km' ? 'km' : 'minutes';
  const days = [...new Set([...planned, ...done].map(({ on }) => on))].sort();
  const textOf = (
    of: readonly { readonly on: IsoDate; readonly km: number | null; readonly minutes: number | null }[],
    on: IsoDate,
    none: string,
  ) =>
    of
      .filter((one) => one.on === on)
      .map((one) => (one[unit] === null ? 'not told' : numberText(one[unit])))
      .join(' and ') || none;
  return {
    heading: unit === 'km' ? 'Running, distance' : 'Running, time',
    sentence: `${countText(planned.length, 'run day')} planned, ${new Set(done.map(({ on }) => on)).size} written down as done: ${spanText(Math.min(...written), Math.max(...written))} ${word}.`,
    up: unit === 'km' ? 'a day, km' : 'a day, minutes',
    asked: planned.some((one) => one[unit] !== null) ? 'planned' : null,
    done: 'done',
    limits: [],
    table: {
      caption: `Running, ${word} a day`,
      columns: ['Day', 'Planned', 'Done'],
      rows: days.map((on) => [shortDay(on), textOf(planned, on, 'none'), textOf(done, on, 'not written')]),
    },
  };
}

export function sittingPicture({ sitting }: Pick<ReviewSeries, 'sitting'>): PictureWords {
  const { toleranceMinutes, goalMinutes, done } = sitting;
  const minutes = done.map((one) => one.minutes);
  const goal = goalMinutes === null ? '' : `, the goal ${numberText(goalMinutes)}`;
  return {
    heading: 'Sitting',
    sentence: `${spanText(Math.min(...minutes), Math.max(...minutes))} minutes, written down ${countText(done.length, 'time')}. By the consult ${numberText(toleranceMinutes)} minutes were borne${goal}.`,
    up: 'at a stretch, minutes',
    asked: null,
    done: 'sat',
    limits: [
      `borne ${numberText(toleranceMinutes)}`,
      ...(goalMinutes === null ? [] : [`goal ${numberText(goalMinutes)}`]),
    ],
    table: {
      caption: 'Sitting, minutes at a stretch',
      columns: ['Day', 'Minutes'],
      rows: done.map((one) => [shortDay(one.on), numberText(one.minutes)]),
    },
  };
}

/** A score over the revisions. `activity`: what is done, of a score of an activity. */
export interface ScoreKind {
  readonly score: 'visaH' | 'activity' | 'sittingMinutes' | 'globalChange' | 'usualMorningPain';
  readonly activity: string | null;
}

const SCORES: Readonly<Record<ScoreKind['score'], { heading: string; up: string; unit: string }>> = {
  visaH: { heading: 'VISA-H', up: 'points, 0 to 100, 100 is best', unit: 'point' },
  activity: { heading: 'Activity', up: 'points, 0 not able to 10 able', unit: 'point' },
  sittingMinutes: { heading: 'Sitting without more pain', up: 'minutes', unit: 'minute' },
  globalChange: {
    heading: 'Global change',
    up: 'points, -3 much worse to 3 much better',
    unit: 'point',
  },
  usualMorningPain: { heading: 'Usual morning pain', up: 'points, 0 to 10', unit: 'point' },
};

/** Of a minimal change: how much, and where it comes from. */
export interface MinimalChange extends Source {
  readonly value: number;
}

/** `minimal`: null where the literature that we know gives none. Less is better of pain alone. */
export function scorePicture(
  { score, activity }: ScoreKind,
  points: readonly { readonly on: IsoDate; readonly value: number }[],
  minimal: MinimalChange | null,
): PictureWords {
  const { up, unit } = SCORES[score];
  const name = scoreName({ score, activity });
  const [first, last] = [points[0]?.value ?? 0, points.at(-1)?.value ?? 0];
  const moved = last - first;
  const change =
    moved === 0
      ? 'no change'
      : `${countText(roundedOf(Math.abs(moved)), unit)} ${moved > 0 ? 'more' : 'less'}`;
  return {
    heading: name,
    sentence: `From ${numberText(first)} to ${numberText(last)} in ${countText(points.length, 'entry', 'entries')}: ${change}. ${minimalText(Math.abs(moved), unit, minimal)}`,
    up,
    asked: null,
    done: 'entered',
    limits: minimal === null ? [] : [`least change ${numberText(minimal.value)}`],
    table: {
      caption: `${name} by date`,
      columns: ['Date', 'Value'],
      rows: points.map(({ on, value }) => [on, numberText(value)]),
    },
  };
}

/** @example scoreName({ score: 'activity', activity: 'running uphill' }) // => 'Activity: running uphill' */
export function scoreName({ score, activity }: ScoreKind): string {
  const { heading } = SCORES[score];
  return activity === null ? heading : `${heading}: ${activity}`;
}

function minimalText(moved: number, unit: string, minimal: MinimalChange | null): string {
  if (minimal === null) return 'No least change that matters is set for it.';
  if (moved === 0)
    return `The least change that matters is ${countText(minimal.value, unit)} (${minimal.mark}: ${minimal.cite}).`;
  const { value, cite, mark } = minimal;
  const side = moved >= value ? 'The change reaches' : 'The change does not reach';
  return `${side} the least one that matters, ${countText(value, unit)} (${mark}: ${cite}).`;
}

function roundedOf(value: number): number {
  return Math.round(value * 10) / 10;
}

function spanText(least: number, most: number): string {
  return least === most ? numberText(least) : `${numberText(least)} to ${numberText(most)}`;
}
