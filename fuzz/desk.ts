/** Consults spoilt by chance, at the desk and by the command. */
import { readConsults } from '../src/content/readConsults.ts';
import { shipped } from '../tests/programme/shipped.ts';
import type { Chance } from './chance.ts';
import { mutants, sourceOf } from './consults.ts';
import type { PersonFiles } from './corpus.ts';
import { openDeskLaw } from './deskLaw.ts';
import type { Family } from './family.ts';

export const desk: Family = {
  name: 'desk',
  what: 'consults with values, keys and lines changed: the desk makes what build makes, and refuses what it refuses',
  open: async () => {
    const law = await openDeskLaw();
    return {
      attempt: (chance) => law.hold(mostlySound(chance)),
      close: () => void law.close(),
    };
  },
};

/** A browser is slow, and what is refused tells little: two of three are drawn again until they can be read. */
export function mostlySound(chance: Chance): PersonFiles {
  const isAnything = chance.onceIn(3);
  let person = mutants(chance);
  for (let more = 8; more > 0 && !isAnything && !canBeRead(person); more -= 1) person = mutants(chance);
  return person;
}

function canBeRead(person: PersonFiles): boolean {
  const { problems, draftProblems } = readConsults(person.map(sourceOf), shipped);
  return problems.length === 0 && draftProblems.length === 0;
}
