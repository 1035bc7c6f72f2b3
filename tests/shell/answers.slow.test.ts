/** What check, explain and estimate answer, key by key as the contract fixes it. */
import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runHere, shippedClinic, smallClinic, writeStarter, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(async () => {
  own = shippedClinic();
});
afterAll(() => own.remove());

describe('check', () => {
  it('counts what it read and finds no error in what is shipped', async () => {
    const answer = await own.answer('check', '--on', '2026-11-25');
    expect(Object.keys(answer)).toEqual(['ok', 'counts', 'problems']);
    expect(answer['ok']).toBe(true);
    expect(Object.keys(answer['counts'] as object)).toEqual(['exercises', 'advice', 'protocols', 'consults']);
  });

  it('judges review dates by --on, as warnings', async () => {
    const answer = await own.answer('check', '--on', '2040-01-01');
    const problems = answer['problems'] as { code: string; severity: string }[];
    expect(answer['ok']).toBe(true);
    expect(problems.some(({ code }) => code === 'review-overdue')).toBe(true);
    expect(problems.every(({ severity }) => severity === 'warning')).toBe(true);
  });

  it('writes nothing', async () => {
    expect(own.hashes()).toEqual({});
  });

  it('refuses a file and a folder that are links out of the content folder, unread', async () => {
    const elsewhere = join(own.top, 'elsewhere');
    mkdirSync(elsewhere);
    writeFileSync(join(elsewhere, 'hidden-words.md'), 'hidden words');
    const links = [join(own.content, 'exercises/one.md'), join(own.content, 'advice/two')] as const;
    symlinkSync(join(elsewhere, 'hidden-words.md'), links[0]);
    symlinkSync(elsewhere, links[1]);
    const run = await own.run('check', '--json');
    links.forEach((link) => rmSync(link));
    const { problems } = JSON.parse(run.out) as { problems: { code: string; file: string }[] };
    const out = problems.filter(({ code }) => code === 'link-out').map(({ file }) => file);
    expect(out).toEqual(['advice/two/', 'exercises/one.md']);
    expect(`${run.out}${run.err}`).not.toContain('hidden words');
  });
});

describe('explain', () => {
  it('names every cell with its reason, and what was passed over', async () => {
    const answer = await own.answer('explain', 'otter');
    expect(Object.keys(answer)).toEqual(
      'alias revision stage step cells passedOver week running sitting'.split(' '),
    );
    const cells = answer['cells'] as Record<string, unknown>[];
    for (const cell of cells) {
      expect(Object.keys(cell)).toEqual(
        'step slot card cell value text rule inputs source decidedBy'.split(' '),
      );
      expect(Object.keys(cell['source'] as object)).toEqual(['cite', 'mark']);
    }
    expect(new Set(cells.map(({ cell }) => cell))).toEqual(
      new Set(
        'sets repetitions holdSeconds tempo restSeconds loadKg reserve hipFlexionDeg howFar timesPerDay days'.split(
          ' ',
        ),
      ),
    );
    const [passedOver] = answer['passedOver'] as object[];
    expect(Object.keys(passedOver ?? {})).toEqual('card slot stage because limit value'.split(' '));
    expect(Object.keys(answer['week'] as object)).toEqual(['days', 'gaveUp']);
  });

  it('says the same to a person', async () => {
    const { out, exit } = await own.run('explain', 'otter');
    expect(exit).toBe(0);
    for (const heading of ['Passed over', 'Week', 'Remarks']) expect(out).toContain(`\n${heading}\n`);
    expect(out).toMatch(/by (kit|dose|testedSet|hipFlexion|compression): /);
  });
});

