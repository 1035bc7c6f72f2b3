/** The law of the desk: of the same files it makes in Chromium what `build` makes, byte for byte, and refuses the same. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launch } from '../tests/outputs/html/browser.ts';
import { served } from '../tests/desk/site.ts';
import { shippedClinic, type Clinic } from '../tests/shell/workbench.ts';
import type { PersonFiles } from './corpus.ts';
import type { Verdict } from './family.ts';

export interface DeskLaw {
  /** What is wrong where the two differ. */
  hold(person: PersonFiles): Promise<Verdict>;
  close(): Promise<void>;
}

/** What both make. */
const NAMES = [
  'leaflet.html',
  'leaflet.pdf',
  'record.html',
  'record.json',
  'note.txt',
  'letter.txt',
] as const;
type Name = (typeof NAMES)[number];

/** A clinic without persons is built and served; its desk is opened once. */
export async function openDeskLaw(): Promise<DeskLaw> {
  const clinic = shippedClinic();
  for (const alias of ['otter', 'heron', 'marten']) rmSync(join(clinic.content, `consults/${alias}-r1.md`));
  const { exit, err } = await clinic.run('build', '--quiet');
  if (exit !== 0) throw new Error(err);
  const [{ address, server }, browser] = await Promise.all([served(clinic.site), launch()]);
  // What is made is looked at where it is made.
  const page = await browser.newPage({ acceptDownloads: false });
  await page.addInitScript(
    'const make = URL.createObjectURL; globalThis.madeHere = []; URL.createObjectURL = (blob) => { madeHere.push(blob); return make(blob); };',
  );
  const thrown: string[] = [];
  page.on('pageerror', ({ message }) => thrown.push(message));
  await page.goto(address);
  await page.waitForSelector('body[data-state="incomplete"]', { timeout: 60_000 });
  return {
    hold: async (person) => {
      const faults = await differences(person, page, clinic);
      return {
        end: faults.isBuilt ? 'built' : 'refused',
        tried: person.map(({ file, text }) => `${file}\n${text}`).join('\n'),
        faults: [...faults.list, ...thrown.splice(0).map((message) => `thrown in the page: ${message}`)],
      };
    },
    close: async () => {
      await browser.close();
      server.close();
      clinic.remove();
    },
  };
}

interface Differences {
  readonly isBuilt: boolean;
  readonly list: readonly string[];
}

async function differences(person: PersonFiles, page: Page, clinic: Clinic): Promise<Differences> {
  const laid = await lay(person, page);
  if (laid === null) return { isBuilt: false, list: [] };
  const { own, alias, isReady } = laid;
  const places = person.map((one) =>
    join(clinic.content, 'consults', one === own.file ? own.name : baseName(one)),
  );
  person.forEach(({ text }, at) => writeFileSync(places[at] ?? '', text));
  const build = await clinic.answer('build', '--quiet', '--on', '2026-11-25');
  for (const place of places) rmSync(place, { force: true });
  const built = (build['programmes'] as { alias: string }[] | undefined) ?? [];
  const isBuilt = built.some((one) => one.alias === alias);
  if (isBuilt !== isReady)
    return {
      isBuilt,
      list: [
        `build ${isBuilt ? 'makes' : 'refuses'} it, the desk does not: ${JSON.stringify(build['problems'])}`,
      ],
    };
  if (!isBuilt)
    return { isBuilt, list: await refusedElse(build['problems'] as readonly Told[], own.name, page) };
  const list: string[] = [];
  for (const name of NAMES) {
    const place = join(clinic.site, 'private', alias, name);
    const wanted = existsSync(place) ? readFileSync(place) : null;
    list.push(...(await madeElse(name, wanted, page)));
  }
  return { isBuilt, list };
}

