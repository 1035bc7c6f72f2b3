/** The patient's first name on what is given to the patient, and on nothing else. */
import { greeting } from '../../messages/en/patient/post.ts';
import type { Programme } from '../../programme/programme.ts';
import { oneLineText } from '../../units/oneLineText.ts';
import { outputOf, type OutputFile } from '../../set/outputs.ts';

/** The programme as it stands where no name was typed; the name replaces the alias in the title, and ends the greeting. */
export function named(programme: Programme, name: OutputFile, firstName: string): Programme {
  const given = oneLineText(firstName).trim();
  if (given === '' || outputOf(name).isNamed !== true) return programme;
  const { alias, post } = programme;
  return {
    ...programme,
    title: programme.title.replace(alias, () => given),
    post: { ...post, message: { ...post.message, greeting: greeting(given) } },
  };
}
