/** The patient's first name on what is given to the patient, and on nothing else. */
import { greeting } from '../../messages/en/patient/post.ts';
import type { Programme } from '../../programme/programme.ts';
import { oneLineText } from '../../units/oneLineText.ts';
import type { MadeName } from '../talk.ts';

const GIVEN: readonly MadeName[] = ['leaflet.html', 'leaflet.pdf', 'message.eml', 'message.txt'];

/** The programme as it stands where no name was typed; the name replaces the alias in the title, and ends the greeting. */
export function named(programme: Programme, name: MadeName, firstName: string): Programme {
  const given = oneLineText(firstName).trim();
  if (given === '' || !GIVEN.includes(name)) return programme;
  const { alias, post } = programme;
  return {
    ...programme,
    title: programme.title.replace(alias, () => given),
    post: { ...post, message: { ...post.message, greeting: greeting(given) } },
  };
}
