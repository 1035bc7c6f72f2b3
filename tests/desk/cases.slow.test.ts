/** Every whole case through the desk's own way from texts to a programme: what comes out is what the other way makes. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { DeskFile, DeskData } from '../../src/desk/deskData.ts';
import { openBench, type Bench } from '../../src/desk/worker/bench.ts';
import { makeSheet } from '../../src/desk/worker/make.ts';
import { marked } from '../../src/outputs/text/mark.ts';
import { recordJson } from '../../src/outputs/text/recordJson.ts';
import { files as pages } from '../outputs/html/assets.ts';
import { CASES, caseMade } from '../programme/outcome.ts';
import { filesBelow } from '../programme/shipped.ts';

const textsBelow = (folder: string, except?: string): DeskFile[] =>
  filesBelow(folder, except).map(({ file, bytes }) => ({ file, text: new TextDecoder().decode(bytes) }));

const shipped = textsBelow('content', 'consults/');
const shelfOf = (...over: DeskFile[][]): DeskData => ({
  loadleaf: '0',
  folders: [shipped, ...over],
  logo: null,
  pages,
  photoBytes: {},
  letters: [[0, 0x10ffff]],
});
const bench = openBench(shelfOf());

function benchOf(name: string): Bench {
  const own = join('tests/cases', name, 'in/library');
  return existsSync(own) ? openBench(shelfOf(textsBelow(own))) : bench;
}

it.each(CASES)('%s', (name) => {
  const consults = textsBelow(join('tests/cases', name, 'in'), 'library/');
  const revisionOf = ({ file }: DeskFile) => Number(/-r(\d+)\.md$/.exec(file)?.[1]);
  const [own, ...before] = consults.toSorted((a, b) => revisionOf(b) - revisionOf(a));
  const others = before.map((one) => ({ ...one, file: `consults/${one.file}` }));
  const made = makeSheet({ name: own?.file ?? '', text: own?.text ?? '', others }, benchOf(name));
  const wanted = caseMade(name);
  if ('problems' in made || 'printed' in wanted) {
    expect('problems' in made).toBe('printed' in wanted);
    return;
  }
  expect(recordJson(made.programme)).toBe(recordJson(marked(wanted.programme)));
});
