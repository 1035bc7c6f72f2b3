/** Cards, advice, protocols and clinics with slips and harm in them: refused with a place and a cure, or used by the laws. */
import { checkLibrary, checkShelves } from '../src/lint/library.ts';
import { readConsults } from '../src/content/readConsults.ts';
import { readLibrary } from '../src/content/readLibrary.ts';
import { assembleProgramme } from '../src/programme/assemble.ts';
import { problemOf } from '../src/content/place.ts';
import type { Library } from '../src/content/library.ts';
import type { Problem } from '../src/content/problem.ts';
import { isoDate } from '../src/units/date.ts';
import { reasonedCells } from '../tests/laws/doseLaws.ts';
import { everyDay, printedDays } from '../tests/laws/planLaws.ts';
import { LIBRARY, PEOPLE, type TextFile } from './corpus.ts';
import type { Chance } from './chance.ts';
import { sourceOf } from './consults.ts';
import type { Family, Verdict } from './family.ts';
import { problemFaults } from './judge.ts';
import { mutantOf, valuesIn, type Values } from './mutant.ts';

const SHELVES = ['exercises/', 'advice/', 'protocols/', 'clinic.md'].map((start) =>
  shelfOf(LIBRARY.filter(({ file }) => file.startsWith(start))),
);

/** Those of whom the demo has one file. */
const DEMO = PEOPLE.filter((files) => files.length === 1).slice(0, 3);

const TODAY = isoDate('2026-11-25');

interface Shelf {
  readonly files: readonly TextFile[];
  readonly texts: readonly string[];
  readonly values: Values;
}

function shelfOf(files: readonly TextFile[]): Shelf {
  const texts = files.map(({ text }) => text);
  return { files, texts, values: valuesIn(texts) };
}

export const libraries: Family = {
  name: 'libraries',
  what: 'cards, advice, protocols and the clinic file with values, keys and lines changed',
  open: async () => ({ attempt: async (chance) => judged(chance), close: () => undefined }),
};

function judged(chance: Chance): Verdict {
  const { files, texts, values } = chance.of(SHELVES);
  const spoilt = chance.of(files);
  const mutant = { ...spoilt, text: mutantOf(spoilt.text, values, texts, chance) };
  const sources = LIBRARY.map((one) => sourceOf(one === spoilt ? mutant : one));
  const reading = readLibrary(sources);
  const { library, problems, placeOf } = reading;
  const tried = `${mutant.file}\n${mutant.text}`;
  if (TODAY === null) throw new Error('no day');
  if (library === null) {
    const beside = checkShelves(reading.shelves, TODAY, placeOf);
    const faults = problemFaults([...problems, ...beside], sources);
    if (problems.length === 0) faults.push('no library, and nobody says why');
    return { end: 'refused', tried, faults };
  }
  const person = chance.of(DEMO).map(sourceOf);
  const made = used(library, person, reading.placeOf);
  const checks = checkLibrary(library, TODAY, placeOf);
  return {
    end: 'built',
    tried,
    faults: [...problemFaults([...checks, ...made.problems], [...sources, ...person]), ...made.faults],
  };
}

/** One person's programme of that library; the numbers of its caps are its own, so those laws are not asked. */
function used(
  library: Library,
  person: readonly ReturnType<typeof sourceOf>[],
  placeInLibrary: ReturnType<typeof readLibrary>['placeOf'],
): { readonly problems: readonly Problem[]; readonly faults: readonly string[] } {
  const own = readConsults(person, library);
  const [consult] = own.current;
  if (consult === undefined) return { problems: own.problems, faults: [] };
  const made = assembleProgramme(consult, null, { library, models: new Map(), loadleaf: '0' });
  if ('refusals' in made) {
    const placeOf: typeof own.placeOf = (kind, ...where) =>
      (kind === 'consult' ? own.placeOf : placeInLibrary)(kind, ...where);
    return { problems: made.refusals.map((one) => problemOf(one, placeOf)), faults: [] };
  }
  const faults = [reasonedCells, everyDay, printedDays].flatMap((law) => {
    try {
      law(made.programme, consult);
      return [];
    } catch (error) {
      return [`${law.name}: ${error instanceof Error ? error.message : String(error)}`];
    }
  });
  return { problems: [], faults };
}
