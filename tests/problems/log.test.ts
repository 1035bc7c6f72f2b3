/** The log beside a consult: the whole printed text of each Problem of its lines. */
import { describe, expect, it } from 'vitest';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLogs } from '../../src/content/log/readLogs.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { FILE, HEADER } from '../content/log/logs.ts';

const KNOWN = { exercises: new Map([['hip-hinge', null]]), protocols: new Map(), clinic: null };

function printed(lines: string, file = FILE, more: readonly SourceFile[] = []): string {
  const files = [{ file, bytes: new TextEncoder().encode(lines), link: 'no' as const }, ...more];
  const { problems } = readLogs(files, KNOWN, new Set(['otter']));
  const lineOf = lineFinder(files);
  return problems.map((one) => problemText(one, lineOf(one.file, one.line))).join('\n\n');
}

const LINE = '2026-03-02,1,session,hip-hinge,right,0,yes,3,8,,12.5,2,,,,';
const spoilt = (passage: string, by: string) => printed(`${HEADER}\n${LINE.replace(passage, by)}\n`);

describe('csv', () => {
  it('counts the cells', () => {
    expect(spoilt('12.5', '12,5')).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:2:1: error csv found a line of 17 cells; must be 16 cells, as the header has.
          2026-03-02,1,session,hip-hinge,right,0,yes,3,8,,12,5,2,,,,
          ^
      Fix: write decimals with a point, and put a text with a comma in quotes."
    `);
  });

  it('shows the quote that is not closed', () => {
    expect(spoilt('hip-hinge', '"hip-hinge')).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:2:22: error csv found a quote that is not closed; must be a cell of RFC 4180: quotes around the whole of it, a quote inside written twice.
          2026-03-02,1,session,"hip-hinge,right,0,yes,3,8,,12.5,2,,,,
                               ^
      Fix: close the quote, or take it out."
    `);
  });

  it('asks for the header', () => {
    expect(printed('Monday, bridge, 3 sets\n')).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:1:1: error csv found no header, and no line of a log; must be the header date,occasion,kind,card,side,edit,done,sets,repetitions,seconds,loadKg,painDuring,morning,minutes,km,note.
          Monday, bridge, 3 sets
          ^
      Fix: write it as the first line, with commas, semicolons or tabs between the names."
    `);
  });
});

describe('contradiction', () => {
  it('names both lines', () => {
    expect(printed(`${HEADER}\n${LINE}\n${LINE.replace(',3,8,', ',4,8,')}\n`)).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:3:1: error contradiction sets is 4, and 3 in line 2, with the same edit; must be the same in both, or a higher edit in the one that holds.
          2026-03-02,1,session,hip-hinge,right,0,yes,4,8,,12.5,2,,,,
          ^
      Fix: ask what is right, and write it with a higher edit."
    `);
  });
});

