/** Consults with slips and harm in them: refused with a place and a cure, or built by the laws. */
import { problemOf } from '../src/content/place.ts';
import type { Problem } from '../src/content/problem.ts';
import { readConsults } from '../src/content/readConsults.ts';
import type { SourceFile } from '../src/content/source.ts';
import { readPaperAssets } from '../src/shell/io/assets.ts';
import { letterProblems } from '../src/outputs/pdf/letterProblems.ts';
import { letterRefusals } from '../src/outputs/pdf/letters.ts';
import type { PaperAssets } from '../src/outputs/pdf/leaflet.ts';
import { assembleProgramme } from '../src/programme/assemble.ts';
import type { Programme } from '../src/programme/programme.ts';
import { shipped, workshop } from '../tests/programme/shipped.ts';
import { PEOPLE, type PersonFiles } from './corpus.ts';
import type { Chance } from './chance.ts';
import type { Family, Verdict } from './family.ts';
import { lawFaults, problemFaults } from './judge.ts';
import { mutantOf, valuesIn } from './mutant.ts';

const TEXTS = PEOPLE.flatMap((files) => files.map(({ text }) => text));
const VALUES = valuesIn(TEXTS);

export const consults: Family = {
  name: 'consults',
  what: 'consults of the demo and of the whole cases with values, keys and lines changed',
  open: async () => {
    const paper = await readPaperAssets(null);
    return { attempt: async (chance) => judged(mutants(chance), paper), close: () => undefined };
  },
};

/** One person's files, one of them spoilt. */
export function mutants(chance: Chance): PersonFiles {
  const person = chance.of(PEOPLE);
  const spoilt = chance.below(person.length);
  return person.map((one, index) =>
    index === spoilt ? { ...one, text: mutantOf(one.text, VALUES, TEXTS, chance) } : one,
  );
}

function judged(person: PersonFiles, paper: PaperAssets): Verdict {
  const files = person.map(sourceOf);
  const { problems, made } = checked(files, paper);
  const tried = person.map(({ file, text }) => `${file}\n${text}`).join('\n');
  const faults = [
    ...problemFaults(problems, files),
    ...made.flatMap(({ programme, consult }) => lawFaults(programme, consult)),
    ...(problems.length === 0 && made.length === 0 ? ['neither refused nor built'] : []),
  ];
  return { end: made.length > 0 ? 'built' : 'refused', tried, faults };
}

export function sourceOf({ file, text }: PersonFiles[number]): SourceFile {
  return { file, bytes: new TextEncoder().encode(text), link: 'no' };
}

/** As `check` reads and makes them. */
export function checked(files: readonly SourceFile[], paper: PaperAssets) {
  const own = readConsults(files, shipped);
  const asProblem = (refusal: Parameters<typeof problemOf>[0]) => problemOf(refusal, own.placeOf);
  const problems: Problem[] = [...own.problems, ...own.draftProblems];
  const made: { programme: Programme; consult: (typeof own.consults)[number] }[] = [];
  for (const consult of own.current) {
    const before = own.consults
      .filter(({ alias, revision }) => alias === consult.alias && revision < consult.revision)
      .reduce<Programme | null>((previous, one) => programmeOf(one, previous), null);
    const answer = assembleProgramme(consult, before, workshop);
    if ('refusals' in answer) problems.push(...answer.refusals.map(asProblem));
    else {
      const letters = letterRefusals(answer.programme, paper.fonts);
      problems.push(...letterProblems(letters, { files, placeOf: own.placeOf, asProblem }));
      if (letters.length === 0) made.push({ programme: answer.programme, consult });
    }
    if (workshop.models.size > MOST_BODIES) workshop.models.clear();
  }
  return { problems, made };
}

// A body remembers what was asked of it; a run has thousands of bodies.
const MOST_BODIES = 50;

function programmeOf(consult: Parameters<typeof assembleProgramme>[0], previous: Programme | null) {
  const made = assembleProgramme(consult, previous, workshop);
  return 'programme' in made ? made.programme : null;
}
