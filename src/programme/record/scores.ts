/** Scores over the revisions, one series each: for the pictures and for the letter. */
import type { Consult, Protocol } from '../../content/library.ts';
import type { MinimalChange, ScoreKind } from '../../messages/en/clinician/record/pictures.ts';
import type { ScoreChange } from '../../messages/en/patient/letter.ts';
import type { IsoDate } from '../../units/date.ts';
import type { CourseEntry } from '../programme.ts';

export interface ScoreSeries {
  readonly kind: ScoreKind;
  /** By date. */
  readonly points: readonly { readonly on: IsoDate; readonly value: number }[];
  readonly minimal: MinimalChange | null;
  /** Least and most of the score; null where it has no end. */
  readonly bounds: readonly [least: number, most: number] | null;
}

type Outcome = Consult['outcomes'][number];

/** Every score that has an entry. */
export function scoreSeries(
  course: readonly CourseEntry[],
  { minimalChange: { visaHPoints, activityPoints, morningPainPoints } }: Protocol,
): readonly ScoreSeries[] {
  const scores = scoresOf(course);
  const of = (value: (one: Outcome) => number | undefined) =>
    scores.flatMap((one) => {
      const found = value(one);
      return found === undefined ? [] : [{ on: one.on, value: found }];
    });
  const activities = [...new Set(scores.flatMap((one) => (one.activities ?? []).map(({ what }) => what)))];
  const all: readonly ScoreSeries[] = [
    series(
      'visaH',
      of(({ visaH }) => visaH),
      visaHPoints,
      [0, 100],
    ),
    ...activities.map((what) => ({
      ...series('activity', of(scoreOf(what)), activityPoints, [0, 10]),
      kind: { score: 'activity' as const, activity: what },
    })),
    series(
      'usualMorningPain',
      course.map(({ on, usualMorningPain: value }) => ({ on, value })),
      morningPainPoints,
      [0, 10],
    ),
    series(
      'sittingMinutes',
      of(({ sittingMinutes }) => sittingMinutes),
      undefined,
      null,
    ),
    series(
      'globalChange',
      of(({ globalChange }) => globalChange),
      undefined,
      [-3, 3],
    ),
  ];
  return all.filter(({ points }) => points.length > 0);
}

/** The first and the last entry of each. */
export function scoreChanges(course: readonly CourseEntry[], protocol: Protocol): readonly ScoreChange[] {
  return scoreSeries(course, protocol).flatMap(({ kind, points, minimal }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined) return [];
    return [{ kind, first, last: last === first || last === undefined ? null : last, minimal }];
  });
}

function scoreOf(what: string): (one: Outcome) => number | undefined {
  return ({ activities }) => activities?.find((one) => one.what === what)?.score;
}

function series(
  score: ScoreKind['score'],
  points: ScoreSeries['points'],
  least: Protocol['minimalChange']['visaHPoints'],
  bounds: ScoreSeries['bounds'],
): ScoreSeries {
  const minimal =
    least === undefined ? null : { value: least.value, mark: least.mark, cite: least.cite ?? '-' };
  return { kind: { score, activity: null }, points, minimal, bounds };
}

/** The scores of all revisions by date; of one date what the latest revision says. */
function scoresOf(course: readonly CourseEntry[]): Consult['outcomes'] {
  const byDate = new Map(course.flatMap(({ outcomes }) => outcomes.map((one) => [one.on, one] as const)));
  return [...byDate.values()].toSorted((a, b) => (a.on < b.on ? -1 : 1));
}
