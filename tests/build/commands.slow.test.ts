/** The command line as its contract fixes it: exit codes, JSON, what is written and what is left alone. */
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { clinic, hashesOf, loadleaf, type Clinic } from './workbench.ts';

/** One slip each in an otherwise good consult. */
const SLIPS = [
  // what is wrong                     from                          to                           code
  ['a mass of 700 kg', 'massKg: 61', 'massKg: 700', 'out-of-range'],
  ['a date that does not exist', /startOn: .*/, 'startOn: 2026-02-30', 'not-a-date'],
  ['a review before the start', /reviewOn: .*/, 'reviewOn: 2026-11-01', 'does-not-fit'],
  ['pain of 12', 'pain: 2', 'pain: 12', 'out-of-range'],
  ['a card that is not there', 'card: hip-hinge', 'card: hip-hing', 'no-such-card'],
  ['an unknown key', 'massKg: 61', 'massKg: 61\nmasKg: 61', 'unknown-key'],
  ['a missing key', 'country: GB\n', '', 'missing-key'],
  ['a wrong type', 'ageYears: 38', 'ageYears: old', 'wrong-type'],
  ['a screen item of yes', 'footDrop: no', 'footDrop: yes', 'screen-block'],
  ['a screen item left out', '  footDrop: no\n', '', 'screen-block'],
  ['a longest run over the week', 'longestIn30DaysKm: 9', 'longestIn30DaysKm: 90', 'does-not-fit'],
  ['300 steps a minute', 'stepsPerMin: 162', 'stepsPerMin: 300', 'out-of-range'],
  ['60 repetitions', 'repetitions: 10', 'repetitions: 60', 'out-of-range'],
  ['0 repetitions', 'repetitions: 10', 'repetitions: 0', 'out-of-range'],
  ['too few minutes', 'minutesPerDay: 45', 'minutesPerDay: 5', 'nothing-fits'],
  ['a step the ladder does not have', 'step: 1', 'step: 60', 'does-not-fit'],
] as const;

describe('usage', () => {
  it.each([
    // words                                                    exit  says
    [['biuld'], 64, 'Did you mean build?'],
    [['chek'], 64, 'Did you mean check?'],
    [['build', '--quite'], 64, 'Did you mean --quiet?'],
    [['check', '--on', '2026-02-30'], 64, 'a date that exists'],
    [['estimate', 'hip-hinge'], 64, '--height'],
    [['estimate', 'hip-hinge', '--height', 'tall', '--mass', '70'], 64, 'must be a number'],
    [['estimate', 'hip-hinge', '--height', '1.1', '--mass', '70'], 64, 'from 1.2 to 2.2'],
    [['estimate', 'hip-hinge', '--height', '1.75', '--mass', '251'], 64, 'from 30 to 250'],
    [
      ['estimate', 'raised-bridge-hold', '--height', '1.75', '--mass', '70', '--load', '5'],
      64,
      'carries no weight',
    ],
    [['estimate', 'pogo-hops', '--height', '1.75', '--mass', '70'], 64, 'has no pose'],
    [['estimate', 'hip-hing', '--height', '1.75', '--mass', '70'], 66, 'did you mean hip-hinge?'],
    [['explain', 'oter'], 66, 'did you mean otter?'],
    [['build', 'oter'], 66, 'did you mean otter?'],
    [['check', '--content', 'no-such-folder'], 66, 'no folder'],
    [['build', '--out', 'content/inside'], 64, 'lies inside'],
  ])('%j ends with %d', (words, exit, says) => {
    const run = loadleaf(words);
    expect({ exit: run.exit, said: run.err.includes(says), out: run.out }).toEqual({
      exit,
      said: true,
      out: '',
    });
  });

  it.each([[[]], [['check']], [['build']], [['explain']], [['estimate']], [['serve']]])(
    '%j has its help',
    (words) => {
      const run = loadleaf([...words, '--help']);
      expect(run.exit).toBe(0);
      expect(run.out).toMatch(/^Usage: loadleaf/);
    },
  );

  it('prints its version', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(loadleaf(['--version'])).toEqual({ exit: 0, out: `${version}\n`, err: '' });
  });

  it('writes no colour into a pipe', () => {
    const run = loadleaf(['check', '--content', 'tests/build'], { env: { NO_COLOR: '' } });
    expect(`${run.out}${run.err}`).not.toContain('\u001b');
  });
});

