/** The command line as its contract fixes it: exit codes with the nearest word, JSON, help, colours. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadleaf, runHere, smallClinic, type Clinic } from './workbench.ts';

const COMMANDS = ['check', 'build', 'explain', 'estimate', 'serve', 'new', 'review'];
const BODY = ['--height', '1.75', '--mass', '70'];

let own: Clinic;
beforeAll(async () => {
  own = smallClinic();
});
afterAll(() => own.remove());

describe('a command line that cannot be carried out', () => {
  it.each([
    // words                                             exit nearest          says
    [[], 64, null, 'name a command'],
    [['biuld'], 64, 'build', 'no command biuld'],
    [['help'], 64, '--help', 'no command help'],
    [['build', '--quite'], 64, '--quiet', 'no option --quite'],
    [['check', '--height', '1.7'], 64, null, 'no option --height'],
    [['explain'], 64, null, 'needs <alias>'],
    [['check', 'otter'], 64, null, 'takes no words'],
    [['check', '--on', '2026-02-30'], 64, null, 'a date that exists'],
    [['check', '--on'], 64, null, 'needs a value'],
    [['build', '--out', ''], 64, null, 'must name a folder'],
    [['check', '--json=yes'], 64, null, 'takes no value'],
    [['serve', '--port', '99999'], 64, null, 'from 0 to 65535'],
    [['estimate', 'wall-bridge'], 64, null, '--height in metres'],
    [['estimate', 'wall-bridge', '--height', 'tall', '--mass', '70'], 64, null, 'must be a number'],
    [['estimate', 'wall-bridge', '--height', '1.1', '--mass', '70'], 64, null, 'from 1.2 to 2.2'],
    [['estimate', 'wall-bridge', '--height', '1.75', '--mass', '251'], 64, null, 'from 30 to 250'],
    [['estimate', 'wall-bridge', ...BODY, '--load', '5'], 64, null, 'carries no weight'],
    [['estimate', 'wall-bridge', ...BODY, '--hip-cap', '-1'], 64, null, '0 or more'],
    [['estimate', 'wall-bridge', ...BODY, '--hip-cap', '200'], 64, null, 'from 0 to 140'],
    [['estimate', 'wall-bridg', ...BODY], 66, 'wall-bridge', 'no exercise card'],
    [['explain', 'finsh'], 66, 'finch', 'no consult of finsh'],
    [['build', 'finsh'], 66, 'finch', 'no consult of finsh'],
    [['new', 'exercize', 'one'], 64, 'exercise', 'no kind exercize'],
    [['new', 'exercise', 'No Id'], 64, null, 'is no id'],
  ])('%j ends with %d and names %s', async (words, exit, nearest, says) => {
    const run = await runHere(['--json', '--content', own.content, '--out', own.site, ...words]);
    expect(run.exit).toBe(exit);
    expect(run.err).toContain(says);
    if (nearest !== null) expect(run.err).toContain(`Did you mean ${nearest}?`);
    expect(JSON.parse(run.out)).toEqual({
      ok: false,
      exit,
      message: expect.stringContaining(says) as string,
      nearest,
      problems: [],
    });
  });

  it('prints nothing on standard output without --json', async () => {
    expect((await runHere(['biuld'])).out).toBe('');
  });

  it('names a folder that is not there, or is a file', async () => {
    expect((await runHere(['check', '--content', `${own.top}/none`])).exit).toBe(66);
    expect((await runHere(['check', '--content', 'package.json'])).exit).toBe(66);
    expect((await own.run('check', '--consults', `${own.top}/none`)).exit).toBe(66);
  });
});

describe('help and version', () => {
  it.each([[[]], ...COMMANDS.map((command) => [[command]])])(
    '%j has its help, in 80 columns',
    async (words) => {
      for (const option of ['--help', '-h']) {
        const run = await runHere([...words, option]);
        expect(run).toMatchObject({ exit: 0, err: '' });
        expect(run.out).toMatch(new RegExp(`^Usage: loadleaf ${words[0] ?? '<command>'}`));
        expect(Math.max(...run.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
      }
    },
  );

  it('name every command, and an example of each', async () => {
    const { out } = await runHere(['--help']);
    for (const command of COMMANDS) {
      expect(out).toContain(`\n  ${command}`);
      expect((await runHere([command, '--help'])).out).toContain(`Example: loadleaf ${command}`);
    }
  });

  it.each([[[]], [['build']], [['estimate']]])('%j prints the version of the package', async (words) => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(loadleaf([...words, '--version'])).toEqual({ exit: 0, out: `${version}\n`, err: '' });
  });

  it('are one object with --json', async () => {
    expect(JSON.parse((await runHere(['--version', '--json'])).out)).toMatchObject({ ok: true });
    expect(JSON.parse((await runHere(['check', '--help', '--json'])).out)).toMatchObject({ ok: true });
  });
});

describe('what goes where', () => {
  // Problems are printed by check here, so that there would be something to colour.
  let restore: () => void;
  beforeAll(async () => {
    restore = own.edit('consults/finch-r1.md', 'massKg: 65', 'massKg: 700');
  });
  afterAll(() => restore());

  it.each([
    [['check'], {}],
    [['check', '--no-color'], {}],
    [['check'], { FORCE_COLOR: '1', TERM: 'xterm-256color' }],
    [['build'], { NO_COLOR: '1' }],
    [['explain', 'finch'], { TERM: 'dumb' }],
  ])('%j with %j writes no escape into a pipe', async (words, env: Record<string, string>) => {
    const run = loadleaf([...words, '--content', own.content, '--out', own.site], { env });
    expect(run.err).toContain('consults/finch-r1.md:');
    expect(`${run.out}${run.err}`).not.toContain('\u001b');
  });

  it.each(COMMANDS.slice(0, 3).map((command) => [command]))(
    '%s --json writes one object on standard output and the Problem in words on standard error',
    async (command) => {
      const words = command === 'explain' ? [command, 'finch'] : [command];
      const run = await own.run(...words, '--json');
      expect(run.exit).toBe(65);
      expect(JSON.parse(run.out)).toMatchObject({
        ok: false,
        problems: expect.arrayContaining([
          expect.objectContaining({ code: 'out-of-range', file: 'consults/finch-r1.md', path: 'massKg' }),
        ]) as unknown,
      });
      expect(run.err).toMatch(/consults\/finch-r1\.md:\d+:\d+: error out-of-range massKg is 700; must be/);
      expect(run.err).toContain('Fix: ');
    },
  );

  it('is quiet but for problems with --quiet', async () => {
    const run = await own.run('build', '--quiet');
    expect(run.out).toBe('');
    expect(run.err).toContain('out-of-range');
  });
});

describe('a reader that goes away', () => {
  it('is no fault', async () => {
    const run = loadleaf(['--help'], { shell: 'exec 1>&-' });
    expect(run.err).not.toContain('our fault');
  });
});
