/** A build of two persons, one with a new revision, that is stopped: killed, frozen, on a full disk, by a power cut. */
import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { isDeepStrictEqual } from 'node:util';
import { brokenAt } from '../src/shell/io/issued.ts';
import { freezingAt, fullFrom, watchingDisk, type Effect } from '../tests/shell/diskEffects.ts';
import { modelOf } from '../tests/shell/powerCut.ts';
import {
  hashesOf,
  MAIN,
  runHere,
  smallClinic,
  withoutHistory,
  writeStarter,
  type Clinic,
} from '../tests/shell/workbench.ts';
import type { Chance } from './chance.ts';
import type { Family, Verdict } from './family.ts';

const PEOPLE = ['finch', 'wren'];
const DAY = ['--on', '2026-11-25', '--quiet'];

/** Ours while a build is at work. */
const WORKING = /loadleaf-(part|new|old|journal|lock)/;

interface Bench {
  readonly clinic: Clinic;
  readonly old: string;
  readonly fresh: string;
  /** All changes of the second build, in their order, by their place below the site. */
  readonly effects: readonly Effect[];
  readonly lastsMs: number;
}

export const disks: Family = {
  name: 'disks',
  what: 'kills, frozen and full disks and power cuts while two persons are built',
  open: async () => {
    const bench = await benchOf();
    return { attempt: (chance) => attempted(bench, chance), close: () => bench.clinic.remove() };
  },
};

// The two alone: the pages of the library are seconds of work, and nobody's set.
const wordsFor = (content: string, out: string) => [
  'build',
  ...PEOPLE,
  '--content',
  content,
  '--out',
  out,
  ...DAY,
];

async function benchOf(): Promise<Bench> {
  const clinic = smallClinic();
  const [old, fresh, watched] = ['old', 'new', 'watched'].map((name) => join(clinic.top, name)) as [
    string,
    string,
    string,
  ];
  writeStarter(clinic.content, 'consult', 'consults/wren-r1.md');
  await built(clinic, old);
  clinic.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
  writeStarter(clinic.content, 'consult', 'consults/wren-r2.md');
  cpSync(old, fresh, { recursive: true });
  await built(clinic, fresh);
  cpSync(old, watched, { recursive: true });
  const effects: Effect[] = [];
  const begun = performance.now();
  await watchingDisk(
    watched,
    (effect) => effects.push(effect),
    () => built(clinic, watched),
  );
  const lastsMs = performance.now() - begun;
  const below = ({ path, to, ...effect }: Effect) => ({
    ...effect,
    path: path.slice(watched.length),
    to: to.slice(watched.length),
  });
  for (const alias of PEOPLE)
    if (isDeepStrictEqual(treeOf(old, alias), treeOf(fresh, alias))) throw new Error(`${alias} must change`);
  return { clinic, old, fresh, effects: effects.map(below), lastsMs };
}

async function built({ content }: Clinic, out: string): Promise<void> {
  const { exit, err } = await runHere(wordsFor(content, out));
  if (exit !== 0) throw new Error(`a build ended with ${exit}: ${err}`);
}

type Way = (bench: Bench, out: string, chance: Chance) => Promise<string>;

const frozen: Way = async ({ clinic, effects }, out, chance) => {
  const last = 1 + chance.below(effects.length);
  await watchingDisk(out, freezingAt(last), () => runHere(wordsFor(clinic.content, out)));
  return `frozen at change ${last}`;
};

const full: Way = async ({ clinic, effects }, out, chance) => {
  const last = 1 + chance.below(effects.length);
  await watchingDisk(out, fullFrom(last), () => runHere(wordsFor(clinic.content, out)));
  return `full from change ${last}`;
};

const cut: Way = async ({ old, effects }, out, chance) => {
  const after = 1 + chance.below(effects.length);
  const disk = modelOf(old);
  for (const effect of effects.slice(0, after)) disk.apply(effect);
  rmSync(out, { recursive: true });
  disk.leave(out, chance.of([(most: number) => chance.below(most + 1), () => 0, (most: number) => most]));
  return `power cut after change ${after}`;
};

// The one case that is not the same again: where the clock stops a process no seed can say. Most of what it writes comes late.
const killed: Way = async ({ clinic, lastsMs }, out, chance) => {
  const child = spawn(process.execPath, [MAIN, ...wordsFor(clinic.content, out)], { stdio: 'ignore' });
  const ended = new Promise((resolve) => child.once('exit', resolve));
  const afterMs = Math.round(lastsMs * (0.5 + chance.below(200) / 100));
  await Promise.race([setTimeout(afterMs), ended]);
  child.kill('SIGKILL');
  await ended;
  return `killed after ${afterMs} ms`;
};

async function attempted(bench: Bench, chance: Chance): Promise<Verdict> {
  const out = join(bench.clinic.top, 'tried');
  rmSync(out, { recursive: true, force: true });
  cpSync(bench.old, out, { recursive: true });
  const tried = await chance.of([frozen, frozen, full, full, cut, cut, cut, cut, killed])(bench, out, chance);
  const faults = wholeFaults(bench, out);
  const isDone = PEOPLE.every((alias) => isDeepStrictEqual(treeOf(out, alias), treeOf(bench.fresh, alias)));
  if (chance.onceIn(3)) faults.push(...(await healFaults(bench, out)));
  return { end: isDone ? 'built' : 'refused', tried, faults: faults.map((fault) => `${tried}: ${fault}`) };
}

const treeOf = (out: string, alias: string) => hashesOf(join(out, 'private', alias));

/** Each person has the old folder or the new one, to the last file; in between the old one lies under its journal name. */
function wholeFaults({ old, fresh }: Bench, out: string): string[] {
  return PEOPLE.flatMap((alias) => {
    const sets = [treeOf(old, alias), treeOf(fresh, alias)];
    const place = join(out, 'private', alias);
    const found = existsSync(place) ? place : join(out, `private/.${alias}.loadleaf-old`);
    const tree = hashesOf(found);
    if (sets.some((one) => isDeepStrictEqual(one, tree))) return [];
    return [`${alias} has neither set whole: ${Object.keys(tree).join(' ')}`];
  });
}

/** The next build takes over, and leaves what an undisturbed one leaves. */
async function healFaults({ clinic, fresh }: Bench, out: string): Promise<string[]> {
  // The process that died held the lock; this one lives on in its place.
  mkdirSync(out, { recursive: true });
  for (const name of readdirSync(out))
    if (name.startsWith('.loadleaf-lock')) rmSync(join(out, name), { recursive: true });
  const { exit, err } = await runHere(wordsFor(clinic.content, out));
  if (exit !== 0) return [`the next build ends with ${exit}: ${err.slice(0, 300)}`];
  const [now, wanted] = [out, fresh].map((folder) => withoutHistory(hashesOf(folder)));
  const left = Object.keys(hashesOf(out)).filter((path) => WORKING.test(path));
  const broken = PEOPLE.filter((alias) => {
    const chain = join(out, 'private', alias, 'issued.jsonl');
    return !existsSync(chain) || brokenAt(readFileSync(chain, 'utf8')) !== null;
  });
  return [
    ...(isDeepStrictEqual(now, wanted) ? [] : ['the next build leaves something else']),
    ...left.map((path) => `${path} is left`),
    ...broken.map((alias) => `the list of ${alias} is broken`),
  ];
}
