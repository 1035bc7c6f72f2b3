/** The series over the revisions: what each found and asked for. */
import type { Decided } from '../../decisions/decide.ts';
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
