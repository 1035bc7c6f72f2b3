/** A protocol that is another one with some values changed: what comes out, whose it is, and what is refused. */
import { describe, expect, it } from 'vitest';
import { problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { changedUnderneath } from '../../src/content/underneath.ts';
import { overAsked } from '../../src/content/overAsked.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from './sample.ts';

const HAMSTRING = 'protocols/hamstring.md';
const STANDS = { mark: 'choice', cite: 'Our audit of 2026' };

function extension(keys: object, body = ''): string {
  const lines = Object.entries({ extends: 'hamstring', ...keys }).map(
    ([key, one]) => `${key}: ${JSON.stringify(one)}`,
  );
  return `---\n${lines.join('\n')}\n---\n${body}`;
}

function over(text: string, file = HAMSTRING, below = filesWith()) {
  return readLibrary(below, [fileOf(file, text)]);
}

const value = (path: string, to: unknown, more: object = STANDS) => ({
  values: [{ path, value: to, ...more }],
});
const changed = (keys: object) => {
  const { library, problems } = over(extension(keys));
  expect(problems.map((problem) => problemText(problem, null))).toEqual([]);
  return library!.protocols.get('hamstring')!;
};
const said = (keys: object, file = HAMSTRING) =>
  over(extension(keys), file)
    .problems.map((problem) => problemText(problem, null))
    .join('\n\n');

describe('a changed value', () => {
  it.each([
    ['stages[0].slots[0].dose.sets', 4],
    ['stages[hold].slots[main].dose.sets', 4],
    ['stages.0.slots.main.dose.sets', 4],
  ])('of a dose, by %s', (path, to) => {
    const [stage] = changed(value(path, to)).stages;
    expect(stage?.slots[0]?.dose.sets).toBe(to);
    expect(stage?.slots[0]?.dose.repetitions).toBe(8);
  });

  it('of a dose says which of its numbers is whose, and is as sure as the least sure', () => {
    const [stage] = changed(
      value('stages[0].slots[0].dose.sets', 4, { mark: 'memory', cite: 'Our audit' }),
    ).stages;
    expect(stage?.slots[0]?.doseSource.cite).toMatch(/^sets: Our audit; the rest: /);
    expect(stage?.slots[0]?.doseSource.mark).toBe('choice');
  });

  it.each(['limits.stepGrowth', 'limits.stepGrowth.value'])(
    'of a house number, by %s, takes its mark and source',
    (path) => {
      expect(changed(value(path, 1.2)).limits.stepGrowth).toEqual({ value: 1.2, ...STANDS });
    },
  );

  it('of a house number that the protocol leaves out', () => {
    expect(changed(value('limits.untestedHoldSeconds', 20)).limits.untestedHoldSeconds).toEqual({
      value: 20,
      ...STANDS,
    });
    expect(changed(value('maternity.notFlatFromWeek', 16)).maternity.notFlatFromWeek.value).toBe(16);
  });

  it('may lift a cap, and be a text without a source', () => {
    expect(changed(value('stages[0].caps.compressionBw', 'none')).stages[0]?.caps.compressionBw).toBeNull();
    expect(changed(value('title', 'Ours', {})).title).toBe('Ours');
  });

  it('is kept with what it was', () => {
    expect(changed(value('limits.stepGrowth', 1.2)).extension).toMatchObject({
      of: 'hamstring',
      values: [{ path: ['limits', 'stepGrowth'], shipped: 1.3, value: 1.2, ...STANDS }],
    });
  });

  it('makes another library, and so does a change below it', () => {
    const version = (text: string, below = filesWith()) => over(text, HAMSTRING, below).library?.version;
    const own = extension(value('limits.stepGrowth', 1.2));
    const other = filesWith({
      [HAMSTRING]: spoilt(HAMSTRING, 'weekGrowth: { value: 1.3', 'weekGrowth: { value: 1.25'),
    });
    expect(new Set([version(own), version(own, other), readLibrary(filesWith()).library?.version]).size).toBe(
      3,
    );
  });
});

describe('a protocol that extends', () => {
  it('another under its own name is changed, under another it is added', () => {
    const keys = value('limits.stepGrowth', 1.2);
    expect(over(extension(keys)).library?.origins.get('protocols/hamstring')).toBe('changed');
    const { library } = over(extension(keys), 'protocols/ours.md');
    expect(library?.origins.get('protocols/ours')).toBe('added');
    expect(library?.protocols.get('ours')?.limits.stepGrowth.value).toBe(1.2);
    expect(library?.protocols.get('hamstring')?.limits.stepGrowth.value).toBe(1.3);
  });

  it('keeps the text below unless it has its own', () => {
    expect(changed({ ...value('limits.stepGrowth', 1.2) }).body).toEqual(
      readLibrary(filesWith()).library?.protocols.get('hamstring')?.body,
    );
    const own = over(extension(value('limits.stepGrowth', 1.2), '\n## How it works\n\nOur way.\n'));
    expect(JSON.stringify(own.library?.protocols.get('hamstring')?.body)).toContain('Our way.');
  });

  it('may be laid over one that extends', () => {
    const { library } = readLibrary(
      filesWith(),
      [fileOf(HAMSTRING, extension(value('limits.stepGrowth', 1.2)))],
      [fileOf(HAMSTRING, extension(value('limits.weekGrowth', 1.1)))],
    );
    const { stepGrowth, weekGrowth } = library!.protocols.get('hamstring')!.limits;
    expect([stepGrowth.value, weekGrowth.value]).toEqual([1.2, 1.1]);
  });

  it('adds a card before or after the others, and leaves one out', () => {
    const slot = 'stages[hold].slots[main]';
    const cards = (keys: object) => changed(keys).stages.map(({ slots }) => slots[0]?.cards);
    expect(cards({ addCards: [{ slot, card: 'single-leg-bridge' }] })[0]).toEqual([
      'bridge',
      'single-leg-bridge',
    ]);
    expect(cards({ addCards: [{ slot, card: 'single-leg-bridge', place: 'first' }] })[0]).toEqual([
      'single-leg-bridge',
      'bridge',
    ]);
    expect(cards({ hideCards: ['single-leg-bridge'] })[1]).toEqual(['bridge']);
  });

  it('names the place of an added card that is not there, and of one below it', () => {
    const { problems } = over(
      extension({ addCards: [{ slot: 'stages[0].slots[0]', card: 'brigde', place: 'first' }] }),
    );
    expect(problems).toMatchObject([{ code: 'no-such-card', file: HAMSTRING, line: 3, fix: 'write bridge' }]);
    const gone = filesWith({ 'exercises/single-leg-bridge.md': null });
    const below = over(extension(value('limits.stepGrowth', 1.2)), HAMSTRING, gone).problems;
    expect(below.map(({ code, file, line }) => [code, file, line])).toContainEqual([
      'no-such-card',
      `below/${HAMSTRING}`,
      41,
    ]);
  });
});

describe('is refused', () => {
  it.each([
    [
      'a way that leads nowhere, with the nearest',
      value('limits.stepGrowht', 1.2),
      'Fix: write limits.stepGrowth.',
    ],
    ['a way that lost its first step', value('stepGrowth', 1.2), 'Fix: write limits.stepGrowth.'],
    ['a way through another group', value('week.stepGrowth', 1.2), 'Fix: write limits.stepGrowth.'],
    ['a stage that is not there', value('stages[4].maxExercises', 3), 'Fix: write stages[0].maxExercises.'],
    [
      'a slot with a slip in its name',
      value('stages[hold].slots[mian].dose.sets', 4),
      'Fix: write stages[0].slots[0].dose.sets.',
    ],
    ['a way of another form', value('limits stepGrowth', 1.2), 'must be keys with dots between them'],
    ['a group', value('stages[0].caps', 3), 'must be the way to a single value'],
    ['a source', value('limits.stepGrowth.mark', 'read'), 'must be the way to a value, not to its source'],
    [
      'a number without its source',
      value('limits.stepGrowth', 1.2, { mark: 'choice' }),
      'values[0].cite is missing; must be the source of a changed number',
    ],
    [
      'a number without its mark',
      value('stages[0].slots[0].dose.sets', 4, { cite: 'x' }),
      'values[0].mark is missing',
    ],
    [
      'a cap that is lifted without a source',
      value('stages[0].caps.hipFlexionDeg', 'none', {}),
      'values[0].mark is missing',
    ],
    [
      'a number beyond its limits',
      value('stages[0].slots[0].dose.sets', 40),
      'must be a whole number from 1 to 10',
    ],
    ['what no longer fits beside it', value('stages[0].usualWeeks.from', 9), 'with this change; must be'],
    [
      'the same twice',
      {
        values: [...value('limits.stepGrowth', 1.2).values, ...value('limits.stepGrowth.value', 1.1).values],
      },
      'must be changed once',
    ],
    ['nothing at all', {}, 'extends is alone'],
    ['another key', { title: 'Ours', ...value('limits.stepGrowth', 1.2) }, 'title is an unknown key'],
    [
      'the last card of a slot that must be filled',
      { hideCards: ['bridge'] },
      'stages[0].slots[0] (hold, main) must be filled',
    ],
    [
      'a hidden card that fills no slot',
      { hideCards: ['band-walk'] },
      'must be a card that fills a slot of the protocol',
    ],
    [
      'a card the slot has',
      { addCards: [{ slot: 'stages[0].slots[0]', card: 'bridge' }] },
      'must be a card the slot has not',
    ],
    [
      'a slot that is none',
      { addCards: [{ slot: 'stages[0]', card: 'bridge' }] },
      'must be the way to a slot',
    ],
    [
      'a value that was another when it was changed',
      value('limits.stepGrowth', 1.2, { ...STANDS, was: 1.5 }),
      'must be 1.3, what it is below',
    ],
  ])('%s', (_, keys, words) => {
    const text = said(keys);
    expect(text).toContain(words);
    expect(text).toMatch(/^protocols\/hamstring\.md:[23]:/);
  });

  it('a protocol that is not there, and one that leads back', () => {
    expect(said({ extends: 'hamstrin', ...value('title', 'x', {}) }, 'protocols/ours.md')).toContain(
      'Fix: write hamstring.',
    );
    const both = readLibrary(
      filesWith({
        'protocols/a.md': extension({ extends: 'b', ...value('title', 'x', {}) }),
        'protocols/b.md': extension({ extends: 'a', ...value('title', 'x', {}) }),
      }),
    );
    expect(both.library).toBeNull();
    expect(both.problems.map(({ code }) => code)).toContain('circle');
  });

  it('what is wrong below, once and there', () => {
    const broken = filesWith({ [HAMSTRING]: spoilt(HAMSTRING, 'sets: 3', 'sets: 30') });
    const { problems, library } = over(extension(value('limits.stepGrowth', 1.2)), HAMSTRING, broken);
    expect(library).toBeNull();
    expect(problems.map(({ code, file }) => [code, file])).toEqual([['out-of-range', `below/${HAMSTRING}`]]);
  });
});

describe('what changed underneath', () => {
  const own = [
    fileOf(
      HAMSTRING,
      extension({
        ...value('stages[0].slots[0].dose.sets', 4),
        addCards: [{ slot: 'stages[0].slots[0]', card: 'single-leg-bridge' }],
      }),
    ),
  ];
  const since = (before: string, after = SAMPLE[HAMSTRING]) => {
    const below = filesWith({ [HAMSTRING]: after });
    const { extending } = readLibrary(below, own);
    return changedUnderneath({ own, below, extending }, [fileOf(HAMSTRING, before)]);
  };

  it('is told of values that are changed here, and of no others', () => {
    expect(since(SAMPLE[HAMSTRING])).toEqual([]);
    expect(since(spoilt(HAMSTRING, 'weekGrowth: { value: 1.3', 'weekGrowth: { value: 1.25'))).toEqual([]);
    expect(
      since(spoilt(HAMSTRING, 'sets: 3, repetitions: 8', 'sets: 2, repetitions: 8')).map((one) =>
        problemText(one, null),
      ),
    ).toEqual([
      'protocols/hamstring.md:3:10: error shipped-changed values[0] is stages[0].slots[0].dose.sets (hold, main), 4 here and 3 below; must be what it was when it was changed here: 2.\nFix: look whether the change still stands; then hold it against the library as it is now.',
    ]);
  });

  it('is told of a slot whose cards are others, and of a stage that took another’s place', () => {
    expect(
      since(spoilt(HAMSTRING, 'cards: [bridge]', 'cards: [bridge, band-walk]')).map(({ path }) => path),
    ).toEqual(['addCards[0]']);
    expect(since(spoilt(HAMSTRING, '- name: hold', '- name: gentle')).map(({ path }) => path)).toEqual([
      'values[0]',
      'addCards[0]',
    ]);
  });

  it('is told of a default that came or went', () => {
    const mine = [fileOf(HAMSTRING, extension(value('limits.untestedHoldSeconds', 20)))];
    const below = filesWith({
      [HAMSTRING]: spoilt(
        HAMSTRING,
        'limits:\n',
        'limits:\n  untestedHoldSeconds: { value: 25, mark: choice }\n',
      ),
    });
    const { extending } = readLibrary(below, mine);
    const told = changedUnderneath({ own: mine, below, extending }, filesWith());
    expect(told.map(({ expected }) => expected)).toEqual(['what it was when it was changed here: 15']);
  });

  it('is told of a whole file that is replaced', () => {
    const card = 'exercises/bridge.md';
    const mine = [fileOf(card, SAMPLE[card])];
    const before = [fileOf(card, spoilt(card, 'title: Bridge from the floor', 'title: Bridge'))];
    const standing = { own: mine, below: filesWith(), extending: new Map() };
    expect(changedUnderneath(standing, before).map(({ found }) => found)).toEqual([
      'over a file of which title changed',
    ]);
    expect(changedUnderneath(standing, filesWith())).toEqual([]);
  });
});

describe('a folder that was perhaps meant to lie over', () => {
  const clinic = (line: string) =>
    fileOf('clinic.md', SAMPLE['clinic.md'].replace('paper: A4', `paper: A4${line}`));
  const bridge = fileOf('exercises/bridge.md', SAMPLE['exercises/bridge.md']);
  it('is asked about when it has the name of a shipped file and little else', () => {
    const [asked, ...more] = overAsked([clinic(''), bridge], filesWith());
    expect(asked).toMatchObject({ code: 'over-shipped', severity: 'warning', file: 'clinic.md' });
    expect(more).toEqual([]);
  });
  it.each([
    ['says that it does', [clinic('\nover: shipped'), bridge]],
    ['says that it does not', [clinic('\nover: nothing'), bridge]],
    ['has no name of the shipped ones', [clinic(''), fileOf('exercises/ours.md', '')]],
    ['is a copy of the whole', filesWith()],
  ])('is not when it %s', (_, own) => {
    expect(overAsked(own, filesWith())).toEqual([]);
  });
});
