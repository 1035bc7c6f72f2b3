/** The log as a file: written and read again, from spreadsheets of many countries, and spoilt. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LOG_DONE, LOG_KINDS, LOG_SIDES, logKey, type LogRow } from '../../../src/content/log/columns.ts';
import { readLogHead, sharedLog } from '../../../src/content/log/format.ts';
import { HEADER, readBytes, readRows, readText, row } from './logs.ts';

const number = (most: number) =>
  fc.option(fc.double({ min: 0, max: most, noNaN: true }).map((n) => Math.round(n * 10) / 10));
const count = (most: number) => fc.option(fc.integer({ min: 1, max: most }));

/** Any line that can be meant; no alarm, whose card is an item of the screen. */
const anyRow: fc.Arbitrary<LogRow> = fc.record({
  date: fc.integer({ min: 1, max: 28 }).map((day) => `2026-03-${String(day).padStart(2, '0')}`),
  occasion: fc.integer({ min: 1, max: 3 }),
  kind: fc.constantFrom(...LOG_KINDS.filter((kind) => kind !== 'alarm' && kind !== 'morning')),
  card: fc.constantFrom('', 'hip-hinge', 'split-squat'),
  side: fc.option(fc.constantFrom(...LOG_SIDES)),
  edit: fc.integer({ min: 0, max: 2 }),
  done: fc.option(fc.constantFrom(...LOG_DONE.filter((done) => done !== 'no'))),
  sets: count(9),
  repetitions: count(20),
  seconds: number(60),
  loadKg: number(60),
  painDuring: number(10),
  morning: number(10),
  minutes: number(300),
  km: number(40),
  note: fc.string({ maxLength: 30, unit: fc.constantFrom(...`aZ9 ,;"'=+-@\n\té`) }),
});

/** No two with one key. */
const anyLog = fc.uniqueArray(anyRow, { maxLength: 25, selector: logKey });

