/** A clinic's own folder over the shipped library: what takes whose place on the pages, and which file a Problem names. */
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runHere, withOwnWords } from './workbench.ts';

const SHIPPED_CARDS = readdirSync('content/exercises').length;
const HIDE = '---\nhide: yes\n---\n\nWe have no room for it.\n';

let top: string;
let own: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'loadleaf-own-'));
  own = join(top, 'our-clinic');
  mkdirSync(join(own, 'exercises'), { recursive: true });
  // A repository of its own: what it holds of git is not read.
  mkdirSync(join(own, '.git/exercises'), { recursive: true });
  writeFileSync(join(own, '.git/exercises/hip-hinge.md'), 'not a card');
  const clinic = readFileSync('content/clinic.md', 'utf8');
  writeFileSync(join(own, 'clinic.md'), clinic.replace(/^name: .*$/m, 'name: Brookside\nover: shipped'));
});
afterEach(() => rmSync(top, { recursive: true }));

const run = (...words: string[]) =>
  runHere(['--content', own, '--out', join(top, 'site'), '--on', '2026-11-25', ...words]);
const checked = async (...words: string[]) =>
  JSON.parse((await run('check', '--json', ...words)).out) as {
    readonly ok: boolean;
    readonly counts: Readonly<Record<string, number>>;
    readonly problems: readonly { readonly code: string; readonly file: string; readonly line: number }[];
  };
/** Replaces the sample words of a starter. */
const ownWords = (file: string) =>
  writeFileSync(join(own, file), withOwnWords(readFileSync(join(own, file), 'utf8')));
const edit = (file: string, from: string | RegExp, to: string) => {
  const before = readFileSync(join(own, file), 'utf8');
  const after = before.replace(from, to);
  if (after === before) throw new Error(`${file} has no ${String(from)}`);
  writeFileSync(join(own, file), after);
};
const page = (path: string) => readFileSync(join(top, 'site/public', path), 'utf8');

describe('a folder that says over: shipped', () => {
  it('with its clinic file alone is the shipped library, without its invented people', async () => {
    expect(await checked()).toMatchObject({
      ok: true,
      counts: { exercises: SHIPPED_CARDS, consults: 0 },
      problems: [],
    });
  });

  it('replaces, adds and hides by id, and the pages say which', async () => {
    await run('new', 'exercise', 'hip-hinge');
    edit('exercises/hip-hinge.md', /^title: .*$/m, 'title: Brookside bow');
    await run('new', 'exercise', 'wall-bridge');
    ownWords('exercises/wall-bridge.md');
    await run('new', 'advice', 'sitting-well');
    writeFileSync(join(own, 'exercises/bounding.md'), HIDE);
    expect((await run('build')).exit).toBe(0);
    expect(page('exercises/hip-hinge.html')).toContain('<h1>Brookside bow</h1>');
    expect(page('exercises/hip-hinge.html')).toContain('Brookside’s own, in place of the shipped one');
    expect(page('exercises/wall-bridge.html')).toContain('Added by Brookside');
    expect(page('advice/sitting-well.html')).toContain('Brookside’s own');
    expect(page('exercises/step-up.html')).not.toContain('class="origin"');
    expect(page('exercises.html').match(/class="origin"/g)).toHaveLength(2);
    expect(page('advice.html').match(/class="origin"/g)).toHaveLength(1);
    expect(existsSync(join(top, 'site/public/exercises/bounding.html'))).toBe(false);
    expect(page('exercises.html')).not.toContain('bounding');
    expect(readdirSync(join(top, 'site/private')).sort()).toEqual(['.gitignore', 'PRIVATE.txt']);
  });

  it('has its own file named by a Problem, at its line', async () => {
    await run('new', 'exercise', 'hip-hinge');
    edit('exercises/hip-hinge.md', 'kind: isotonic', 'kind: isotonik');
    const text = readFileSync(join(own, 'exercises/hip-hinge.md'), 'utf8');
    const line = text.slice(0, text.indexOf('kind: isotonik')).split('\n').length;
    expect(await checked()).toMatchObject({
      ok: false,
      problems: [{ code: 'wrong-word', file: 'exercises/hip-hinge.md', line }],
    });
    expect((await run('check')).err).toContain('\n    kind: isotonik\n');
  });

  it('has a shipped file named by the way to it, with its line', async () => {
    const { problems } = await checked('--on', '2031-01-01');
    expect(problems.every(({ code }) => code === 'review-overdue')).toBe(true);
    const hinge = problems.find(({ file }) => file.endsWith('content/exercises/hip-hinge.md'));
    expect(existsSync(join(own, hinge?.file ?? 'none'))).toBe(true);
    const { err } = await run('check', '--on', '2031-01-01');
    expect(err).toContain(`${hinge?.file}:${hinge?.line}:`);
    expect(err).toContain('\n    nextReviewOn: 2027-09-01\n');
  });

  it('is not blamed for shipped cards that nothing uses any longer', async () => {
    mkdirSync(join(own, 'protocols'));
    writeFileSync(join(own, 'protocols/gluteal-tendon.md'), HIDE);
    expect(await checked()).toMatchObject({ ok: true, problems: [] });
  });

  it('cannot take away what a shipped protocol needs; the hiding file is named', async () => {
    writeFileSync(join(own, 'exercises/short-lever-bridge.md'), HIDE);
    const { ok, problems } = await checked();
    expect(ok).toBe(false);
    expect(new Set(problems.map(({ file }) => file))).toEqual(new Set(['exercises/short-lever-bridge.md']));
  });

  it('makes leaflets of consults that lie elsewhere, from cards of both folders', async () => {
    const patients = join(top, 'patients');
    mkdirSync(patients);
    cpSync('content/consults/heron-r1.md', join(patients, 'heron-r1.md'));
    await run('new', 'exercise', 'raised-bridge-hold');
    edit('exercises/raised-bridge-hold.md', /^title: .*$/m, 'title: Brookside bridge hold');
    const built = JSON.parse((await run('build', '--json', '--consults', patients)).out) as object;
    expect(built).toMatchObject({ ok: true, programmes: [{ alias: 'heron' }] });
    expect(readFileSync(join(top, 'site/private/heron/leaflet.html'), 'utf8')).toContain('Brookside');
    expect(existsSync(join(own, 'consults'))).toBe(false);
  });
});

