import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { SCREEN_ITEMS } from '../../src/content/schema/consult.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from './sample.ts';

const OTTER = 'consults/otter-r1.md';
const { known } = readLibrary(filesWith());

function read(changes: Readonly<Record<string, string | null>> = {}) {
  const { consults, current, stopped, problems } = readConsults(filesWith(changes), known);
  return {
    consults: consults.map(({ id }) => id),
    current: current.map(({ id }) => id),
    stopped,
    codes: problems.map(({ code }) => code),
  };
}

const second = SAMPLE[OTTER].replace('revision: 1', 'revision: 2');
const tenth = SAMPLE[OTTER].replace('revision: 1', 'revision: 10');
const badger = SAMPLE[OTTER].replace('alias: otter', 'alias: badger');
const broken = (text: string) => text.replace('massKg: 68', 'massKg: 700');

const draft = (text: string) => text.replace('clinician:', 'draft: yes\nclinician:');

describe('a draft', () => {
  const drafts = (changes: Readonly<Record<string, string | null>>) => {
    const reading = readConsults(filesWith(changes), known);
    return {
      drafts: reading.drafts.map(({ alias, revision, said }) =>
        `${alias}-r${revision} ${said.yes.join(' ')}`.trim(),
      ),
      current: reading.current.map(({ id }) => id),
      stopped: reading.stopped,
      problems: reading.problems.length,
      draftProblems: reading.draftProblems.map(({ code }) => code),
    };
  };
  const STANDS = { current: ['otter-r1'], stopped: [], problems: 0 };

  it.each([
    ['that is in order', draft(second), []],
    ['with a Problem', draft(broken(second)), ['out-of-range']],
    ['that cannot be read as YAML', `${draft(second).replace('side: left', 'side: [left')}`, ['yaml']],
  ])('%s displaces nothing', (_, text, codes) => {
    expect(drafts({ 'consults/otter-r2.md': text })).toMatchObject({
      ...STANDS,
      drafts: ['otter-r2'],
      draftProblems: codes,
    });
  });

  it('of the revision that is in use is itself in the wrong', () => {
    expect(drafts({ 'consults/z.md': draft(SAMPLE[OTTER]) })).toMatchObject({
      ...STANDS,
      draftProblems: ['duplicate-id'],
    });
  });

  it.each([
    ['a key', draft(second).replace('fever: no', 'fever: yes')],
    [
      'a line, where no key can be read',
      draft(second).replace('fever: no', 'fever: yes').replace('kit:', 'kit: ['),
    ],
  ])('says what was answered yes by %s', (_, text) => {
    expect(drafts({ 'consults/otter-r2.md': text })).toMatchObject({ ...STANDS, drafts: ['otter-r2 fever'] });
  });

  it('is nothing that a later revision is compared with', () => {
    const other = draft(second).replace('side: left', 'side: right');
    const third = SAMPLE[OTTER].replace('revision: 1', 'revision: 3');
    const { current, problems } = readConsults(
      filesWith({ 'consults/otter-r2.md': other, 'consults/otter-r3.md': third }),
      known,
    );
    expect([current.map(({ id }) => id), problems]).toEqual([['otter-r3'], []]);
  });
});