describe('estimate', () => {
  const KEYS =
    'admitted hipFlexionMaxDeg trunkLeanMaxDeg tensionBw compressionBw compressionVerticalOnlyBw hipMomentNm kneeMomentNm demand tensionTimeBwS compressionTimeBwS rangeFraction loadKg decidedBy';
  const BODY = ['--height', '1.75', '--mass', '70'];

  it('answers with the keys of its contract', async () => {
    const answer = await own.answer('estimate', 'hip-hinge', ...BODY, '--load', '20', '--hip-cap', '45');
    expect(Object.keys(answer)).toEqual(KEYS.split(' '));
    expect(answer).toMatchObject({ loadKg: 20, decidedBy: 'hipFlexion' });
    expect(answer['hipFlexionMaxDeg']).toBeCloseTo(45, 6);
    // A bow with 20 kg at 45 degrees of hip bend squeezes with 0.56 body weights: regression anchor of the body model.
    expect(answer['compressionBw']).toBeCloseTo(0.56, 1);
  });

  it.each([
    // cap                        decides
    [['--compression-cap', '0.3'], 'compression'],
    [['--tension-cap', '0.6'], 'tension'],
    [['--demand-cap', '0.1'], 'demand'],
    [[], 'dose'],
  ])('with %j is decided by %s', async (cap, decidedBy) => {
    expect(await own.answer('estimate', 'hip-hinge', ...BODY, '--load', '10', ...cap)).toMatchObject({
      decidedBy,
    });
  });

  it('is not admitted, and has no figures, when not even the gentle end is', async () => {
    const answer = await own.answer('estimate', 'half-squat', ...BODY, '--demand-cap', '0');
    expect(Object.keys(answer)).toEqual(KEYS.split(' '));
    expect(answer).toMatchObject({ admitted: false, rangeFraction: 0, loadKg: 0, decidedBy: 'demand' });
    const figures = KEYS.split(' ')
      .slice(1, -3)
      .map((key) => answer[key]);
    expect(figures).toEqual(figures.map(() => null));
    const run = await own.run('estimate', 'half-squat', ...BODY, '--demand-cap', '0');
    expect(run.out).toContain('Not admitted even at its gentle end (demand): no figures.');
    expect(run.out).not.toContain('compressionBw');
  });

  it('takes every weight that a consult may hold, and no heavier one', async () => {
    const answer = await own.answer('estimate', 'romanian-deadlift', ...BODY, '--load', '300');
    expect(answer).toMatchObject({ admitted: true, loadKg: 300 });
    const run = await own.run('estimate', 'romanian-deadlift', ...BODY, '--load', '300.5');
    expect(run).toMatchObject({ exit: 64 });
    expect(run.err).toContain('from 0 to 300 kg');
  });

  it.each([
    // kg | times the published force: mass over 75 kg, held between 45 and 100 (Handsfield 2014 [secondary])
    ['40', 0.6],
    ['75', 1],
    ['120', 4 / 3],
  ])('counts a body of %s kg with %d times the muscle force of the published one', async (massKg, factor) => {
    // A lean on the knees pulls with the same share of body weight whoever leans.
    const answerOf = (mass: string) =>
      own.answer('estimate', 'nordic-lowering', '--height', '1.75', '--mass', mass);
    const [one, base] = [await answerOf(massKg), await answerOf('75')];
    expect(one['tensionBw']).toBeCloseTo(base['tensionBw'] as number, 6);
    expect(one['demand']).toBeCloseTo(((base['demand'] as number) * (Number(massKg) / 75)) / factor, 5);
  });

  it('asks the clinic file for the muscles, and says nothing by a broken one', async () => {
    const demand = async () => (await own.answer('estimate', 'nordic-lowering', ...BODY))['demand'] as number;
    const before = await demand();
    const file = join(own.content, 'clinic.md');
    const text = readFileSync(file, 'utf8');
    writeFileSync(file, text.replace(/(baseMassKg:\n {4}value: )75/, '$190'));
    expect(await demand()).toBeCloseTo((before * 90) / 75, 5);
    writeFileSync(file, text.replace(/(baseMassKg:\n {4}value: )75/, '$1heavy'));
    const broken = await own.run('estimate', 'nordic-lowering', ...BODY);
    expect(broken).toMatchObject({ exit: 65, out: '' });
    expect(broken.err).toMatch(/clinic\.md:\d+:\d+: error/);
    writeFileSync(file, text);
  });

  it('needs nothing but the card: no clinic file, no protocol, no other card that is right', async () => {
    const alone = join(own.top, 'alone');
    mkdirSync(join(alone, 'exercises'), { recursive: true });
    writeStarter(alone, 'exercise', 'exercises/wall-bridge.md');
    writeFileSync(join(alone, 'exercises/broken.md'), '---\ntitle: [\n---\n## Set up\n');
    const run = await runHere(['estimate', 'wall-bridge', '--content', alone, '--json', ...BODY]);
    expect(run).toMatchObject({ exit: 0, err: '' });
    const broken = await runHere(['estimate', 'broken', '--content', alone, '--json', ...BODY]);
    expect(broken.exit).toBe(65);
    expect(JSON.parse(broken.out)).toMatchObject({ exit: 65, ok: false });
    expect(broken.err).toContain('exercises/broken.md:3:1: error yaml');
  });

  it('says of a card without a pose that there is nothing to say', async () => {
    const run = await own.run('estimate', 'pogo-hops', ...BODY);
    expect(run).toMatchObject({ exit: 64, out: '' });
    expect(run.err).toContain('has no pose');
  });
});

describe('a small clinic', () => {
  it('is right by its starters alone', async () => {
    const small = smallClinic();
    expect(await small.answer('check', '--on', '2026-11-25')).toMatchObject({ ok: true });
    small.remove();
  });
});
