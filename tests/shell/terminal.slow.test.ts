/** What a command sends to a terminal, and what it reads at all, where names and files mean harm. */
import { closeSync, ftruncateSync, mkdirSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadleaf, runHere, smallClinic, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(() => {
  own = smallClinic();
});
afterAll(() => own.remove());

const OBEYED = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;
const HARM = 'a\u001b[2J\u202e\u009b31m';

describe('a terminal', () => {
  it('is shown the characters of a file name, not sent them', async () => {
    const place = join(own.content, `exercises/${HARM}\nb.md`);
    writeFileSync(place, 'no card');
    const runs = [await own.run('check'), await own.run('check', '--json'), await own.run('build')];
    rmSync(place);
    for (const { exit, out, err } of runs) {
      expect(exit).toBe(65);
      expect(out + err).not.toMatch(OBEYED);
      expect(err).toContain('exercises/a<U+001B>[2J<U+202E><U+009B>31m<U+000A>b.md:1:1: error');
    }
    const { problems } = JSON.parse(runs[1]!.out) as { problems: { file: string }[] };
    expect(problems.map(({ file }) => file)).toContain(`exercises/${HARM}\nb.md`);
  });

  it.each([
    ['a command', [HARM]],
    ['an option', [`--${HARM}`]],
    ['a folder', ['check', '--content', `/nowhere/${HARM}`]],
    ['an alias', ['build', HARM]],
    ['a kind', ['new', HARM, 'x']],
    ['a date', ['check', '--on', HARM]],
  ])('is shown those of %s', async (_, words) => {
    for (const manner of [[], ['--json']]) {
      const folders = words.includes('--content') ? [] : ['--content', own.content, '--out', own.site];
      const { exit, out, err } = await runHere([...words, ...folders, ...manner]);
      expect(exit).not.toBe(0);
      expect(out + err).not.toMatch(OBEYED);
      expect(err).toContain('<U+001B>[2J<U+202E>');
    }
  });

  it('is shown those of the folder that was built into', async () => {
    const out = join(own.top, HARM);
    mkdirSync(out);
    const run = await runHere(['build', '--content', own.content, '--out', out]);
    expect(run.exit).toBe(0);
    expect(run.out + run.err).not.toMatch(OBEYED);
  });
});

describe('a file longer than any card', () => {
  it.each([
    ['a consult', 'consults/wren-r1.md', 400],
    ['a card', 'exercises/bridge.md', 400],
    ['a film among the cards', 'exercises/film.mp4', 400],
    ['a picture', 'exercises/photo.jpg', 400],
  ])('%s of %s is refused unread, in little memory', (_, file, megabytes) => {
    const place = join(own.content, file);
    const whole = openSync(place, 'w');
    ftruncateSync(whole, megabytes * 2 ** 20);
    closeSync(whole);
    const restore = file.endsWith('.jpg')
      ? own.edit(
          'exercises/wall-bridge.md',
          /\n---\n/,
          '\nphotos:\n  - { file: photo.jpg, alt: A bridge. }\n---\n',
        )
      : () => undefined;
    const run = loadleaf(['check', '--json', '--content', own.content], {
      node: ['--max-old-space-size=150', '--import', watchOf(own, place)],
    });
    restore();
    rmSync(place);
    expect(run.exit).toBe(65);
    expect(run.err).toMatch(new RegExp(`${file.endsWith('.jpg') ? '400 MB' : '409600 kB'}`));
    expect(run.err).not.toContain('was read');
  });
});

/** A module that says so when the file is read. */
function watchOf({ top }: Clinic, place: string): string {
  const watch = join(top, 'watch.mjs');
  writeFileSync(
    watch,
    `import fs, { writeSync } from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
     const read = fs.readFileSync;
     fs.readFileSync = (path, ...rest) => { if (path === ${JSON.stringify(place)}) writeSync(2, 'was read'); return read(path, ...rest); };
     syncBuiltinESMExports();`,
  );
  return watch;
}