/** Puts all files on the cleared desk; null where none of it is text. */
async function lay(person: PersonFiles, page: Page) {
  await page.click('text=Clear this desk');
  await page.waitForSelector('.said:text-is("The desk is clear.")');
  await page.setInputFiles(
    '[data-open=consult]',
    person.map((one) => ({ name: baseName(one), mimeType: 'text/markdown', buffer: Buffer.from(one.text) })),
  );
  await page.waitForSelector('.said:not(:text-is("The desk is clear."))');
  await page.waitForSelector('body:not([data-state="loading"])', { timeout: 60_000 });
  const said = (await page.textContent('.said')) ?? '';
  const [, laid] = /^(\S+) lies on the desk\.$/.exec(said) ?? [];
  const file = person.find((one) => baseName(one) === laid);
  if (file === undefined) return null;
  // As the desk would save it.
  const [name = ''] = ((await page.textContent('.filename')) ?? '').split(',');
  const isReady = (await page.getAttribute('body', 'data-state')) === 'ready';
  return { own: { file, name }, alias: name.replace(/-r\d+\.md$/, ''), isReady };
}

function baseName({ file }: PersonFiles[number]): string {
  return file.replace(/^.*\//, '');
}

interface Told {
  readonly code: string;
  readonly file: string;
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** What stands against it, by the keys it stands against, each of which leads to its field, and in the same words. */
async function refusedElse(wanted: readonly Told[], own: string, page: Page): Promise<string[]> {
  const there = await page
    .locator('[data-problem]')
    .evaluateAll<Said[], Control>((all) =>
      all.map(({ dataset, textContent }) => ({ path: dataset.problem ?? '', text: textContent ?? '' })),
    );
  const missing = (wanted ?? [])
    .filter(({ file }) => file === `consults/${own}`)
    .filter((one) => !there.some(({ path, text }) => path === dotted(one.path) && isSaid(one, text)));
  return missing.length === 0
    ? []
    : [`refused by build for ${JSON.stringify(missing)}, at the desk for ${JSON.stringify(there)}`];
}

interface Said {
  readonly path: string;
  readonly text: string;
}

interface Control {
  readonly dataset: { readonly problem?: string };
  readonly textContent: string | null;
}

/** What is missing is only named while the consult is on its way. */
function isSaid({ code, found, expected, fix }: Told, text: string): boolean {
  const isMissing = code === 'missing-key' || (code === 'wrong-type' && found === 'empty');
  return isMissing || [found, expected, fix].every((words) => text.includes(words));
}

function dotted(path: string): string {
  return path.replace(/\[(\d+)\]/g, '.$1');
}

/** A hash is enough to tell that two are the same; of the note the text, for it tells what else was made. */
async function madeElse(name: Name, wanted: Buffer | null, page: Page): Promise<string[]> {
  if (wanted === null)
    return (await page.isDisabled(`[data-make="${name}"]`)) ? [] : [`${name}: build makes none`];
  const { sha256, text } = await page.evaluate<{ sha256: string; text: string }>(`(async () => {
    const before = madeHere.length;
    document.querySelector('[data-make="${name}"]').click();
    while (madeHere.length === before) {
      const said = document.querySelector('.said').textContent;
      if (said.includes('could not be made')) return { sha256: '', text: said };
      await new Promise((soon) => setTimeout(soon, 4));
    }
    const bytes = await madeHere.pop().arrayBuffer();
    const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    return {
      sha256: [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
      text: new TextDecoder().decode(bytes),
    };
  })()`);
  if (name === 'note.txt' && withoutMade(text) === withoutMade(wanted.toString())) return [];
  if (name !== 'note.txt' && sha256 === createHash('sha256').update(wanted).digest('hex')) return [];
  return [`${name} differs: ${firstDifference(text, wanted.toString())}`];
}

/** The sentence of what else was made, which may not be the same. */
export function withoutMade(note: string): string {
  return note.replace(/ Made: [^.]*\./, '');
}

function firstDifference(here: string, there: string): string {
  let at = 0;
  while (at < here.length && here[at] === there[at]) at += 1;
  const around = (text: string) => JSON.stringify(text.slice(Math.max(0, at - 60), at + 60));
  return `at ${at} of ${here.length} and ${there.length}: ${around(here)}, build ${around(there)}`;
}
