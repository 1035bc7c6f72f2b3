/** Long titles, long words, many exercises, odd letters: nothing cut, nothing over anything, no element more or less. */
import { describe, expect, it } from 'vitest';
import type { Programme } from '../../src/programme/programme.ts';
import { otter } from '../fixtures/programme.ts';
import { brokenRules } from './check.ts';
import { leafletOf } from './make.ts';
import { readObjects } from './objects.ts';
import { reworded, twelve } from './strain.ts';
import { shapeOf, structureOf, textIn, textsByMark } from './structure.ts';
import { openPdf, textBoxes, type TextBox } from './viewer.ts';

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
    const structure = structureOf(readObjects(await leafletOf(programme)));
    const said = normal(structure.top.map((element) => textIn(element, textsByMark(structure))).join(' '));
    expect(printed(programme).filter((text) => !said.includes(normal(text)))).toEqual([]);
  });

  it('sets no text over the edge of the sheet or over another', async () => {
    const pdf = await openPdf(await leafletOf(programme));
    const faults: string[] = [];
    for (let at = 1; at <= pdf.numPages; at++) {
      const page = await pdf.getPage(at);
      const { width, height } = page.getViewport({ scale: 1 });
      const boxes = await textBoxes(page);
      faults.push(
        ...boxes.filter((box) => isOver(box, width, height)).map((box) => `page ${at}, edge: ${box.text}`),
      );
      faults.push(...overlaps(boxes).map((pair) => `page ${at}: ${pair}`));
    }
    await pdf.destroy();
    expect(faults).toEqual([]);
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

/** What must stand in the leaflet word for word. */
function printed(programme: Programme): readonly string[] {
  const { exercises, steps, advice, log, clinic, emergency, nextSession, opening, notice } = programme;
  const sections = [
    programme.painRule,
    programme.morningCheck,
    programme.flare,
    programme.missedDays,
    programme.getHelp,
    programme.week,
    programme.running,
    programme.sitting,
    programme.stretching,
    programme.activities,
    programme.whatComesNext,
  ];
  return [
    programme.title,
    programme.dates,
    programme.clinician,
    clinic.name,
    ...clinic.contact,
    ...opening,
    ...notice,
    emergency.heading,
    ...emergency.lines,
    nextSession.heading,
    nextSession.when,
    nextSession.minutes,
    ...exercises.flatMap((one) => [
      one.title,
      one.side,
      one.dose,
      one.doseWords,
      ...one.howFar,
      ...one.cautions,
      ...(one.figures?.captions ?? []),
      ...one.facts.map(({ text }) => text),
      ...stringsIn(one.body, ['heading', 'text']),
    ]),
    ...steps.flatMap((step) => [
      step.heading,
      step.change,
      ...step.goOnWhen,
      ...(step.present ? [step.caption] : []),
      ...step.prescriptions.flatMap(({ title, cells }) => [title, ...cells.map(({ text }) => text)]),
    ]),
    ...sections.flatMap((section) =>
      stringsIn(section, ['heading', 'text', 'entries', 'caption', 'columns', 'rows']),
    ),
    ...advice.flatMap((card) => stringsIn(card, ['heading', 'text'])),
    log.heading,
    log.hint,
    ...log.columns,
    ...log.days.flatMap(({ label, planned }) => [label, planned]),
  ].filter((text) => normal(text) !== '');
}

function stringsIn(node: unknown, keys: readonly string[], key = ''): readonly string[] {
  if (typeof node === 'string') return keys.includes(key) ? [node] : [];
  if (Array.isArray(node)) return node.flatMap((one) => stringsIn(one, keys, key));
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([name, value]) => stringsIn(value, keys, name));
}

/** White space plays no part: a long word is broken without one, a paragraph ends without one. */
function normal(text: string): string {
  return text.normalize('NFC').replace(/\s+/g, '');
}

function isOver({ left, top, right, bottom }: TextBox, width: number, height: number): boolean {
  return left < 20 || top < 20 || right > width - 20 || bottom > height - 20;
}

/** Pairs of boxes that share more than a hair of paper. */
function overlaps(boxes: readonly TextBox[]): readonly string[] {
  const sorted = [...boxes].sort((a, b) => a.top - b.top);
  return sorted.flatMap((one, at) => {
    const found: string[] = [];
    for (const other of sorted.slice(at + 1)) {
      if (other.top > one.bottom) break;
      const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const down = Math.min(one.bottom, other.bottom) - other.top;
      if (across > 1 && down > 1) found.push(`${one.text} | ${other.text}`);
    }
    return found;
  });
}
