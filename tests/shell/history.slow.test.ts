/** What was given out stays: earlier revisions, what was set aside, and the list of both; and what a red flag does. */
import {
  cpSync,
  existsSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { linesOf } from '../../src/shell/io/issued.ts';
import { standingOf } from '../../src/shell/io/standing.ts';
import { copyOf, hashesOf, smallClinic, writeStarter, type Clinic } from './workbench.ts';

let built: Clinic;
let own: Clinic;
beforeAll(async () => {
  built = smallClinic();
  expect(await built.run('build', '--quiet', '--on', '2026-11-25')).toMatchObject({ exit: 0, err: '' });
});
afterAll(() => built.remove());
beforeEach(() => {
  own = copyOf(built);
});
afterEach(() => own.remove());

const build = (on: string, ...words: string[]) => own.run('build', ...words, '--on', on);
const finch = (...steps: string[]) => join(own.site, 'private/finch', ...steps);
const set = [
  'leaflet.html',
  'leaflet.pdf',
  'message.eml',
  'message.txt',
  'note.txt',
  'record.html',
  'record.json',
  'sessions.ics',
];
const history = () => linesOf(readFileSync(finch('issued.jsonl'), 'utf8'));
const told = () => history().map(({ on, event, revision }) => `${on} ${event} r${revision}`);
const spoil = (file = 'consults/finch-r1.md') => own.edit(file, 'massKg: 65', 'massKg: 700');
const flag = (file = 'consults/finch-r1.md') => own.edit(file, 'footDrop: no', 'footDrop: yes');
const secondRevision = () => writeStarter(own.content, 'consult', 'consults/finch-r2.md');

describe('a later revision', () => {
  it('keeps the files of the earlier one for good, byte for byte', async () => {
    const first = hashesOf(finch());
    secondRevision();
    await build('2026-12-20');
    for (const name of set) expect(hashesOf(finch('r1'))[name], name).toBe(first[name]);
    expect(readdirSync(finch('r1'))).toEqual(set);
    expect(hashesOf(finch())['leaflet.html']).not.toBe(first['leaflet.html']);
    // A change of the library makes the present revision anew, and leaves what was given out before as it is.
    own.edit('exercises/wall-bridge.md', /title: .*/, 'title: Another name');
    await build('2026-12-21');
    for (const name of set) expect(hashesOf(finch('r1'))[name], name).toBe(first[name]);
    expect(told()).toEqual(['2026-11-25 issued r1', '2026-12-20 issued r2', '2026-12-21 issued r2']);
    expect((await own.run('check')).exit).toBe(0);
  });

  it('that is taken back is kept too, and what lay there is not written over', async () => {
    const first = hashesOf(finch());
    secondRevision();
    await build('2026-12-20');
    rmSync(join(own.content, 'consults/finch-r2.md'));
    own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    await build('2026-12-21');
    secondRevision();
    await build('2026-12-22');
    expect(readdirSync(finch()).filter((name) => name.startsWith('r') && !name.includes('.'))).toEqual([
      'r1',
      'r1-2',
      'r2',
    ]);
    expect(hashesOf(finch('r1'))['note.txt']).toBe(first['note.txt']);
    expect(hashesOf(finch('r1-2'))['leaflet.html']).not.toBe(first['leaflet.html']);
    expect((await own.run('check')).exit).toBe(0);
  });
});

describe('a list whose last line was taken out', () => {
  const ends = () => readFileSync(join(own.site, 'private/issued.json'), 'utf8');
  const faults = async () =>
    ((await own.answer('check'))['problems'] as { code: string; file: string }[]).filter(
      ({ code }) => code === 'issued',
    );

  it('is told by check, and goes on being told however often one builds, until it is put back', async () => {
    const restore = spoil();
    await build('2026-11-26');
    restore();
    await build('2026-11-27');
    expect(await faults()).toEqual([]);
    const whole = readFileSync(finch('issued.jsonl'), 'utf8');
    writeFileSync(finch('issued.jsonl'), whole.split('\n').slice(0, 1).join('\n'));
    for (let time = 0; time < 2; time += 1) {
      expect(await faults()).toMatchObject([{ file: finch('issued.jsonl') }]);
      expect((await build('2026-11-28')).exit).toBe(0);
    }
    writeFileSync(finch('issued.jsonl'), whole);
    expect(await faults()).toEqual([]);
  });

  it('counts as it stands when what is known of it is taken out', async () => {
    rmSync(finch('issued.jsonl'));
    await build('2026-11-26');
    expect(await faults()).toHaveLength(1);
    writeFileSync(join(own.site, 'private/issued.json'), '{}\n');
    await build('2026-11-26');
    expect(await faults()).toEqual([]);
    expect(JSON.parse(ends())).toEqual({ finch: { lines: 1, hash: history()[0]?.hash } });
  });

  it('of somebody whose folder is gone is forgotten with it', async () => {
    rmSync(join(own.content, 'consults/finch-r1.md'));
    rmSync(finch(), { recursive: true });
    await build('2026-11-26');
    expect(ends()).toBe('{}\n');
    expect(await faults()).toEqual([]);
  });
});

describe('a revision that goes and comes back as it was', () => {
  it('is kept once', async () => {
    secondRevision();
    await build('2026-12-20');
    const second = readFileSync(join(own.content, 'consults/finch-r2.md'));
    rmSync(join(own.content, 'consults/finch-r2.md'));
    await build('2026-12-21');
    writeFileSync(join(own.content, 'consults/finch-r2.md'), second);
    await build('2026-12-22');
    const folders = readdirSync(finch(), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual(['r1', 'r2']);
    expect(told().slice(2)).toEqual(['2026-12-21 returned r1', '2026-12-22 returned r2']);
  });
});

describe('a Problem in a consult', () => {
  it('sets the files aside with a line saying why, and they come back as they were', async () => {
    const before = hashesOf(finch());
    const restore = spoil();
    const run = await build('2026-11-26');
    expect(run.err).toContain('finch: no programme was written; its leaflet is set aside');
    expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
    expect(readdirSync(finch('set-aside'))).toEqual([...set, 'why.txt']);
    expect(readFileSync(finch('set-aside/why.txt'), 'utf8')).toMatch(
      /^Set aside: [^\n]*\nconsults\/finch-r1\.md:\d+:\d+: out-of-range massKg is 700; [^\n]* Fix: [^\n]*\n$/,
    );
    expect((await own.run('check', '--json')).out).not.toContain('"issued"');
    restore();
    await build('2026-11-27');
    expect({ ...hashesOf(finch()), 'issued.jsonl': '' }).toEqual({ ...before, 'issued.jsonl': '' });
    expect(told()).toEqual(['2026-11-25 issued r1', '2026-11-26 withdrawn r1', '2026-11-27 returned r1']);
    expect(history()[1]?.because).toEqual(['out-of-range']);
  });

  it('tells the newest reason, once a withdrawal', async () => {
    const restore = spoil();
    await build('2026-11-26');
    restore();
    flag();
    await build('2026-11-27');
    expect(readFileSync(finch('set-aside/why.txt'), 'utf8')).toContain('screen-block');
    expect(told()).toEqual(['2026-11-25 issued r1', '2026-11-26 withdrawn r1']);
  });

  it('of a later revision ends with what was set aside under its own', async () => {
    const first = hashesOf(finch());
    secondRevision();
    const restore = spoil('consults/finch-r2.md');
    await build('2026-12-20');
    restore();
    await build('2026-12-21');
    for (const name of set) expect(hashesOf(finch('r1'))[name], name).toBe(first[name]);
    expect(existsSync(finch('set-aside'))).toBe(false);
    expect(told()).toEqual(['2026-11-25 issued r1', '2026-12-20 withdrawn r1', '2026-12-21 issued r2']);
  });

  it('that is mended into another programme replaces what was set aside', async () => {
    const restore = spoil();
    await build('2026-11-26');
    restore();
    own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    await build('2026-11-27');
    expect(readdirSync(finch())).toEqual(['issued.jsonl', ...set]);
    expect(told().at(-1)).toBe('2026-11-27 issued r1');
  });
});

describe('a red flag', () => {
  it.each([
    // what else is wrong             file                         from                to
    ['a card', 'exercises/wall-bridge.md', 'kind: isometric', 'kind: isometrc'],
    ['a pose no body takes', 'exercises/wall-bridge.md', 'knee: 95', 'knee: -5'],
    ['the protocol', 'protocols/own-way.md', 'angle: hipFlexion', 'angle: hip'],
    ['the clinic file', 'clinic.md', 'paper: A4', 'paper: A5'],
    ['the consult itself', 'consults/finch-r1.md', 'massKg: 65', 'massKg: 700'],
    ['the consult itself and the clinic file', 'clinic.md', 'paper: A4', 'paper: A5'],
  ])(
    'takes the leaflet out of force though %s is wrong, and nothing else is touched',
    async (what, file, from, to) => {
      writeStarter(own.content, 'consult', 'consults/wren-r1.md');
      await build('2026-11-25');
      const before = own.hashes();
      if (what.startsWith('the consult itself and')) spoil();
      own.edit(file, from, to);
      flag();
      const run = await build('2026-11-26', '--json');
      expect(run.exit).toBe(65);
      expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
      const why = readFileSync(finch('set-aside/why.txt'), 'utf8');
      expect(why.match(/screen-block screen\.footDrop is yes/g)).toHaveLength(1);
      expect(
        (JSON.parse(run.out) as { problems: { code: string }[] }).problems.map(({ code }) => code),
      ).toContain('screen-block');
      if (!file.startsWith('consults/'))
        expect(run.err).toContain(
          'nothing was changed but for what must not be followed: the leaflet of finch is set aside.',
        );
      const changed = Object.entries(before).filter(([path, hash]) => own.hashes()[path] !== hash);
      expect(changed.filter(([path]) => !path.startsWith('private/finch/')).map(([path]) => path)).toEqual([
        'manifest.json',
      ]);
    },
  );

  it('of somebody else goes by though a consult cannot be read at all, in a library that is wrong', async () => {
    writeStarter(own.content, 'consult', 'consults/wren-r1.md');
    await build('2026-11-25');
    own.edit('consults/wren-r1.md', 'alias: wren', 'alias: [wren');
    own.edit('clinic.md', 'paper: A4', 'paper: A5');
    flag();
    await build('2026-11-26');
    expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
    // What cannot be read may say anything.
    expect(readdirSync(join(own.site, 'private/wren'))).toEqual(['issued.jsonl', 'set-aside']);
  });

  it('is none, but a consult that is gone takes its leaflet too, in a library that is wrong', async () => {
    writeStarter(own.content, 'consult', 'consults/wren-r1.md');
    await build('2026-11-25');
    rmSync(join(own.content, 'consults/wren-r1.md'));
    own.edit('clinic.md', 'paper: A4', 'paper: A5');
    // Whoever asks for one person has not asked about the others.
    await build('2026-11-26', 'finch');
    expect(readdirSync(join(own.site, 'private/wren'))).toContain('leaflet.html');
    const run = await build('2026-11-26');
    expect(run).toMatchObject({
      exit: 65,
      err: expect.stringContaining('the leaflet of wren is set aside.'),
    });
    expect(readdirSync(join(own.site, 'private/wren'))).toEqual(['issued.jsonl', 'set-aside']);
    expect(readFileSync(join(own.site, 'private/wren/set-aside/why.txt'), 'utf8')).toContain(
      'There is no consult of wren any more.',
    );
    expect(readdirSync(finch())).toContain('leaflet.html');
  });

  it('waits for nobody to ask for its build', async () => {
    writeStarter(own.content, 'consult', 'consults/wren-r1.md');
    await build('2026-11-25');
    flag();
    const run = await build('2026-11-26', 'wren');
    expect(run).toMatchObject({
      exit: 0,
      err: expect.stringContaining('finch: its screen stops every programme; its leaflet is set aside in'),
    });
    expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
  });

  it('comes before a file of somebody else that is in the way', async () => {
    rmSync(join(own.site, 'public/index.html'));
    rmSync(join(own.site, 'manifest.json'));
    for (const page of readdirSync(join(own.site, 'public'), { recursive: true, encoding: 'utf8' }))
      if (page.endsWith('.html')) rmSync(join(own.site, 'public', page));
    rmSync(join(own.site, 'public/desk'), { recursive: true });
    writeFileSync(join(own.site, 'public/index.html'), 'my own page');
    flag();
    expect((await build('2026-11-26')).exit).toBe(73);
    expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
  });

  it('that is no red flag changes nothing while the library is wrong', async () => {
    const before = own.hashes();
    own.edit('clinic.md', 'paper: A4', 'paper: A5');
    spoil();
    await build('2026-11-26');
    expect(own.hashes()).toEqual(before);
  });
});

describe('a consult that the system lets nobody read', () => {
  it('stops itself alone', async () => {
    writeStarter(own.content, 'consult', 'consults/wren-r1.md');
    await build('2026-11-25');
    const folder = join(own.content, 'consults');
    // Root may read anything, but nobody a name that leads to itself.
    rmSync(join(folder, 'finch-r1.md'));
    symlinkSync('finch-r1.md', join(folder, 'finch-r1.md'));
    own.edit('consults/wren-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    const answer = await own.answer('build', '--on', '2026-11-26');
    expect(answer).toMatchObject({
      programmes: [{ alias: 'wren' }],
      problems: [{ file: 'consults/finch-r1.md' }],
    });
    expect(readdirSync(finch())).toEqual(['issued.jsonl', 'set-aside']);
  });
});

describe('a manifest', () => {
  it.each([
    ['that was lost', (place: string) => rmSync(place)],
    ['that was emptied', (place: string) => truncateSync(place)],
    ['of noughts', (place: string) => writeFileSync(place, '\0'.repeat(900))],
  ])('%s is made again from the files with the marks', async (_, lose) => {
    const before = own.hashes();
    lose(join(own.site, 'manifest.json'));
    expect(await build('2026-11-26')).toMatchObject({ exit: 0, err: '' });
    expect(own.hashes()).toEqual(before);
    // And where everything is another one meanwhile, the list of what was given out too.
    lose(join(own.site, 'manifest.json'));
    rmSync(finch('issued.jsonl'));
    own.edit('exercises/wall-bridge.md', /title: .*/, 'title: Another name');
    expect(await build('2026-11-27')).toMatchObject({ exit: 0, err: '' });
    const { 'manifest.json': manifest, ...there } = own.hashes();
    expect(manifest).toBeDefined();
    const { files } = JSON.parse(readFileSync(join(own.site, 'manifest.json'), 'utf8')) as {
      files: { path: string }[];
    };
    // The lists that keep leaflets out of a repository belong to no build.
    const listed = Object.keys(there).filter((path) => !path.endsWith('.gitignore'));
    expect(files.map(({ path }) => path)).toEqual(listed);
  });

  it('that was lost: message and calendar are known by their own mark, and what is called so is not', () => {
    rmSync(finch('issued.jsonl'));
    const present = () => standingOf(own.site, 'finch', () => undefined).present.map(({ name }) => name);
    expect(present()).toEqual(set);
    for (const name of ['message.eml', 'message.txt', 'sessions.ics'])
      writeFileSync(finch(name), 'of somebody else');
    expect(present()).toEqual(set.filter((name) => !/^(message|sessions)/.test(name)));
  });

  it('that was lost is not made from a part of the site', async () => {
    rmSync(join(own.site, 'manifest.json'));
    own.edit('exercises/wall-bridge.md', /title: .*/, 'title: Another name');
    expect(await build('2026-11-26', 'finch')).toMatchObject({ exit: 0, err: '' });
    expect(await build('2026-11-26')).toMatchObject({ exit: 0, err: '' });
    expect(Object.keys(own.hashes())).toContain('manifest.json');
  });

  it.each(['manifest.json', '.loadleaf-journal'])('a link in the place of %s is refused', async (name) => {
    const target = join(own.top, 'target');
    cpSync(join(own.site, 'manifest.json'), target);
    rmSync(join(own.site, name), { force: true });
    symlinkSync(target, join(own.site, name));
    const run = await build('2026-11-26');
    expect(run.exit).toBe(73);
    expect(run.err).toContain('it is a link; remove it');
  });

  it.each(['issued.jsonl', 'set-aside'])('a link in the place of %s is refused', async (name) => {
    rmSync(finch(name), { force: true });
    symlinkSync(own.content, finch(name));
    expect((await build('2026-11-26')).exit).toBe(73);
  });
});

describe('check', () => {
  const problems = async () => {
    const { out } = await own.run('check', '--json');
    const found = (JSON.parse(out) as { problems: { code: string; file: string; line: number }[] }).problems;
    return found
      .filter(({ code }) => code === 'issued')
      .map(({ file, line }) => `${file.slice(file.indexOf('private/'))}:${line}`);
  };

  it.each([
    [
      'a line that was changed',
      () =>
        writeFileSync(
          finch('issued.jsonl'),
          readFileSync(finch('issued.jsonl'), 'utf8').replace('2026-11-25', '2026-11-01'),
        ),
      'issued.jsonl:1',
    ],
    ['a list that was taken away', () => rmSync(finch('issued.jsonl')), 'issued.jsonl:1'],
    [
      'a leaflet of another make',
      () => writeFileSync(finch('leaflet.pdf'), 'of another make'),
      'leaflet.pdf:1',
    ],
    [
      'an earlier revision that was changed',
      () => writeFileSync(finch('r1/note.txt'), 'other'),
      'r1/note.txt:1',
    ],
    ['an earlier revision of which a file is gone', () => rmSync(finch('r1/note.txt')), 'r1/note.txt:1'],
  ])('shows %s', async (_, spoilIt, where) => {
    secondRevision();
    await build('2026-12-20');
    expect(await problems()).toEqual([]);
    spoilIt();
    expect(await problems()).toEqual([`private/finch/${where}`]);
  });

  it('shows a withdrawn leaflet that was put back by hand', async () => {
    const restore = spoil();
    await build('2026-11-26');
    restore();
    cpSync(finch('set-aside'), finch(), { recursive: true });
    expect(await problems()).toEqual(['private/finch/leaflet.html:1']);
  });
});
