/** The log sheet without its page: what is opened, typed and pasted is the file that `review` reads, and no line is lost. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LOG_COLUMNS } from '../../src/content/log/columns.ts';
import { logFile, sharedLog } from '../../src/content/log/format.ts';
import { readLog } from '../../src/content/log/readLog.ts';
import { completed, type CompletionFacts } from '../../src/desk/log/completed.ts';
import {
  blockOf,
  EMPTY,
  isLogText,
  joined,
  openEnded,
  withBlock,
  type LogLine,
} from '../../src/desk/log/lines.ts';
import { openLog, writeLog } from '../../src/desk/worker/logSheet.ts';
import { shipped } from '../programme/shipped.ts';

const whose = { alias: 'otter', revision: 1 };
const { exercises } = shipped;
const fileOf = (text: string | Uint8Array) => ({
  file: 'otter-r1.log.csv',
  bytes: typeof text === 'string' ? new TextEncoder().encode(text) : text,
  link: 'no' as const,
});
const open = (text: string | Uint8Array) => openLog(fileOf(text), whose);
const write = (lines: readonly LogLine[]) => writeLog(lines, whose, exercises);
const line = (cells: Partial<Record<(typeof LOG_COLUMNS)[number], string>>): LogLine => ({
  cells: LOG_COLUMNS.map((column) => cells[column] ?? ''),
  raw: null,
});
const entriesOf = (text: string | Uint8Array) => readLog(fileOf(text), whose, exercises).log.entries;

describe('a log that is opened', () => {
  it.each(readdirSync('tests/reviews'))('of %s says after saving what it said before', (name) => {
    const bytes = readFileSync(`tests/reviews/${name}/in/otter-r1.log.csv`);
    const { lines, problems } = open(bytes);
    expect(problems).toEqual([]);
    const { text, problems: after } = write(lines);
    const before = readLog(fileOf(bytes), whose, exercises);
    expect(readLog(fileOf(text), whose, exercises).log).toEqual({ ...before.log, file: 'otter-r1.log.csv' });
    expect(after.map(({ problem }) => problem.code)).toEqual(before.problems.map(({ code }) => code));
  });

  it('in the one form there is comes back byte for byte, and so does a shared one without its first line', () => {
    const text = logFile(entriesOf(readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv')));
    expect(write(open(text).lines).text).toBe(text);
    const shared = sharedLog(whose, entriesOf(text));
    expect(write(open(shared).lines).text).toBe(text);
  });

  it.each([
    ['of somebody else', sharedLog({ alias: 'heron', revision: 1 }, []), 'does-not-fit'],
    ['of another revision', sharedLog({ alias: 'otter', revision: 2 }, []), 'does-not-fit'],
    ['without a header', 'hello\r\n', 'csv'],
    ['with a column nobody knows', 'date,kind,mood\r\n2026-12-01,morning,good\r\n', 'unknown-key'],
  ])('%s is not taken', (_, text, code) => {
    const { lines, problems } = open(text);
    expect(lines).toEqual([]);
    expect(problems[0]?.code).toBe(code);
  });

  it('keeps a line that nobody can take apart as it stood, in its place, with its Problem', () => {
    const good = '2026-12-01,1,morning,,,0,,,,,,,2,,,';
    const broken = '2026-12-02,morning,3';
    const { lines } = open(`${logFile([])}${good}\r\n${broken}\r\n${good.replace('01', '03')}\r\n`);
    const { text, problems } = write(lines);
    expect(text).toContain(`\r\n${broken}\r\n`);
    expect(problems).toMatchObject([{ line: 1, problem: { code: 'csv' } }]);
    const mended = withBlock(lines, { line: 1, column: 0 }, [
      ['2026-12-02', '1', 'morning', '', '', '0', '', '', '', '', '', '', '3', '', '', ''],
    ]);
    expect(write(mended).problems).toEqual([]);
  });

  it('with semicolons and decimal commas is read right', () => {
    const text = 'date;kind;card;done;loadKg\r\n2026-12-01;session;hip-hinge;yes;7,5\r\n';
    expect(write(open(text).lines).text).toContain('2026-12-01,1,session,hip-hinge,,0,yes,,,,7.5,,,,,\r\n');
  });
});

describe('a log that is typed', () => {
  it('is the file that is written by hand, occasion and edit with it', () => {
    const lines = openEnded([
      line({
        date: '2026-12-01',
        kind: 'session',
        card: 'hip-hinge',
        done: 'yes',
        sets: '3',
        painDuring: '2',
      }),
      EMPTY,
      line({ date: '2026-12-02', kind: 'morning', morning: '2' }),
    ]);
    const { text, problems } = write(lines);
    expect(problems).toEqual([]);
    expect(text).toBe(logFile(entriesOf(text)));
    expect(entriesOf(text)).toHaveLength(2);
  });

  it('has a Problem in its cell, the same that review has', () => {
    const { problems, text } = write([
      line({ date: '2026-12-01', kind: 'morning', morning: '2' }),
      line({ date: '2.12.2026', kind: 'morning', morning: '12' }),
    ]);
    expect(problems.map(({ line: at, problem }) => [at, problem.path, problem.code])).toEqual([
      [1, 'date', 'not-a-date'],
      [1, 'morning', 'out-of-range'],
    ]);
    expect(problems.map(({ problem }) => problem.fix)).toEqual(
      readLog(fileOf(text), whose, exercises).problems.map(({ fix }) => fix),
    );
  });

  it('tells of two lines that contradict one another at the later one, past a note of two lines', () => {
    const { problems } = write([
      line({ date: '2026-12-01', kind: 'session', card: 'hip-hinge', done: 'yes', note: 'a\nb' }),
      EMPTY,
      line({ date: '2026-12-02', kind: 'morning', morning: '2' }),
      line({ date: '2026-12-02', kind: 'morning', morning: '3' }),
    ]);
    expect(problems).toMatchObject([{ line: 3, problem: { code: 'contradiction' } }]);
  });

  it('whatever is typed or pasted, nothing is lost and nothing reckons in a spreadsheet', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom('=1+1', '@x', '"', 'a,b', '-3'),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 16, maxLength: 16 }), { maxLength: 6 }), (rows) => {
        const { text } = write(rows.map((cells) => ({ cells, raw: null })));
        const again = open(text).lines;
        const kept = rows.filter((cells) => cells.some((one) => one.trim() !== ''));
        expect(again.length).toBeGreaterThanOrEqual(kept.length);
        expect(text.split('\r\n').slice(1).join('\n')).not.toMatch(/(^|,)"?[=@]/m);
      }),
      { numRuns: 100, seed: 5 },
    );
  });
});

describe('a block that is pasted', () => {
  it('goes to the right and down from its cell, and opens lines for itself', () => {
    const block = blockOf('2026-12-01\t1\tmorning\r\n2026-12-02\t1\tmorning\r\n');
    const lines = withBlock([EMPTY], { line: 0, column: 0 }, block);
    expect(lines).toHaveLength(3);
    expect(
      withBlock(lines, { line: 0, column: 12 }, blockOf('2\n\n3')).map(({ cells }) => cells[12]),
    ).toEqual(['2', '', '3', '']);
    expect(withBlock(lines, { line: 0, column: 15 }, [['note', 'beyond']])[0]?.cells).toHaveLength(16);
  });

  it.each([
    ['loadleaf-log 1 otter r1\ndate,occasion', true],
    ['date;kind', true],
    ['2026-12-01,1,morning', true],
    ['2026-12-01\t1\tmorning', false],
    ['3', false],
  ])('%s is a log: %s', (text, isLog) => expect(isLogText(text)).toBe(isLog));

  it('of lines that are there already changes nothing', () => {
    const lines = open(readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv')).lines;
    expect(joined(lines, lines)).toEqual(openEnded(lines));
  });
});

describe('a few letters', () => {
  const facts: CompletionFacts = {
    from: '2026-11-24',
    to: '2026-12-20',
    cards: [
      ['hip-hinge', 'chair-squat'],
      ['hip-hinge', 'chair-squat', 'hip-thrust'],
    ],
    items: ['footDrop', 'fever'],
    kind: '',
  };
  it.each([
    ['date', '12', '2026-12-12'],
    ['date', '25', '2026-11-25'],
    ['date', '3', '2026-12-03'],
    ['date', '21', '21'],
    ['date', '24', '2026-11-24'],
    ['kind', 'mo', 'morning'],
    ['kind', 's', 's'],
    ['kind', 'si', 'sitting'],
    ['done', 'Y', 'yes'],
    ['side', 'r', 'right'],
    ['card', 'hinge', 'hip-hinge'],
    ['card', 'hip', 'hip-hinge'],
    ['card', 'thrust', 'hip-thrust'],
    ['sets', '3', '3'],
    ['note', 'y', 'y'],
  ] as const)('%s %s is %s', (column, typed, meant) => expect(completed(column, typed, facts)).toBe(meant));

  it('of an alarm stand for an item of the screen', () => {
    expect(completed('card', 'foot', { ...facts, kind: 'alarm' })).toBe('footDrop');
  });

  it('of a day that the programme has twice, or not at all, stay as they are', () => {
    expect(completed('date', '24', { ...facts, to: '2026-12-31' })).toBe('24');
    expect(completed('date', '24', { ...facts, from: '' })).toBe('24');
  });
});
