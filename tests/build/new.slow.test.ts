/** Starters: written once, right as they stand, each key with its sentence. */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { runHere } from './workbench.ts';

let top: string;
let content: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'loadleaf-new-'));
  content = join(top, 'content');
  mkdirSync(content);
});
afterEach(() => rmSync(top, { recursive: true }));

const run = (...words: string[]) => runHere(['--content', content, '--on', '2026-11-25', ...words]);
const STARTERS = [
  ['exercise', 'own-bridge', 'exercises/own-bridge.md'],
  ['advice', 'own-words', 'advice/own-words.md'],
  ['protocol', 'own-way', 'protocols/own-way.md'],
  ['consult', 'finch', 'consults/finch-r1.md'],
] as const;

describe('starters', () => {
  it.each([
    [
      'in a folder with a clinic file alone',
      (folder: string) => cpSync('content/clinic.md', join(folder, 'clinic.md')),
    ],
    ['in the shipped library', (folder: string) => cpSync('content', folder, { recursive: true })],
  ])('%s pass check unchanged and make a leaflet', async (_, fill) => {
    fill(content);
    for (const [kind, id, file] of STARTERS) {
      const made = JSON.parse((await run('new', kind, id, '--json')).out) as object;
      const files = [join(content, file), join(content, `.schema/${kind}.json`)];
      expect(made).toEqual({ ok: true, files });
      expect(files.every((one) => existsSync(one))).toBe(true);
    }
    expect(JSON.parse((await run('check', '--json')).out)).toMatchObject({ ok: true });
    const built = await run('build', 'finch', '--json', '--out', join(top, 'site'));
    expect(JSON.parse(built.out)).toMatchObject({ ok: true, programmes: [{ alias: 'finch', revision: 1 }] });
  });

  it('name what may be written besides, with the words there are', async () => {
    cpSync('content', content, { recursive: true });
    await run('new', 'consult', 'finch');
    const lines = readFileSync(join(content, 'consults/finch-r1.md'), 'utf8').split('\n');
    const named = (start: string) => lines.find((line) => line.startsWith(start)) ?? '';
    expect(named('  # longestIn30DaysKm: ')).toContain('longest run of the last 30 days');
    expect(named('#   - card: ')).toContain('exercise card');
    expect(named('# What this person cannot')).toContain('Words: kneel, lie-prone');
  });

  it('say before each key what it is for, and where an editor finds the schema', async () => {
    cpSync('content', content, { recursive: true });
    for (const [kind, id, file] of STARTERS) {
      await run('new', kind, id);
      const text = readFileSync(join(content, file), 'utf8');
      const [, second = ''] = text.split('\n');
      const [, schemaPath = ''] = /^# yaml-language-server: \$schema=(.+)$/.exec(second) ?? [];
      const schema = JSON.parse(readFileSync(join(content, file, '..', schemaPath), 'utf8')) as {
        properties: Record<string, { description: string }>;
      };
      const front = text.slice(4, text.indexOf('\n---\n', 4));
      for (const key of Object.keys(parseDocument(front).toJS() as object)) {
        const sentence = schema.properties[key]?.description ?? 'no such key';
        const at = front.indexOf(`\n${key}:`);
        expect(front.slice(0, at), `${kind} ${key}`).toContain(`# ${sentence}`);
      }
    }
  });

  it('hold the house numbers of the shipped protocol, with their marks', async () => {
    cpSync('content', content, { recursive: true });
    await run('new', 'protocol', 'own-way');
    const houseNumbers = (id: string) => {
      const text = readFileSync(join(content, `protocols/${id}.md`), 'utf8');
      const { stages, painRule, easeBack, missedDays, goingOn, limits, week, runningRules, sittingRules } =
        parseDocument(text.slice(4, text.indexOf('\n---\n', 4))).toJS() as Record<string, unknown>;
      return {
        caps: (stages as { caps: object }[]).map(({ caps }) => caps),
        ...{ painRule, easeBack, missedDays, goingOn, limits, week, runningRules, sittingRules },
      };
    };
    expect(houseNumbers('own-way')).toEqual(houseNumbers('proximal-hamstring'));
  });

  it('of a consult says that its screen was asked of nobody', async () => {
    cpSync('content', content, { recursive: true });
    expect((await run('new', 'consult', 'finch')).err).toContain('asked of nobody');
    expect(readFileSync(join(content, 'consults/finch-r1.md'), 'utf8')).toContain('ask every item');
    expect((await run('new', 'consult', 'finch-r2')).exit).toBe(0);
    expect(readFileSync(join(content, 'consults/finch-r2.md'), 'utf8')).toMatch(/\nrevision: 2\n/);
  });

  it('of a consult outside the library takes its schema along', async () => {
    cpSync('content', content, { recursive: true });
    const patients = join(top, 'patients');
    mkdirSync(patients);
    expect(
      (await run('new', 'consult', 'finch', '--consults', patients, '--out', join(top, 'site'))).exit,
    ).toBe(0);
    expect(existsSync(join(patients, '.schema/consult.json'))).toBe(true);
    expect(readFileSync(join(patients, 'finch-r1.md'), 'utf8')).toContain('$schema=.schema/consult.json');
    expect(existsSync(join(content, 'consults/finch-r1.md'))).toBe(false);
  });
});

describe('a starter is refused', () => {
  it.each([
    // words                         exit says
    [['exercise', 'hip-hinge'], 73, 'is there already'],
    [['consult', 'otter'], 73, 'is there already'],
    [['exercise', 'Bridge'], 64, 'is no id'],
    [['exercise', '../escape'], 64, 'is no id'],
    [['consult', '../otter-r2'], 64, 'is no id'],
    [['consult', 'otter-r0'], 0, ''],
    [['exercise', 'con'], 64, 'is no id'],
    [['clinic', 'clinic'], 64, 'write one of'],
    [['exersise', 'one'], 64, 'Did you mean exercise?'],
    [['exercise'], 64, 'needs <kind> <id>'],
  ])('new %j ends with %d', async (words, exit, says) => {
    cpSync('content', content, { recursive: true });
    const refused = await run('new', ...words);
    expect({ exit: refused.exit, says: refused.err.includes(says) }).toEqual({ exit, says: true });
  });

  it('where a file of its id lies in another folder, or in other letters', async () => {
    mkdirSync(join(content, 'exercises/bridges'), { recursive: true });
    writeFileSync(join(content, 'exercises/bridges/Own-Bridge.md'), 'mine');
    expect((await run('new', 'exercise', 'own-bridge')).exit).toBe(73);
    expect(existsSync(join(content, 'exercises/own-bridge.md'))).toBe(false);
  });

  it('where the library lacks what it would name', async () => {
    expect((await run('new', 'protocol', 'own-way')).exit).toBe(66);
    expect((await run('new', 'consult', 'finch')).exit).toBe(66);
  });
});