describe('written and read again', () => {
  it('every line says the same, whatever its note', () => {
    fc.assert(
      fc.property(anyLog, (rows) => {
        const { log, problems } = readRows(rows);
        expect(problems).toEqual([]);
        expect(new Set(log.entries.map((one) => JSON.stringify({ ...one })))).toEqual(
          new Set(rows.map((one) => JSON.stringify(one))),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('the same in another order, and with every line twice', () => {
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 20 }), fc.infiniteStream(fc.nat()), (rows, chance) => {
        const { log } = readRows(rows);
        const shuffled = [...rows, ...rows]
          .map((one) => ({ one, at: chance.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ one }) => one);
        const again = readRows(shuffled).log;
        expect(again.entries).toEqual(log.entries);
        expect(again.contradicted).toEqual(log.contradicted);
      }),
      { numRuns: 60 },
    );
  });

  it('the shared text is the head and then the file', () => {
    const rows = [row('2026-03-02', 'morning', { morning: 2 })];
    const text = sharedLog({ alias: 'otter', revision: 1 }, rows);
    expect(text.split('\r\n')).toEqual([
      'loadleaf-log 1 otter r1',
      HEADER,
      '2026-03-02,1,morning,,,0,,,,,,,2,,,',
      '',
    ]);
    expect(readText(text).log.entries).toEqual(rows);
  });

  it.each([
    ['loadleaf-log 1 otter r1', { alias: 'otter', revision: 1 }],
    ['  loadleaf-log   1 otter-2 r12 ', { alias: 'otter-2', revision: 12 }],
    ['loadleaf-log 2 otter r1', 'other-format'],
    ['loadleaf-log 1 otter', 'broken'],
    ['loadleaf-log 1 Otter r1', 'broken'],
    ['date,occasion', 'none'],
    ['', 'none'],
  ])('the head %j', (line, expected) => {
    expect(readLogHead(line)).toEqual(expected);
  });
});

describe('corrections', () => {
  const at = (edit: number, loadKg: number) =>
    row('2026-03-02', 'session', { card: 'hip-hinge', edit, loadKg });

  it('the highest edit holds', () => {
    const { log, problems } = readRows([at(2, 12), at(0, 8), at(1, 10)]);
    expect(log.entries).toEqual([at(2, 12)]);
    expect(problems).toEqual([]);
  });

  it('two of one edit with other values hold neither, and are a Problem', () => {
    const { log, problems } = readRows([at(0, 8), at(1, 12), at(1, 10)]);
    expect(log.entries).toEqual([]);
    expect(log.contradicted).toEqual(['2026-03-02']);
    expect(problems).toMatchObject([{ code: 'contradiction', path: 'loadKg', line: 4 }]);
  });

  it('below the one that holds they do not matter', () => {
    const { log, problems } = readRows([at(0, 8), at(0, 10), at(1, 12)]);
    expect(log.entries).toEqual([at(1, 12)]);
    expect(problems).toEqual([]);
  });
});

describe('spreadsheets', () => {
  const LINE = '2026-03-02,1,session,hip-hinge,right,0,yes,3,8,,12.5,2,,,,Tür';
  const text = `${HEADER}\n${LINE}\n`;
  const semicolons = text.replaceAll(',', ';').replace('12.5', '12,5');
  const expected = readText(text).log.entries;

  it.each([
    ['UTF-8', new TextEncoder().encode(text)],
    ['UTF-8 with its mark', Buffer.from(`\ufeff${text}`)],
    ['UTF-16, little end first', Buffer.from(`\ufeff${text}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\ufeff${text}`, 'utf16le').swap16()],
    ['lines ended by CR and LF', Buffer.from(text.replaceAll('\n', '\r\n'))],
    ['tabs', Buffer.from(text.replaceAll(',', '\t'))],
    ['semicolons and decimal commas', Buffer.from(semicolons)],
    ['a decimal comma in quotes', Buffer.from(text.replace('12.5', '"12,5"'))],
    ['the line that names the separator', Buffer.from(`sep=;\n${semicolons}`)],
    ['columns in another order', Buffer.from(reversed(text))],
    ['empty lines at the end', Buffer.from(`${text},,,,,,,,,,,,,,,\n\n`)],
    ['no header', Buffer.from(`${LINE}\n`)],
  ])('%s', (_, bytes) => {
    const { log, problems } = readBytes(bytes);
    expect(problems).toEqual([]);
    expect(log.entries).toEqual(expected);
    expect(expected[0]).toMatchObject({ loadKg: 12.5, note: 'Tür' });
  });

  function reversed(all: string): string {
    return all
      .split('\n')
      .map((line) => line.split(',').reverse().join(','))
      .join('\n');
  }

  it.each([
    ['an old encoding', Buffer.from(text, 'latin1'), 'not-utf8'],
    ['10 MB', Buffer.from(HEADER + `\n${LINE}`.repeat(160_000)), 'too-large'],
    ['bars between the cells', Buffer.from(text.replaceAll(',', '|')), 'csv'],
    ['a decimal comma among commas', Buffer.from(text.replace('12.5', '12,5')), 'csv'],
    ['the day first', Buffer.from(text.replace('2026-03-02', '02.03.2026')), 'not-a-date'],
    ['the month first', Buffer.from(text.replace('2026-03-02', '3/2/26')), 'not-a-date'],
    ['a formula', Buffer.from(text.replace('12.5', '=1+2')), 'wrong-type'],
    ['a day that is none', Buffer.from(text.replace('03-02', '02-30')), 'not-a-date'],
    ['a minus', Buffer.from(text.replace('12.5', '-12.5')), 'wrong-type'],
  ])('refuses %s with its cure', (_, bytes, code) => {
    const { log, problems } = readBytes(bytes);
    expect(log.entries).toEqual([]);
    expect(log.unread).toBeGreaterThan(0);
    expect(problems.map((one) => one.code)).toEqual([code]);
    expect(problems[0]?.fix).not.toBe('');
  });

  it('a line that is broken costs no other line', () => {
    const { log, problems } = readText(
      `${HEADER}\n${LINE}\n2026-03-03,1,session,"hip\n${LINE.replace('-02', '-04')}\n`,
    );
    expect(log.entries.map(({ date }) => date)).toEqual(['2026-03-02', '2026-03-04']);
    expect(problems).toMatchObject([{ code: 'csv', line: 3, column: 22 }]);
  });

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const { log, problems } = readBytes(bytes);
        expect(log.unread > 0 || problems.length === 0).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('an alarm', () => {
  const alarm = (edit: number, done: LogRow['done']) =>
    row('2026-03-02', 'alarm', { card: 'footDrop', edit, done });

  it.each([
    ['is one', [alarm(0, 'yes')], 1],
    ['without a word is one too', [alarm(0, null)], 1],
    ['that a later edit takes back is none', [alarm(0, 'yes'), alarm(1, 'no')], 0],
    ['answered no is none', [alarm(0, 'no')], 0],
    ['that is contradicted is one', [alarm(0, 'yes'), alarm(0, 'no')], 1],
  ])('%s', (_, rows, count) => {
    expect(readRows(rows).log.alarms).toHaveLength(count);
  });

  it.each([
    ['a line with a slip', `${HEADER}\n2026-13-02,1,alarm,footDrop,,0,yes,,,,,,,,,\n`, 'footDrop'],
    ['a word of the screen with a slip', `${HEADER}\n2026-03-02,1,alarm,footdorp,,0,yes,,,,,,,,,\n`, null],
    ['a file without a header', 'alarm footDrop', 'footDrop'],
  ])('in %s counts', (_, text, item) => {
    expect(readText(text).log.alarms).toMatchObject([{ item }]);
  });

  it('in a file that is no text counts', () => {
    expect(readBytes(Buffer.from('\xff alarm,fever', 'latin1')).log.alarms).toMatchObject([
      { item: 'fever' },
    ]);
  });
});