describe('its own pictures', () => {
  it('stand where every page looks for them, below a path of a site, and bare', async () => {
    const telephone = sharp({ create: { width: 1200, height: 800, channels: 3, background: '#888' } })
      .withExif({
        IFD0: { Artist: 'Jane Roe' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 26/1' },
      })
      .jpeg();
    await run('new', 'exercise', 'hip-hinge');
    edit('exercises/hip-hinge.md', 'cautions:', 'photos:\n  - { file: side.jpg, alt: A bow }\ncautions:');
    writeFileSync(join(own, 'exercises/side.jpg'), await telephone.clone().toBuffer());
    writeFileSync(join(own, 'sign.jpg'), await telephone.clone().toBuffer());
    edit('clinic.md', 'paper: A4', 'paper: A4\nlogo: sign.jpg');
    expect(await run('build')).toMatchObject({ exit: 0, err: '' });

    const library = join(top, 'site/public');
    const files = readdirSync(library, { recursive: true, encoding: 'utf8' });
    const addresses = files
      .filter((file) => file.endsWith('.html'))
      .flatMap((file) =>
        [...readFileSync(join(library, file), 'utf8').matchAll(/\s(?:src|srcset|href)="([^"]*)"/g)]
          .flatMap(([, value = '']) => value.split(', ').map((one) => one.split(' ')[0] ?? ''))
          .filter((address) => !/^(#|data:|https?:|tel:|mailto:)/.test(address))
          .map((address) => join(file, '..', address.replace(/[?#].*$/, '') || '.')),
      );
    expect(
      addresses.filter((address) => address.startsWith('..') || !existsSync(join(library, address))),
    ).toEqual([]);
    const pictures = files.filter((file) => /\.(jpg|webp|png)$/.test(file));
    expect(pictures).toHaveLength(7);
    for (const picture of pictures) {
      expect(addresses).toContain(picture);
      const { exif, xmp, iptc, icc } = await sharp(join(library, picture)).metadata();
      expect({ exif, xmp, iptc, icc }).toEqual({});
    }
  });

  it('go with a file that was taken out', async () => {
    await run('new', 'exercise', 'hip-hinge');
    edit('exercises/hip-hinge.md', 'cautions:', 'photos:\n  - { file: side.png, alt: A bow }\ncautions:');
    const picture = sharp({ create: { width: 30, height: 20, channels: 3, background: '#888' } });
    writeFileSync(join(own, 'exercises/side.png'), await picture.png().toBuffer());
    await run('build');
    expect(readdirSync(join(top, 'site/public/exercises/photos'))).toHaveLength(2);
    rmSync(join(own, 'exercises/side.png'));
    rmSync(join(own, 'exercises/hip-hinge.md'));
    await run('build');
    expect(existsSync(join(top, 'site/public/exercises/photos'))).toBe(false);
  });
});

describe('new in such a folder', () => {
  it('begins with the shipped file of that id, which passes and moves no number', async () => {
    const { out } = await run('new', 'exercise', 'hip-hinge');
    expect(out).toContain('the shipped file, to be changed');
    const { ok, problems } = await checked();
    expect({ ok, problems }).toEqual({ ok: true, problems: [] });
    const numbers = (content: string) =>
      runHere(['estimate', 'hip-hinge', '--json', '--height', '1.75', '--mass', '70', '--content', content]);
    expect((await numbers(own)).out).toBe((await numbers('content')).out);
  });

  it('tells of the shipped protocols in a consult, and names shipped cards in a protocol', async () => {
    expect((await run('new', 'consult', 'finch')).exit).toBe(0);
    expect(readFileSync(join(own, 'consults/finch-r1.md'), 'utf8')).toContain(
      '\n# There are: gluteal-tendon, proximal-hamstring, runner-strength.\nprotocol:\n',
    );
    rmSync(join(own, 'consults/finch-r1.md'));
    expect((await run('new', 'protocol', 'our-way')).exit).toBe(0);
    ownWords('protocols/our-way.md');
    expect(await checked()).toMatchObject({ ok: true, counts: { protocols: 4 } });
  });
});

describe('a folder of its own', () => {
  it('without the word stands alone, as it ever did', async () => {
    edit('clinic.md', 'over: shipped\n', '');
    expect(await checked()).toMatchObject({ ok: true, counts: { exercises: 0, advice: 0, protocols: 0 } });
  });

  it('with a misspelt word says so', async () => {
    edit('clinic.md', 'over: shipped', 'over: shiped');
    expect((await run('check')).err).toContain('Fix: write over: shipped.');
  });

  it('with a slip elsewhere in the clinic file lies over the shipped library all the same', async () => {
    edit('clinic.md', 'paper: A4', 'paper: A5');
    const { problems } = await checked();
    expect(problems).toMatchObject([{ code: 'wrong-word', file: 'clinic.md' }]);
  });
});

describe('a protocol that is changed in single values', () => {
  const write = (sets: number) => {
    mkdirSync(join(own, 'protocols'), { recursive: true });
    writeFileSync(
      join(own, 'protocols/proximal-hamstring.md'),
      `---\nextends: proximal-hamstring\nvalues:\n  - { path: 'stages[0].slots[Main hold].dose.sets', value: ${sets}, mark: choice, cite: our audit }\n---\n`,
    );
  };

  it('is shown as ours, change by change', async () => {
    write(4);
    expect(await checked()).toMatchObject({ ok: true, problems: [] });
    expect((await run('build')).exit).toBe(0);
    const text = page('protocols/proximal-hamstring.html');
    expect(text).toContain('The shipped one with Brookside’s own changes');
    expect(text).toContain('Holds with the hip straight, Main hold: Sets in a session.');
    expect(text).toContain('sets: our audit; the rest: ');
  });

  it('is told when its ground moved, by a folder and by one protocol', async () => {
    write(4);
    const before = join(top, 'before');
    cpSync('content/protocols', join(before, 'protocols'), { recursive: true });
    const old = join(before, 'protocols/proximal-hamstring.md');
    expect((await run('check', '--against', before)).exit).toBe(0);
    const text = readFileSync(old, 'utf8');
    writeFileSync(old, text.replace(/(- name: Main hold[^]*?sets: )\d/, '$17'));
    for (const against of [before, old]) {
      expect((await checked('--against', against)).problems).toMatchObject([
        { code: 'shipped-changed', file: 'protocols/proximal-hamstring.md', line: 4 },
      ]);
    }
    expect((await run('check', '--against', join(top, 'nowhere'))).exit).toBe(66);
  });

  it('is asked about when over: shipped was forgotten', async () => {
    write(4);
    edit('clinic.md', 'over: shipped\n', '');
    const { ok, problems } = await checked();
    expect(ok).toBe(false);
    expect(problems.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['over-shipped', 'no-such-card']),
    );
  });
});