describe('a build', () => {
  let own: Clinic;
  beforeAll(() => {
    own = clinic();
  });
  afterAll(() => own.remove());

  it('answers one object and writes what it names', () => {
    const run = own.run('build', '--json');
    const answer = JSON.parse(run.out) as {
      ok: boolean;
      out: string;
      files: { path: string; sha256: string }[];
      programmes: { alias: string }[];
      problems: unknown[];
    };
    expect(Object.keys(answer)).toEqual(['ok', 'out', 'files', 'programmes', 'problems']);
    expect(answer).toMatchObject({ ok: true, out: own.site, problems: [] });
    expect(answer.programmes.map(({ alias }) => alias)).toEqual(['heron', 'marten', 'otter']);
    expect(Object.keys(answer.programmes[0]!)).toEqual(['alias', 'revision', 'stage', 'step']);
    const { 'manifest.json': manifest, ...written } = own.hashes();
    expect(manifest).toBeDefined();
    expect(Object.fromEntries(answer.files.map(({ path, sha256 }) => [path, sha256]))).toEqual(written);
    for (const file of ['leaflet.html', 'leaflet.pdf', 'record.html', 'record.json', 'note.txt'])
      expect(written).toHaveProperty([`private/otter/${file}`]);
    expect(run.exit).toBe(0);
  });

  it('gives the same bytes again', () => {
    const before = own.hashes();
    expect(own.run('build').exit).toBe(0);
    expect(own.hashes()).toEqual(before);
  });

  it('gives the same bytes in another folder, time zone and locale', () => {
    const elsewhere = join(own.top, 'another place');
    const run = loadleaf(['build', '--content', own.content, '--out', elsewhere], {
      cwd: own.top,
      env: { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' },
    });
    expect(run.exit).toBe(0);
    expect(hashesOf(elsewhere)).toEqual(own.hashes());
    rmSync(elsewhere, { recursive: true });
  });

  it('builds with the network taken away', () => {
    const cut = join(own.top, 'cut.mjs');
    writeFileSync(
      cut,
      `import net from 'node:net'; import dns from 'node:dns'; import http from 'node:http'; import https from 'node:https';
      const none = () => { throw new Error('no network'); };
      net.Socket.prototype.connect = none; dns.lookup = none; http.request = none; https.request = none; globalThis.fetch = none;`,
    );
    const run = loadleaf(['build', '--content', own.content, '--out', own.site], { node: ['--import', cut] });
    expect({ exit: run.exit, err: run.err }).toEqual({ exit: 0, err: '' });
  });

  it('changes nothing when a library file is broken', () => {
    const before = own.hashes();
    own.edit('exercises/hip-hinge.md', 'kind: isotonic', 'kind: isotonicc');
    const run = own.run('build', '--json');
    expect(run.exit).toBe(65);
    expect(JSON.parse(run.out)).toMatchObject({
      ok: false,
      files: [],
      programmes: [],
      problems: [{ code: 'wrong-word', file: 'exercises/hip-hinge.md', path: 'kind' }],
    });
    expect(own.hashes()).toEqual(before);
    own.edit('exercises/hip-hinge.md', 'kind: isotonicc', 'kind: isotonic');
  });

  it('makes no folder when a library file is broken', () => {
    own.edit('clinic.md', 'paper: A4', 'paper: A5');
    const fresh = join(own.top, 'fresh');
    expect(loadleaf(['build', '--content', own.content, '--out', fresh]).exit).toBe(65);
    expect(existsSync(fresh)).toBe(false);
    own.edit('clinic.md', 'paper: A5', 'paper: A4');
  });

  it('stops the programme of every consult with a slip, each with code, place and cure, and only those', () => {
    const shelf = join(own.top, 'slips');
    mkdirSync(shelf);
    const good = readFileSync(join(own.content, 'consults/heron-r1.md'), 'utf8');
    const sample = readFileSync(join(own.content, 'consults/otter-r1.md'), 'utf8');
    writeFileSync(join(shelf, 'heron-r1.md'), good);
    SLIPS.forEach(([, from, to], index) => {
      const text = sample.replace(from, to);
      expect(text).not.toBe(sample);
      writeFileSync(join(shelf, `slip-${index}-r1.md`), text.replace('alias: otter', `alias: slip-${index}`));
    });
    const out = join(own.top, 'slips-site');
    const run = loadleaf(['build', '--json', '--content', own.content, '--consults', shelf, '--out', out]);
    const answer = JSON.parse(run.out) as {
      problems: { code: string; file: string; line: number; fix: string }[];
      programmes: { alias: string }[];
    };
    expect(run.exit).toBe(65);
    expect(answer.programmes.map(({ alias }) => alias)).toEqual(['heron']);
    const found = SLIPS.map(([what], index) => [
      what,
      answer.problems.find(({ file }) => file === `consults/slip-${index}-r1.md`)?.code,
    ]);
    expect(found).toEqual(SLIPS.map(([what, , , code]) => [what, code]));
    expect(answer.problems.every(({ line, fix }) => line > 0 && fix !== '')).toBe(true);
  });

  it('removes and names the old leaflet of a consult that has a slip now', () => {
    own.run('build', '--quiet');
    own.edit('consults/otter-r1.md', 'massKg: 61', 'massKg: 700');
    const run = own.run('build');
    own.edit('consults/otter-r1.md', 'massKg: 700', 'massKg: 61');
    expect(run.exit).toBe(65);
    expect(run.err).toContain('otter: no programme was written; its old leaflet was removed.');
    expect(existsSync(join(own.site, 'private/otter'))).toBe(false);
    expect(existsSync(join(own.site, 'private/heron/leaflet.pdf'))).toBe(true);
  });

  it('leaves alone what was changed by hand, and what is not ours', () => {
    own.run('build', '--quiet');
    const note = join(own.site, 'private/otter/note.txt');
    writeFileSync(note, 'changed by hand');
    writeFileSync(join(own.site, 'private/otter/own.txt'), 'not ours');
    own.edit('consults/otter-r1.md', 'massKg: 61', 'massKg: 700');
    const run = own.run('build');
    own.edit('consults/otter-r1.md', 'massKg: 700', 'massKg: 61');
    expect(run.err).toContain('private/otter/note.txt is no longer part of the site but was changed by hand');
    expect(readFileSync(note, 'utf8')).toBe('changed by hand');
    expect(existsSync(join(own.site, 'private/otter/own.txt'))).toBe(true);
    expect(existsSync(join(own.site, 'private/otter/leaflet.html'))).toBe(false);
    rmSync(join(own.site, 'private/otter'), { recursive: true });
  });

  it('makes only the alias that is asked for and keeps the rest', () => {
    own.run('build', '--quiet');
    const before = own.hashes();
    own.edit('consults/otter-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    const run = own.run('build', 'otter', '--json');
    own.edit('consults/otter-r1.md', 'usualMorningPain: 3', 'usualMorningPain: 2');
    const after = own.hashes();
    const changed = Object.keys(before).filter((path) => before[path] !== after[path]);
    expect(run.exit).toBe(0);
    expect(changed.every((path) => path.startsWith('private/otter/') || path === 'manifest.json')).toBe(true);
    expect(changed).toContain('private/otter/leaflet.html');
  });

  it('refuses a link that leads out of the content folder', () => {
    const link = join(own.content, 'exercises/secret.md');
    writeFileSync(join(own.top, 'secret.md'), 'secret');
    symlinkSync(join(own.top, 'secret.md'), link);
    const run = own.run('check', '--json');
    rmSync(link);
    expect(run.exit).toBe(65);
    expect(JSON.parse(run.out)).toMatchObject({
      ok: false,
      problems: [{ code: 'link-out', file: 'exercises/secret.md' }],
    });
    expect(run.out).not.toContain('"secret"');
  });

  it('stops with 75 while another build holds the lock, and takes over a lock whose holder is gone', () => {
    const lock = join(own.site, '.loadleaf-lock');
    writeFileSync(lock, String(process.pid));
    expect(own.run('build').exit).toBe(75);
    writeFileSync(lock, '999999999');
    expect(own.run('build', '--quiet').exit).toBe(0);
    expect(existsSync(lock)).toBe(false);
  });

  it('says so when it cannot write', () => {
    const shut = join(own.top, 'shut');
    writeFileSync(shut, 'a file, no folder');
    expect(loadleaf(['build', '--content', own.content, '--out', join(shut, 'site')]).exit).toBe(73);
    const readOnly = join(own.top, 'read-only');
    mkdirSync(readOnly);
    chmodSync(readOnly, 0o555);
    const run = loadleaf(['build', '--content', own.content, '--out', readOnly]);
    // Root may write anywhere; everybody else is told.
    expect(run.exit).toBe(process.getuid?.() === 0 ? 0 : 74);
    chmodSync(readOnly, 0o755);
  });

  it('keeps real patients out of the repository', () => {
    const consults = join(own.top, 'patients');
    mkdirSync(consults);
    const run = loadleaf(['build', '--consults', consults]);
    expect(run.exit).toBe(64);
    expect(run.err).toContain('--out must lie outside it too');
    expect(
      loadleaf(['build', '--quiet', '--consults', consults, '--out', join(own.top, 'their-site')]).exit,
    ).toBe(0);
  });

  it('puts no alias into the public part', () => {
    own.run('build', '--quiet');
    for (const path of Object.keys(own.hashes()).filter((one) => one.startsWith('public/'))) {
      expect(readFileSync(join(own.site, path), 'utf8')).not.toMatch(/\b(otter|heron|marten)\b/);
    }
  });
});

describe('answers of the other commands', () => {
  it('check counts what it read', () => {
    const run = loadleaf(['check', '--json', '--on', '2026-11-25']);
    const answer = JSON.parse(run.out) as {
      ok: boolean;
      counts: Record<string, number>;
      problems: unknown[];
    };
    expect(Object.keys(answer)).toEqual(['ok', 'counts', 'problems']);
    expect(Object.keys(answer.counts)).toEqual(['exercises', 'advice', 'protocols', 'consults']);
    expect(run.exit).toBe(0);
  });

  it('explain names every cell with its reason', () => {
    const run = loadleaf(['explain', 'otter', '--json']);
    const answer = JSON.parse(run.out) as {
      cells: Record<string, unknown>[];
      passedOver: Record<string, unknown>[];
      week: Record<string, unknown>;
    };
    expect(Object.keys(answer)).toEqual([
      'alias',
      'revision',
      'stage',
      'step',
      'cells',
      'passedOver',
      'week',
      'running',
      'sitting',
    ]);
    expect(Object.keys(answer.cells[0]!)).toEqual(
      expect.arrayContaining([
        'step',
        'slot',
        'card',
        'cell',
        'value',
        'text',
        'rule',
        'inputs',
        'source',
        'decidedBy',
      ]),
    );
    expect(Object.keys(answer.passedOver[0]!)).toEqual([
      'card',
      'slot',
      'stage',
      'because',
      'limit',
      'value',
    ]);
    expect(Object.keys(answer.week)).toEqual(['days', 'gaveUp']);
  });

  it('estimate answers with the keys of its contract', () => {
    const run = loadleaf([
      'estimate',
      'hip-hinge',
      '--height',
      '1.75',
      '--mass',
      '70',
      '--load',
      '20',
      '--hip-cap',
      '45',
      '--json',
    ]);
    const answer = JSON.parse(run.out) as Record<string, number | string>;
    expect(Object.keys(answer)).toEqual([
      'hipFlexionMaxDeg',
      'trunkLeanMaxDeg',
      'tensionBw',
      'compressionBw',
      'compressionVerticalOnlyBw',
      'hipMomentNm',
      'kneeMomentNm',
      'demand',
      'tensionTimeBwS',
      'compressionTimeBwS',
      'rangeFraction',
      'loadKg',
      'decidedBy',
    ]);
    expect(answer['hipFlexionMaxDeg']).toBeCloseTo(45, 6);
    expect(answer['decidedBy']).toBe('hipFlexion');
    // Body model, regression anchor "RDL 20 kg to 45 deg hip": N 0.56 body weights at this hip bend.
    expect(answer['compressionBw']).toBeCloseTo(0.56, 1);
  });
});
