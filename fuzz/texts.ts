/** Harm in every field that takes words, of a consult and of a card: no element, no header, nothing a terminal obeys. */
import { leafletHtml } from '../src/outputs/html/leaflet.ts';
import { recordHtml } from '../src/outputs/html/record.ts';
import { libraryPages } from '../src/outputs/html/site.ts';
import { readPageAssets, readPaperAssets } from '../src/shell/io/assets.ts';
import type { PageAssets } from '../src/outputs/html/assets.ts';
import type { PaperAssets } from '../src/outputs/pdf/leaflet.ts';
import { readLibrary } from '../src/content/readLibrary.ts';
import { libraryView } from '../src/catalogue/libraryView.ts';
import type { Programme } from '../src/programme/programme.ts';
import { letterText } from '../src/outputs/text/letterText.ts';
import { noteText } from '../src/outputs/text/noteText.ts';
import { recordJson } from '../src/outputs/text/recordJson.ts';
import { faultsOf } from '../tests/outputs/html/validate.ts';
import type { Chance } from './chance.ts';
import { checked, sourceOf } from './consults.ts';
import { LIBRARY, PEOPLE, type TextFile } from './corpus.ts';
import type { Family, Verdict } from './family.ts';
import { hostileText } from './hostile.ts';
import { OBEYED, problemFaults } from './judge.ts';
import { strangers } from './strangers.ts';

/** Keys under which words of an author stand, with what leads to them. */
const WORDS =
  /^(\s*(?:- )?(?:clinician|painArea|what|reason|stageBecause|decision|by|how|notes?|title|alt|cite|name|because|words|who)): (?!\d)(.*\S)$/;
const ENTRY = /^(\s*- )([a-z][a-z ]*)$/;

const CARDS = LIBRARY.filter(({ file }) => file.startsWith('exercises/') || file.startsWith('advice/'));

export const texts: Family = {
  name: 'texts',
  what: 'harmful words in the fields of consults and cards',
  open: async () => {
    const [page, paper] = await Promise.all([readPageAssets(), readPaperAssets(null)]);
    return {
      attempt: (chance) => (chance.onceIn(3) ? ofCard(chance, page) : ofConsult(chance, page, paper)),
      close: () => undefined,
    };
  },
};

/** One field, or the words below the front matter, with a harmful text in it. */
function withHarm({ file, text }: TextFile, chance: Chance): TextFile {
  const harm = hostileText(chance);
  const lines = text.split('\n');
  const front = lines.indexOf('---', 1);
  const places = lines.flatMap((line, at) =>
    at < front && (WORDS.test(line) || ENTRY.test(line)) ? [at] : at > front && line !== '' ? [at] : [],
  );
  const at = chance.of(places);
  const line = lines[at] ?? '';
  const lead = WORDS.exec(line)?.[1];
  const written = chance.onceIn(5) ? harm : JSON.stringify(harm);
  const changed =
    at > front
      ? `${line} ${harm}`
      : lead === undefined
        ? line.replace(ENTRY, (_, start) => start + written)
        : `${lead}: ${written}`;
  return { file, text: lines.toSpliced(at, 1, changed).join('\n') };
}

async function ofConsult(chance: Chance, page: PageAssets, paper: PaperAssets): Promise<Verdict> {
  const person = chance.of(PEOPLE);
  const last = person.length - 1;
  const spoilt = person.map((one, index) => (index === last ? withHarm(one, chance) : one));
  const files = spoilt.map(sourceOf);
  const { problems, made } = checked(files, paper);
  const faults = problemFaults(problems, files);
  for (const { programme } of made) faults.push(...(await programmeFaults(programme, page)));
  const tried = spoilt.map(({ file, text }) => `${file}\n${text}`).join('\n');
  return { end: made.length > 0 ? 'built' : 'refused', tried, faults };
}

async function programmeFaults(programme: Programme, page: PageAssets): Promise<string[]> {
  const pages = [leafletHtml(programme, page), recordHtml(programme, page)];
  const plain = [
    noteText(programme),
    ...(programme.letter === null ? [] : [letterText(programme.letter, programme)]),
  ];
  const json = recordJson(programme);
  JSON.parse(json);
  return [
    ...(await Promise.all(pages.map(pageFaults))).flat(),
    ...plain.flatMap((text) => (OBEYED.test(text) ? ['a note that a terminal obeys'] : [])),
    ...(OBEYED.test(json) ? ['a record that a terminal obeys'] : []),
  ];
}

async function pageFaults(markup: string): Promise<string[]> {
  return [...strangers(markup), ...(await faultsOf(markup))];
}

async function ofCard(chance: Chance, page: PageAssets): Promise<Verdict> {
  const card = chance.of(CARDS);
  const spoilt = withHarm(card, chance);
  const sources = LIBRARY.map((one) => sourceOf(one === card ? spoilt : one));
  const { library, problems } = readLibrary(sources);
  const tried = `${spoilt.file}\n${spoilt.text}`;
  if (library === null) return { end: 'refused', tried, faults: problemFaults(problems, sources) };
  const own = `public/${card.file.replace(/\.md$/, '.html')}`;
  const made = libraryPages(libraryView(library, new Map(), new Map()), page).find(
    ({ path }) => path === own,
  );
  const faults = made === undefined ? [`no page ${own}`] : await pageFaults(made.content);
  return { end: 'built', tried, faults };
}
