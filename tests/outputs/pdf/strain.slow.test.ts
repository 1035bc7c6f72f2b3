/** Long titles, long words, many exercises, odd letters: nothing cut, nothing over anything, no element more or less. */
import { describe, expect, it } from 'vitest';
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';
import { brokenRules } from './check.ts';
import { collisions, unsaid } from './judge.ts';
import { leafletOf } from './make.ts';
import { readObjects } from './objects.ts';
import { reworded, twelve } from './strain.ts';
import { shapeOf, structureOf } from './structure.ts';

const words = (count: number) =>
  Array.from({ length: count }, (_, at) => ['tendon', 'slow', 'heavy', 'easy'][at % 4]).join(' ');
const title200 = words(40).slice(0, 200);
const word200 = 'proximal'.repeat(25);

function titled(title: string): Programme {
  return {
    ...otter,
    title,
    clinic: { ...otter.clinic, name: title },
    exercises: otter.exercises.map((one) => ({ ...one, title })),
    steps: otter.steps.map((step) => ({
      ...step,
      prescriptions: step.prescriptions.map((one) => ({ ...one, title })),
    })),
    advice: otter.advice.map((one) => ({ ...one, heading: title })),
  };
}

const STRAINS: readonly (readonly [string, Programme])[] = [
  ['as it is', otter],
  ['on Letter', { ...otter, paper: 'Letter' }],
  ['titles of 200 characters', titled(title200)],
  ['titles of one word of 200 letters', titled(word200)],
  ['twelve exercises', twelve],
  ['twelve exercises on Letter', { ...twelve, paper: 'Letter' }],
  ['one exercise', { ...otter, exercises: otter.exercises.slice(0, 1) }],
  ['no exercise', { ...otter, exercises: [], steps: [] }],
  ['every text three times as long', reworded(otter, (text) => `${text} ${text} ${text}`)],
  [
    'a log of 60 days',
    {
      ...otter,
      log: { ...otter.log, days: Array.from({ length: 60 }, (_, at) => otter.log.days[at % 21]!) },
    },
  ],
  [
    'a paragraph longer than a page',
    reworded(otter, (text) => (text.startsWith('A tendon stands') ? words(2500) : text)),
  ],
  [
    'a table cell longer than a page',
    reworded(otter, (text) => (text.startsWith('Until step 6') ? words(900) : text)),
  ],
];

describe.each(STRAINS)('%s', (_, programme) => {
  it('keeps the rules of PDF/UA-1', async () => {
    expect(brokenRules(readObjects(await leafletOf(programme)))).toEqual([]);
  });

  it('says everything the programme says', async () => {
    expect(unsaid(programme, await leafletOf(programme))).toEqual([]);
  });

  it('sets no text over the edge of the sheet or over another', async () => {
    expect(await collisions(await leafletOf(programme))).toEqual([]);
  });
});

/** Texts as hostile as a content file lets through, all of letters the typeface has. Own list, after the kinds in minimaxir/big-list-of-naughty-strings. */
const NAUGHTY = [
  '</P><H1>&lt;script&gt;alert("x")</script>',
  ') Tj ET EMC /P <</MCID 0>> BDC (',
  '%PDF-1.7 endobj 1 0 obj << /Type /Catalog >>',
  "'; DROP TABLE doses;-- \\ \\\\ \\n \\( \\)",
  '{{programme.title}} ${alias} %s %n $(reboot)',
  '  spaces   and\ttabs\nand lines  ',
  'NULL undefined NaN Infinity 1e309 -0 0x10',
  'ÅngströmÆsopŒuvreŁódźŞahinẞ–—…‰€',
  'e\u0301 a\u0308 n\u0303 o\u0302',
  '→ ← ↑ ↓ ☐ ☑ ✓ ✔',
];

describe('odd texts change no element', () => {
  it.each(NAUGHTY)('%j', async (naughty) => {
    const odd = await shapeWith(naughty);
    const even = await shapeWith(naughty.normalize('NFC').trim().replace(/\S/gu, 'e'));
    expect(odd).toBe(even);
  });

  async function shapeWith(text: string): Promise<string> {
    const programme: Programme = {
      ...otter,
      // Short where its width could choose another layout of page one.
      title: text.trim().slice(0, 20),
      notice: [text],
      exercises: otter.exercises.map((one, at) =>
        at === 1 ? { ...one, title: text.slice(0, 24), cautions: [text] } : one,
      ),
      steps: otter.steps.map((step) => ({
        ...step,
        prescriptions: step.prescriptions.map((one) => ({
          ...one,
          title: text,
          cells: one.cells.map((cell) => (cell.text === '' ? cell : { ...cell, text })),
        })),
      })),
      advice: otter.advice.map((one) => ({ ...one, heading: text })),
      log: { ...otter.log, days: otter.log.days.map((day) => ({ ...day, planned: text })) },
    };
    const file = readObjects(await leafletOf(programme));
    expect(brokenRules(file)).toEqual([]);
    return shapeOf(structureOf(file).top);
  }
});
