// The shipped library, the demo consults and the consults of the test cases, read as the command line reads them.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readConsults } from '#dist/content/readConsults.js';
import { readLibrary } from '#dist/content/readLibrary.js';
import { assembleProgramme } from '#dist/programme/assemble.js';

export const TOP = fileURLToPath(new URL('..', import.meta.url));

/** All Markdown files below a folder of the checkout, as content wants them; `below` stands before their names. */
export function filesIn(folder, below = '') {
  return readdirSync(`${TOP}${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => ({
      file: `${below}${file.replaceAll('\\', '/')}`,
      bytes: readFileSync(`${TOP}${folder}/${file}`),
      link: 'no',
    }));
}

/** The files of the shipped library, without its demo consults. */
export const libraryFiles = filesIn('content').filter(({ file }) => !file.startsWith('consults/'));

/** A library that must have no Problem, with the places of its values. */
export function libraryOf(files) {
  const reading = readLibrary(files);
  if (reading.library === null) throw new Error(JSON.stringify(reading.problems.slice(0, 3)));
  return reading;
}

export const { library } = libraryOf(libraryFiles);

/** The three demo consults. */
export const demos = consultsIn('content/consults');

/** The consult of every test case. */
export const cases = readdirSync(`${TOP}tests/cases`).flatMap((name) => consultsIn(`tests/cases/${name}/in`));

function consultsIn(folder) {
  return readConsults(filesIn(folder, 'consults/'), library).current;
}

/** `count` programmes in turn under aliases of their own, with nothing shared that could be worked out for two of them. */
export function copiesOf(programmes, count) {
  return Array.from({ length: count }, (_, at) => ({
    ...structuredClone(programmes[at % programmes.length]),
    alias: `one-${at}`,
  }));
}

/** The programme of a consult, null where it is refused. */
export function programmeOf(consult, models = new Map()) {
  const made = assembleProgramme(consult, null, { library, models, loadleaf: '0' });
  return 'programme' in made ? made.programme : null;
}
