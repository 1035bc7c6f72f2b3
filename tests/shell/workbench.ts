/** A temporary clinic and the compiled command line, for tests of what a command does on a disk. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, realpathSync } from 'node:fs';
import { rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import type { Streams } from '../../src/shell/report.ts';
import { readLayers, upperFiles } from '../../src/shell/io/layers.ts';
import { run } from '../../src/shell/run.ts';
import { starterText } from '../../src/shell/io/assets.ts';
import { readFolder } from '../../src/content/readFolder.ts';
import { SCREEN_ITEMS } from '../../src/content/schema/consult.ts';
import { starterOf, type Filling, type StarterKind } from '../../src/drafting/starter.ts';
import { fillingFor } from '../../src/shell/commands/starterFilling.ts';
import { isoDate } from '../../src/units/date.ts';

export const MAIN = resolve('dist/shell/main.js');

/** The day the starters of a small clinic are dated by. */
export const TODAY = isoDate('2026-11-25')!;

export interface Run {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Clinic {
  readonly top: string;
  readonly content: string;
  readonly site: string;
  /** Runs a command line with this clinic's folders, in this process. */
  run(...words: string[]): Promise<Run>;
  /** The same with --json; its one object. */
  answer(...words: string[]): Promise<Record<string, unknown>>;
  /** Replaces the first occurrence in a file of the content folder; throws when there is none. Returns what takes it back. */
  edit(file: string, from: string | RegExp, to: string | ((found: string) => string)): () => void;
  /** Path to SHA-256 of every file that the present files decide, hidden ones too: all but what tells of earlier days. */
  hashes(): Record<string, string>;
  remove(): void;
}

/** A copy of the shipped content in a folder of its own. */
export function shippedClinic(): Clinic {
  return clinicWith((content) => cpSync('content', content, { recursive: true }));
}

/** The starters alone: one card, one protocol, and a consult of `finch`. */
export function smallClinic(): Clinic {
  return clinicWith((content) => {
    mkdirSync(content);
    cpSync('content/clinic.md', join(content, 'clinic.md'));
    writeStarter(content, 'exercise', 'exercises/wall-bridge.md');
    writeStarter(content, 'advice', 'advice/one-thing.md');
    writeStarter(content, 'protocol', 'protocols/own-way.md');
    writeStarter(content, 'consult', 'consults/finch-r1.md');
  });
}

/** Another clinic with the files of one, its site and what its builds keep too: less than a tenth of the time of a build. */
export function copyOf({ top }: Clinic): Clinic {
  return clinicAt((place) => cpSync(top, place, { recursive: true, preserveTimestamps: true }));
}

function clinicWith(fill: (content: string) => void): Clinic {
  return clinicAt((top) => fill(join(top, 'content')));
}

function clinicAt(fill: (top: string) => void): Clinic {
  const top = realpathSync(mkdtempSync(join(tmpdir(), 'loadleaf-clinic-')));
  const content = join(top, 'content');
  const site = join(top, 'site');
  fill(top);
  const runOwn: Clinic['run'] = (...words) => runHere(['--content', content, '--out', site, ...words]);
  return {
    top,
    content,
    site,
    run: runOwn,
    answer: async (...words) => JSON.parse((await runOwn(...words, '--json')).out) as Record<string, unknown>,
    edit: (file, from, to) => {
      const path = join(content, file);
      const before = readFileSync(path, 'utf8');
      const after = before.replace(from, to as string);
      if (after === before) throw new Error(`${file} has no ${String(from)}`);
      writeFileSync(path, after);
      return () => writeFileSync(path, before);
    },
    hashes: () => withoutHistory(hashesOf(site)),
    remove: () => rmSync(top, { recursive: true, force: true }),
  };
}

/** Writes the starter of a kind as `new` does, filled in, with its file name saying whose it is. */
export function writeStarter(content: string, kind: StarterKind, file: string): void {
  const [, alias = '', revision = '1'] = /([a-z0-9-]+?)(?:-r(\d+))?\.md$/.exec(file) ?? [];
  const name = { file, alias, revision: Number(revision) };
  const place = join(content, file);
  mkdirSync(dirname(place), { recursive: true });
  const files = upperFiles(readLayers(content));
  const values = [
    ...fillingFor(kind, files, name, TODAY),
    ...(kind === 'consult' ? answersFor(firstProtocol(content)) : []),
  ];
  const text = starterOf(kind, starterText(kind), { schema: `../.schema/${kind}.json`, values });
  writeFileSync(place, withOwnWords(text));
}

/** A starter's text with the sample words replaced, as an author would. */
export function withOwnWords(text: string): string {
  return text
    .replaceAll('This is a starter. ', '')
    .replaceAll(/\bStarter\b:?/g, 'Small')
    .replaceAll(/\bstarter\b/g, 'small');
}

/** What a consult's starter leaves empty, answered for somebody in the second stage or before. */
export function answersFor({ id, test }: { readonly id: string; readonly test: string }): readonly Filling[] {
  const no = SCREEN_ITEMS.map((item) => [['screen', item], 'no'] as const);
  const none = ['dumbbellsKg', 'kettlebellsKg', 'platesKg', 'bands', 'bottlesL', 'stepCm'].map(
    (thing) => [['kit', thing], []] as const,
  );
  const answers: readonly (readonly [Filling['path'], Filling['value']])[] = [
    [['clinician'], 'R. Sample, physiotherapist'],
    [['country'], 'GB'],
    [['ageYears'], 40],
    [['side'], 'right'],
    [['heightM'], 1.7],
    [['massKg'], 65],
    [['protocol'], id],
    [['irritability'], 'moderate'],
    [['response24h'], 'settled'],
    [['usualMorningPain'], 2],
    [['symptomWeeks'], 12],
    [['painArea'], 'right sit bone'],
    ...no,
    [['cannotDo'], []],
    [['tests', 0, 'test'], test],
    [['tests', 0, 'pain'], 4],
    [['tests', 0, 'seconds'], 40],
    ...none,
    [['kit', 'rucksack'], 'yes'],
    [['kit', 'bench'], 'no'],
    [['kit', 'ball'], 'no'],
    [['days'], ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']],
    [['minutesPerDay'], 30],
    [['running', 'runs'], 'no'],
    [['running', 'decision'], 'none'],
    [['sitting', 'toleranceMinutes'], 20],
    [['recovery', 'sleep'], 'good'],
    [['recovery', 'stress'], 'low'],
    [['recovery', 'tired'], 'no'],
    [['changedBefore'], ['nothing-known']],
  ];
  return answers.map(([path, value]) => ({ path, value }));
}

/** The shipped hamstring protocol, or the first there is, with a test of its own. */
function firstProtocol(content: string): { readonly id: string; readonly test: string } {
  const { cards } = readFolder(upperFiles(readLayers(content)), 'protocol');
  const protocol = cards.find(({ id }) => id === 'proximal-hamstring') ?? cards[0];
  const test = protocol?.value.tests.find(({ lowFlexion }) => lowFlexion)?.id;
  if (protocol === undefined || test === undefined) throw new Error('a consult needs a protocol with a test');
  return { id: protocol.id, test };
}

/** A command line as the program carries it out, but in this process: a hundredth of the time. */
export async function runHere(words: readonly string[]): Promise<Run> {
  const said = { out: '', err: '' };
  const streamTo = (name: 'out' | 'err') => ({
    isTTY: false,
    write: (text: string) => {
      said[name] += text;
      return true;
    },
  });
  const streams = { stdout: streamTo('out'), stderr: streamTo('err') } as unknown as Streams;
  return { exit: await run(words, streams), ...said };
}

/** The compiled program itself, for what only a process of its own shows. */
export function loadleaf(
  words: readonly string[],
  options: { env?: Record<string, string>; cwd?: string; node?: readonly string[]; shell?: string } = {},
): Run {
  const command = [process.execPath, ...(options.node ?? []), MAIN, ...words];
  const { status, stdout, stderr } = spawnSync(
    options.shell === undefined ? process.execPath : '/bin/sh',
    options.shell === undefined ? command.slice(1) : ['-c', `${options.shell}; exec "$@"`, 'sh', ...command],
    {
      encoding: 'utf8',
      cwd: options.cwd ?? process.cwd(),
      env: { ...process.env, NO_COLOR: '', ...options.env },
    },
  );
  return { exit: status, out: stdout, err: stderr };
}

export function hashesOf(folder: string): Record<string, string> {
  if (!existsSync(folder)) return {};
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    statSync(join(folder, file)).isFile(),
  );
  return Object.fromEntries(files.sort().map((file) => [file, hashOf(readFileSync(join(folder, file)))]));
}

/** Without the lists of what was given out and how far they go, what was set aside and what is kept of earlier revisions. */
export function withoutHistory(hashes: Readonly<Record<string, string>>): Record<string, string> {
  const isHistory = /^private\/(issued\.json$|[^/]+\/(issued\.jsonl$|set-aside\/|r\d+(-\d+)?\/))/;
  return Object.fromEntries(Object.entries(hashes).filter(([path]) => !isHistory.test(path)));
}

export function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
