/** The series over the revisions: what each found and asked for. */
import type { Decided } from '../../decisions/decide.ts';
import type { Consult } from '../../content/library.ts';
import type { CourseEntry, Programme } from '../programme.ts';

/** Those of the revisions before, and this one. */
export function courseOf({ person, shown }: Decided, previous: Programme | null): readonly CourseEntry[] {
  const { revision, seenOn: on, usualMorningPain, outcomes } = person.consult;
  const exercises = shown[0].prescriptions.map(({ card, cells }) => {
    const numberIn = (name: string) => {
      const value = cells.find(({ cell }) => cell === name)?.value;
      return typeof value === 'number' ? value : null;
    };
    return {
      card: card.id,
      title: card.title,
      hipFlexionDeg: numberIn('hipFlexionDeg'),
      loadKg: numberIn('loadKg'),
    };
  });
  return [...(previous?.record.course ?? []), { revision, on, usualMorningPain, outcomes, exercises }];
}

/** The scores of all revisions by date; of one date what the latest revision says. */
export function scoresOf(course: readonly CourseEntry[]): Consult['outcomes'] {
  const byDate = new Map(course.flatMap(({ outcomes }) => outcomes.map((one) => [one.on, one] as const)));
  return [...byDate.values()].toSorted((a, b) => (a.on < b.on ? -1 : 1));
}
