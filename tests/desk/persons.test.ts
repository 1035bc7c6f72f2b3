/** A folder of consults as persons, a line each. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { personFiles } from '../../src/desk/folder/personFiles.ts';
import { personOf } from '../../src/desk/worker/person.ts';
import { personText } from '../../src/messages/en/desk/persons.ts';
import { bench } from './shippedBench.ts';

describe('the files of a folder', () => {
  it('are put together by alias: the newest consult, and what goes with it', () => {
    const names = [
      'otter-r10.md',
      'otter-r2.md',
      'otter-r2.log.csv',
      'heron-r1.md',
      'otter-r11.log.csv',
      'swift-r1.log.csv',
      'notes.md',
      'Otter-r1.md',
      'otter-r0.md',
      '__proto__-r1.md',
    ];
    expect(personFiles(names)).toEqual([
      { alias: 'heron', revision: 1, newest: 'heron-r1.md', others: [] },
      {
        alias: 'otter',
        revision: 10,
        newest: 'otter-r10.md',
        others: ['otter-r2.md', 'otter-r2.log.csv', 'otter-r11.log.csv'],
      },
    ]);
  });
});

const otter = readFileSync('content/consults/otter-r1.md', 'utf8');
const log = readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv', 'utf8');

describe('a person', () => {
  it.each([
    ['on the day of the review', otter, [], '2026-12-15', 'stage 2, step 1, review 2026-12-15, due, no log'],
    [
      'before it, with a log',
      otter,
      [log],
      '2026-12-14',
      'stage 2, step 1, review 2026-12-15, last log 2026-12-14',
    ],
    [
      'of a draft',
      otter.replace('---\n', '---\ndraft: yes\n'),
      [],
      '2026-12-01',
      'a draft, review 2026-12-15, no log',
    ],
    [
      'who fell ill',
      otter.replace('fever: no', 'fever: yes'),
      [log],
      '2026-12-16',
      'no programme from it, review 2026-12-15, due, last log 2026-12-14',
    ],
    ['whose file cannot be read', '---\n[', [], '2026-12-01', 'no programme from it, no log'],
  ])('%s', (_, text, logs, today, line) => {
    const others = logs.map((one) => ({ file: 'consults/otter-r1.log.csv', text: one }));
    const shown = personOf({ name: 'otter-r1.md', text, others }, bench);
    expect(personText('otter', 1, shown, today)).toBe(`otter, revision 1, ${line}`);
  });

  it('is named at once, and the rest when it is worked out', () => {
    expect(personText('otter', 1, null, '2026-12-01')).toBe('otter, revision 1');
  });
});
