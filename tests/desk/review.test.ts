/** The review at the desk without its page: what it shows and writes is what the command does. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { logFile } from '../../src/content/log/format.ts';
import { makeSheet } from '../../src/desk/worker/make.ts';
import { reviewSheet } from '../../src/desk/worker/review.ts';
import { viewOf } from '../../src/desk/worker/view.ts';
import type { IsoDate } from '../../src/units/date.ts';
import { bench } from './shippedBench.ts';

const LOG = readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv', 'utf8');
const otter = readFileSync('content/consults/otter-r1.md', 'utf8');
const on = { on: '2026-12-15' as IsoDate, isAsked: true };

const sheet = (log: string, text = otter) => ({
  name: 'otter-r1.md',
  text,
  others: log === '' ? [] : [{ file: 'consults/otter-r1.log.csv', text: log }],
});

describe('a review', () => {
  it.each([
    ['moves-on', 'moveOn'],
    ['eases-back-two-bad-mornings', 'easeBack'],
    ['starts-again-after-sixteen-days', 'startAgain'],
    ['stays-contradiction', 'stay'],
    ['be-seen-rising', 'beSeen'],
  ])('of %s shows the grounds of the whole case', (name, move) => {
    const log = readFileSync(`tests/reviews/${name}/in/otter-r1.log.csv`, 'utf8');
    const shown = reviewSheet(sheet(log), on, bench);
    const whole = readFileSync(`tests/reviews/${name}/out/review.txt`, 'utf8');
    expect(shown?.move).toBe(move);
    expect(whole.startsWith(`${shown?.decision ?? 'nothing'}\n`)).toBe(true);
    for (const row of shown?.table.rows ?? [['nothing']]) expect(whole).toContain(`\n${row.join(' | ')}\n`);
    for (const one of shown?.asks ?? ['nothing']) expect(whole).toContain(`\n${one}\n`);
  });

  it('with an alarm stops the programme, and says to be seen all the same', () => {
    const alarm = `${LOG}2026-12-13,1,alarm,footDrop,,0,yes,,,,,,,,,\r\n`;
    expect(viewOf(makeSheet(sheet(alarm), bench))).toMatchObject({ state: 'refused' });
    expect(reviewSheet(sheet(alarm), on, bench)?.move).toBe('beSeen');
    expect(viewOf(makeSheet(sheet(LOG), bench)).state).toBe('ready');
  });

  it('without lines stays, and there is none while the consult has a Problem', () => {
    expect(reviewSheet(sheet(logFile([])), on, bench)?.move).toBe('stay');
    expect(reviewSheet(sheet(LOG, otter.replace('fever: no', 'fever: maybe')), on, bench)).toBeNull();
  });
});

describe('the next revision', () => {
  const next = () => reviewSheet(sheet(LOG), on, bench)?.next ?? { name: '', text: '' };
  const draft = (text = next().text) => ({
    name: 'otter-r2.md',
    text,
    others: [{ file: 'consults/otter-r1.md', text: otter }, ...sheet(LOG).others],
  });

  it('is a draft that is checked, never made: beside it the revision before is not taken for it', () => {
    const made = makeSheet(draft(), bench);
    expect('problems' in made && made.problems.length).toBeGreaterThan(0);
    expect(viewOf(made).state).not.toBe('ready');
  });

  it('starts from its log once it is asked: what was done is in its record', () => {
    const answered = draft(
      next()
        .text.replace(/^draft: yes$/m, '')
        .replaceAll(': notAsked', ': no')
        .replace(/^irritability:$/m, 'irritability: low')
        .replace(/^response24h:$/m, 'response24h: settled')
        .replace(/^usualMorningPain:$/m, 'usualMorningPain: 1')
        .replace(/ {2}- (#.*\n\s*)?test:\n/, '  - test: single-leg-bridge-raised\n')
        .replace(/^( {4})pain:$/m, '$1pain: 1'),
    );
    const made = makeSheet(answered, bench);
    expect('problems' in made ? made.problems : []).toEqual([]);
    const programme = 'programme' in made ? made.programme : null;
    expect(programme?.review).toMatchObject({ revision: 1, decision: 'moveOn' });
    const blind = makeSheet({ ...answered, others: answered.others.slice(0, 1) }, bench);
    expect('programme' in blind ? blind.programme.review : 'none').toBeNull();
  });
});
