/** Starters: written once, right as they stand, each key with its sentence. */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import type { Problem } from '../../src/content/problem.ts';
import { SCREEN_ITEMS } from '../../src/content/schema/consult.ts';
import { answersFor, runHere, withOwnWords } from './workbench.ts';

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

/** A starter's text with its sample words replaced and these values in it. */
function filledIn(text: string, values: ReturnType<typeof answersFor>): string {
  const [head = '', ...body] = text.slice(4).split('\n---\n');
  const document = parseDocument(head, { schema: 'core' });
  for (const { path, value } of values) document.setIn(path, document.createNode(value));
  return withOwnWords(`---\n${document.toString({ lineWidth: 0 })}---\n${body.join('\n---\n')}`);
}

const written = (path: readonly (string | number)[]) => path.join('.').replace(/\.(\d+)/, '[$1]');

/** What the answers of a filled consult hold that the starter does not ask for by an empty line. */
const NOT_EMPTY = /^screen\.|seconds$/;

describe('starters', () => {
  it.each([
    [
      'in a folder with a clinic file alone',
      (folder: string) => cpSync('content/clinic.md', join(folder, 'clinic.md')),
      { id: 'own-way', test: 'small-test' },
    ],
    [
      'in the shipped library',
      (folder: string) => cpSync('content', folder, { recursive: true }),
      { id: 'proximal-hamstring', test: 'long-lever-bridge-hold' },
    ],
  ])('%s pass check and make a leaflet once they are filled in', async (_, fill, protocol) => {
    fill(content);
    for (const [kind, id, file] of STARTERS) {
      const made = JSON.parse((await run('new', kind, id, '--json')).out) as object;
      const files = [join(content, file), join(content, `.schema/${kind}.json`)];
      expect(made).toEqual({ ok: true, files });
      expect(files.every((one) => existsSync(one))).toBe(true);
      const text = readFileSync(join(content, file), 'utf8');
      writeFileSync(join(content, file), filledIn(text, kind === 'consult' ? answersFor(protocol) : []));
    }
    expect(JSON.parse((await run('check', '--json')).out)).toMatchObject({ ok: true });
    const built = await run('build', 'finch', '--json', '--out', join(top, 'site'));
    expect(JSON.parse(built.out)).toMatchObject({ ok: true, programmes: [{ alias: 'finch', revision: 1 }] });
  });

  it('are each an error by name while they are untouched', async () => {
    cpSync('content', content, { recursive: true });
    for (const [kind, id] of STARTERS) await run('new', kind, id);
    const { problems } = JSON.parse((await run('check', '--json')).out) as { problems: Problem[] };
    const of = (file: string) => problems.filter((one) => one.file === file && one.severity === 'error');
    expect(of('exercises/own-bridge.md').map(({ code, path }) => `${code} ${path}`)).toEqual([
      'untouched-starter title',
      'untouched-starter cautions[0]',
      'untouched-starter ',
      'untouched-starter ',
      'untouched-starter ',
    ]);
    expect(of('advice/own-words.md').map(({ code }) => code)).toEqual(Array(4).fill('untouched-starter'));
    expect(of('protocols/own-way.md').every(({ code }) => code === 'untouched-starter')).toBe(true);
    expect(of('protocols/own-way.md').length).toBeGreaterThan(8);
    const empty = of('consults/finch-r1.md').map(({ path }) => path);
    expect(empty.sort()).toEqual(
      answersFor({ id: 'any', test: 'any' })
        .map(({ path }) => written(path))
        .filter((path) => !NOT_EMPTY.test(path))
        .sort(),
    );
    expect(of('consults/finch-r1.md').every(({ found }) => found === 'empty')).toBe(true);
  });

  it('of a consult ask every item of the screen and choose nothing for anybody', () => {
    const text = readFileSync('shared/starters/consult.md', 'utf8');
    const { screen, ...rest } = parseDocument(text.slice(4, text.indexOf('\n---\n', 4))).toJS() as {
      screen: Record<string, string>;
    };
    expect(screen).toEqual(Object.fromEntries(SCREEN_ITEMS.map((item) => [item, 'notAsked'])));
    const chosen = JSON.stringify(rest).match(/"[A-Za-z0-9]+":(?!null|\{|\[)[^,}]+/g);
    expect(chosen).toEqual([
      '"alias":"starter"',
      '"revision":1',
      '"seenOn":"2026-01-01"',
      '"startOn":"2026-01-02"',
      '"reviewOn":"2026-01-23"',
      '"stage":"auto"',
    ]);
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
    expect((await run('new', 'consult', 'robin-r2')).exit).toBe(0);
    expect(readFileSync(join(content, 'consults/robin-r2.md'), 'utf8')).toMatch(/\nrevision: 2\n/);
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

describe('the next revision of a consult', () => {
  const keysOf = (file: string) => {
    const text = readFileSync(join(content, file), 'utf8');
    return parseDocument(text.slice(4, text.indexOf('\n---\n', 4)), { schema: 'core' }).toJS() as Record<
      string,
      unknown
    >;
  };

  beforeEach(() => cpSync('content', content, { recursive: true }));

  it('takes over what lasts, moves the dates on, and empties what must be asked again', async () => {
    const { out } = await run('new', 'consult', 'marten', '--on', '2026-12-21');
    expect(out).toContain('a draft made from revision 1');
    const [last, next] = [keysOf('consults/marten-r1.md'), keysOf('consults/marten-r2.md')];
    expect(next).toEqual({
      ...last,
      revision: 2,
      draft: 'yes',
      seenOn: '2026-12-21',
      startOn: '2026-12-24',
      reviewOn: '2027-01-21',
      symptomWeeks: 34,
      stage: 'auto',
      step: undefined,
      screen: Object.fromEntries(SCREEN_ITEMS.map((item) => [item, 'notAsked'])),
      irritability: null,
      response24h: null,
      usualMorningPain: null,
      tests: [{ test: null, pain: null }],
      testedSets: [],
    });
    expect(next['clearances']).toEqual(last['clearances']);
    const text = readFileSync(join(content, 'consults/marten-r2.md'), 'utf8');
    expect(text).toContain('# Ask again. Last time: low.\nirritability:\n');
    expect(text).toContain('romanian-deadlift left 30 kg, 10 times with 4 left');
  });

  it('is checked, is never built, and displaces nothing', async () => {
    const site = join(top, 'site');
    const before = JSON.parse((await run('build', '--json', '--out', site)).out) as { files: object[] };
    await run('new', 'consult', 'otter');
    const check = JSON.parse((await run('check', '--json')).out) as { ok: boolean; problems: Problem[] };
    expect(check.ok).toBe(false);
    expect(check.problems.map(({ file, path }) => `${file} ${path}`)).toContain(
      'consults/otter-r2.md usualMorningPain',
    );
    const after = JSON.parse((await run('build', '--json', '--out', site)).out) as object;
    expect(after).toEqual(before);
  });

  it('withdraws what is in use by a yes that stops every programme, whatever else is missing', async () => {
    const site = join(top, 'site');
    await run('new', 'consult', 'otter');
    const draft = join(content, 'consults/otter-r2.md');
    const text = readFileSync(draft, 'utf8');
    const programmesWith = async (screen: string) => {
      writeFileSync(draft, text.replace('\n  fever: notAsked\n', `\n  fever: ${screen}\n`));
      const built = JSON.parse((await run('build', '--json', '--out', site)).out) as {
        programmes: { alias: string }[];
        problems: Problem[];
      };
      return {
        aliases: built.programmes.map(({ alias }) => alias),
        problems: built.problems.map(({ code, file, path }) => `${code} ${file} ${path}`),
      };
    };
    expect((await programmesWith('notAsked')).aliases).toContain('otter');
    expect(await programmesWith('yes')).toEqual({
      aliases: ['heron', 'marten'],
      problems: ['screen-block consults/otter-r2.md screen.fever'],
    });
    expect(existsSync(join(site, 'private/otter/leaflet.html'))).toBe(false);
    expect((await programmesWith('no')).aliases).toContain('otter');
  });

  it('is built once it is asked through, with the step of the revision before', async () => {
    await run('new', 'consult', 'otter', '--on', '2026-12-14');
    const draft = join(content, 'consults/otter-r2.md');
    const text = readFileSync(draft, 'utf8')
      .replace('draft: yes\n', '')
      .replaceAll(': notAsked', ': no')
      .replace('\nirritability:\n', '\nirritability: moderate\n')
      .replace('\nresponse24h:\n', '\nresponse24h: settled\n')
      .replace('\nusualMorningPain:\n', '\nusualMorningPain: 2\n')
      .replace('    test:\n', '    test: single-leg-bridge-raised\n')
      .replace('    pain:\n', '    pain: 2\n');
    writeFileSync(draft, text);
    const built = JSON.parse(
      (await run('build', 'otter', '--json', '--out', join(top, 'site'))).out,
    ) as object;
    expect(built).toMatchObject({
      ok: true,
      programmes: [{ alias: 'otter', revision: 2, stage: 2, step: 1 }],
    });
  });

  it.each([
    ['while a draft is there', ['otter', 'otter'], 73, 'is a draft of otter already'],
    ['from a file with a Problem', ['finch', 'finch'], 65, 'has a Problem'],
  ])('is refused %s', async (_, wishes, exit, says) => {
    const runs = [];
    for (const wish of wishes) runs.push(await run('new', 'consult', wish));
    expect(runs.at(-1)).toMatchObject({ exit });
    expect(runs.at(-1)?.err).toContain(says);
  });
});

describe('a starter is refused', () => {
  it.each([
    // words                         exit says
    [['exercise', 'hip-hinge'], 73, 'is there already'],
    [['consult', 'otter-r1'], 73, 'is there already'],
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
