/** The patient's first name on what is given to the patient, and on nothing else. */
import type { Programme } from '../../programme/programme.ts';
import type { MadeName } from '../talk.ts';

const GIVEN: readonly MadeName[] = ['leaflet.html', 'leaflet.pdf'];

/** The programme as it stands where no name was typed; the name replaces the alias in the title alone. */
export function named(programme: Programme, name: MadeName, firstName: string): Programme {
  const given = firstName.trim();
  if (given === '' || !GIVEN.includes(name)) return programme;
  return { ...programme, title: programme.title.replace(programme.alias, () => given) };
}