describe('readConsults', () => {
  it('gives every revision in order of numbers, and the highest as the current one', () => {
    const changes = {
      'consults/otter-r2.md': second,
      'consults/otter-r10.md': tenth,
      'consults/badger-r1.md': badger,
    };
    expect(read(changes)).toEqual({
      consults: ['badger-r1', 'otter-r1', 'otter-r2', 'otter-r10'],
      current: ['badger-r1', 'otter-r10'],
      stopped: [],
      codes: [],
    });
  });

  it('goes by the keys, not by the name of the file', () => {
    expect(read({ [OTTER]: null, 'consults/Whoever 3.md': second }).current).toEqual(['otter-r2']);
  });

  it('stops the alias whose newest file is wrong, and no other', () => {
    expect(read({ 'consults/otter-r2.md': broken(second), 'consults/badger-r1.md': badger })).toEqual({
      consults: ['badger-r1', 'otter-r1'],
      current: ['badger-r1'],
      stopped: ['otter'],
      codes: ['out-of-range'],
    });
  });

  it('goes on with the newest when an older one is wrong', () => {
    expect(read({ [OTTER]: broken(SAMPLE[OTTER]), 'consults/otter-r2.md': second })).toEqual({
      consults: ['otter-r2'],
      current: ['otter-r2'],
      stopped: [],
      codes: ['out-of-range'],
    });
  });

  it('stops the alias in the name of a file that cannot be read at all', () => {
    expect(read({ 'consults/otter-r2.md': 'nothing' }).stopped).toEqual(['otter']);
    const files = [
      ...filesWith(),
      { file: 'consults/otter-r2.md', bytes: Uint8Array.of(0xff), link: 'no' as const },
    ];
    expect(readConsults(files, known).stopped).toEqual(['otter']);
    expect(read({ 'consults/otter.md': 'nothing' }).stopped).toEqual(['otter']);
  });

  it('takes a revision that cannot be one from the name of the file', () => {
    expect(
      read({ 'consults/otter-r2.md': SAMPLE[OTTER].replace('revision: 1', 'revision: 0') }).stopped,
    ).toEqual(['otter']);
  });

  it('uses neither of two files of one revision', () => {
    expect(read({ 'consults/z.md': SAMPLE[OTTER] })).toEqual({
      consults: [],
      current: [],
      stopped: ['otter'],
      codes: ['duplicate-id'],
    });
  });

  it('takes an item left out of the screen as not asked, and yes as an answer', () => {
    const text = spoilt(OTTER, '  fever: no\n', '  fever: yes\n');
    const [consult] = readConsults([fileOf(OTTER, text)], known).consults;
    expect(consult?.screen).toMatchObject({ saddleNumbness: 'no', fever: 'yes', hernia: 'notAsked' });
    expect(Object.keys(consult?.screen ?? {}).sort()).toEqual([...SCREEN_ITEMS].sort());
  });

  it('holds a consult against what can be read of a broken library', () => {
    const consult = spoilt(OTTER, 'protocol: hamstring', 'protocol: elsewhere').replace('GB', 'FR');
    const codes = (changes: Readonly<Record<string, string>>) =>
      readConsults([fileOf(OTTER, consult)], readLibrary(filesWith(changes)).known).problems.map(
        ({ code, path }) => `${code} ${path}`,
      );
    const all = ['no-such-country country', 'no-such-card protocol'];
    expect(codes({})).toEqual(all);
    expect(codes({ 'exercises/bridge.md': 'nothing', 'advice/sitting.md': 'nothing' })).toEqual(all);
    expect(codes({ 'clinic.md': 'nothing' })).toEqual(['no-such-card protocol']);
  });

  it('says nothing of what a broken protocol or card might hold', () => {
    const { known: broken } = readLibrary(
      filesWith({ 'protocols/hamstring.md': 'nothing', 'exercises/bridge.md': 'nothing' }),
    );
    expect(readConsults([fileOf(OTTER, SAMPLE[OTTER])], broken).problems).toEqual([]);
  });

  it('passes over other files of the folder', () => {
    const files = [...filesWith(), fileOf('consults/.otter-r2.md', ''), fileOf('consults/letter.pdf', '')];
    expect(readConsults(files, known).problems).toEqual([]);
  });
});

describe('the memory of many consults', () => {
  it('holds their facts, not the heads they were read from: under 20 kB each, where a head takes 30', () => {
    setFlagsFromString('--expose-gc');
    const sweep = runInNewContext('gc') as () => void;
    const files = Array.from({ length: 300 }, (_, index) =>
      fileOf(`consults/p${index}-r1.md`, SAMPLE[OTTER].replace('alias: otter', `alias: p${index}`)),
    );
    readConsults(files.slice(0, 20), known);
    sweep();
    const before = process.memoryUsage().heapUsed;
    const reading = readConsults(files, known);
    sweep();
    const each = (process.memoryUsage().heapUsed - before) / files.length;
    expect(reading.current).toHaveLength(files.length);
    expect(each).toBeLessThan(20_000);
  });
});