describe('a cell of the log', () => {
  it('is told with its column, and what was probably meant', () => {
    const slips = [
      ['2026-03-02', '02.03.2026'],
      ['session', 'sesion'],
      ['12.5', '=10+2'],
      ['12.5', '1250'],
      ['hip-hinge', 'hip-hing'],
      ['yes,3', 'no,3'],
      ['session,hip-hinge', 'morning,'],
      ['session,hip-hinge', 'alarm,fevr'],
    ] as const;
    expect(slips.map(([passage, by]) => spoilt(passage, by)).join('\n\n')).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:2:1: error not-a-date date is 02.03.2026; must be a date that exists, YYYY-MM-DD.
          02.03.2026,1,session,hip-hinge,right,0,yes,3,8,,12.5,2,,,,
          ^
      Fix: write the year first, for example 2026-03-02: nobody can tell whether day or month comes first here.

      consults/otter-r1.log.csv:2:14: error wrong-word kind is sesion; must be session, between, run, sitting, morning, other or alarm.
          2026-03-02,1,sesion,hip-hinge,right,0,yes,3,8,,12.5,2,,,,
                       ^
      Fix: write session.

      consults/otter-r1.log.csv:2:49: error wrong-type loadKg is =10+2; must be a number from 0 to 400 kg.
          2026-03-02,1,session,hip-hinge,right,0,yes,3,8,,=10+2,2,,,,
                                                          ^
      Fix: write the number itself, no sign and no formula.

      consults/otter-r1.log.csv:2:49: error out-of-range loadKg is 1250; must be a number from 0 to 400 kg.
          2026-03-02,1,session,hip-hinge,right,0,yes,3,8,,1250,2,,,,
                                                          ^
      Fix: write what was meant, or leave the cell empty.

      consults/otter-r1.log.csv:2:22: error no-such-card card is hip-hing; must be the id of an exercise of the library.
          2026-03-02,1,session,hip-hing,right,0,yes,3,8,,12.5,2,,,,
                               ^
      Fix: write hip-hinge.

      consults/otter-r1.log.csv:2:40: error does-not-fit done is no beside 3 sets; must be a word that fits the sets.
          2026-03-02,1,session,hip-hinge,right,0,no,3,8,,12.5,2,,,,
                                                 ^
      Fix: mend the word or the sets.

      consults/otter-r1.log.csv:2:47: error missing-key morning is empty; must be the score of the morning, 0 to 10.
          2026-03-02,1,morning,,right,0,yes,3,8,,12.5,2,,,,
                                                        ^
      Fix: write the score, or take the line out.

      consults/otter-r1.log.csv:2:20: error wrong-word card is fevr; must be an item of the screen: saddleNumbness, bladderBowel, bothLegWeakness, worseningWeakness, footDrop, fever, weightLoss, cancerNightPain, clotSigns, popBruise, suspectedFracture, hopPain, focalBonePain, nightBonePain, missedPeriods, lowEnergy, fluoroquinolone, oralSteroid, recentInjection, uncontrolledBloodPressure, hernia or suddenOnsetUnder18.
          2026-03-02,1,alarm,fevr,right,0,yes,3,8,,12.5,2,,,,
                             ^
      Fix: write fever."
    `);
  });
});

describe('the file of a log', () => {
  const more: SourceFile = {
    file: 'consults/more/otter-r1.log.csv',
    bytes: new TextEncoder().encode(`${HEADER}\n`),
    link: 'no',
  };

  it('with a misspelt column, of somebody else, of nobody, and there twice', () => {
    const files = [
      printed(`${HEADER.replace('loadKg', 'loadkgs')}\n${LINE}\n`),
      printed(`loadleaf-log 1 heron r1\n${HEADER}\n${LINE}\n`),
      printed(`${HEADER}\n`, 'consults/heron-r1.log.csv'),
      printed(`${HEADER}\n`, FILE, [more]),
    ];
    expect(files.join('\n\n')).toMatchInlineSnapshot(`
      "consults/otter-r1.log.csv:1:65: error unknown-key loadkgs is an unknown column; must be loadKg.
          …dit,done,sets,repetitions,seconds,loadkgs,painDuring,morning,minutes,km,note
                                             ^
      Fix: write loadKg.

      consults/otter-r1.log.csv:1:1: error does-not-fit found loadleaf-log 1 heron r1; must be loadleaf-log 1 otter r1, as the file is called.
          loadleaf-log 1 heron r1
          ^
      Fix: give the log to the person and revision it is of; the name of the file must say the same.

      consults/heron-r1.log.csv:1:1: error wrong-file-name found a log of heron, of whom there is no consult; must be called as the consult beside it, <alias>-r<revision>.log.csv.
          date,occasion,kind,card,side,edit,done,sets,repetitions,seconds,loadKg,painDuring,morning,minutes,km…
          ^
      Fix: mend the name, or put it beside its consult.

      consults/more/otter-r1.log.csv:1:1: error duplicate-id found a second log of revision 1 of otter, after consults/otter-r1.log.csv; must be the only one.
          date,occasion,kind,card,side,edit,done,sets,repetitions,seconds,loadKg,painDuring,morning,minutes,km…
          ^
      Fix: put the lines of both into one file; the same line twice changes nothing."
    `);
  });
});
