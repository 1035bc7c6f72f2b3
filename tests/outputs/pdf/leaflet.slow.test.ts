/** The leaflet as a document: what stands on page one, on every page, in its bookmarks; and that it is always the same. */
import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openFonts } from '../../../src/outputs/pdf/fonts.ts';
import { leafletPdf } from '../../../src/outputs/pdf/leaflet.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';
import { brokenRules } from './check.ts';
import { assets, leafletOf } from './make.ts';
import { operatorsOf, pagesOf } from './content.ts';
import { dictOf, isStream, readObjects, resolved, textOf } from './objects.ts';
import { structureOf, textIn, textsByMark, walk } from './structure.ts';
import { openPdf, viewed, viewedTree } from './viewer.ts';
import { readXmp } from './xmp.ts';

const letter: Programme = { ...otter, paper: 'Letter' };
const five: Programme = { ...otter, exercises: [...otter.exercises, ...otter.exercises.slice(3)] };

async function textsOf(programme: Programme): Promise<readonly string[]> {
  const pdf = await openPdf(await leafletOf(programme));
  const texts: string[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const content = await (await pdf.getPage(at)).getTextContent({ disableNormalization: true });
    const joined = content.items
      .map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : ''))
      .join('');
    texts.push(joined.replace(/\s+/g, ' '));
  }
  await pdf.destroy();
  return texts;
}

describe.each([
  ['A4', otter],
  ['Letter', letter],
  ['five exercises', five],
  ['five exercises on Letter', { ...five, paper: 'Letter' as const }],
])('%s', (_, programme) => {
  it('has on page one all one needs to start', async () => {
    const [first = ''] = await textsOf(programme);
    const needed = [
      programme.title,
      ...programme.clinic.contact,
      programme.nextSession.heading,
      programme.nextSession.when,
      ...programme.exercises.flatMap(({ title, dose, side, howFar, facts }) => [
        title,
        dose,
        side,
        howFar[0]!,
        ...facts.filter(({ cell }) => ['loadKg', 'tempo', 'reserve'].includes(cell)).map(({ text }) => text),
      ]),
      programme.emergency.heading,
      programme.emergency.call,
      ...programme.emergency.lines,
      ...programme.emergency.then,
    ];
    expect(needed.filter((text) => !first.includes(text))).toEqual([]);
  });

  it('has on the back of page one, at the latest, for whom and why, and all that keeps one safe', async () => {
    const sheet = (await textsOf(programme)).slice(0, 2).join(' ');
    const { painRule, morningCheck, flare, missedDays, getHelp } = programme;
    const needed = [
      ...[painRule, morningCheck, flare, missedDays, getHelp].map(({ heading }) => heading),
      ...programme.opening,
    ];
    expect(needed.filter((text) => !sheet.includes(text))).toEqual([]);
  });

  it('pictures every exercise on page one, with its text alternative', async () => {
    const pdf = await openPdf(await leafletOf(programme));
    const figures = viewed(await viewedTree(await pdf.getPage(1)), 'Figure');
    await pdf.destroy();
    expect(figures).toHaveLength(programme.exercises.length);
  });

  it('says on every page whose it is, which dates and revision, which page of how many, and whom to call', async () => {
    const texts = await textsOf(programme);
    texts.forEach((text, at) => {
      expect(text).toContain(programme.runningLine);
      expect(text).toContain(`${programme.pageWord} ${at + 1} of ${texts.length}`);
      expect(text).toContain(programme.emergency.heading);
      for (const line of programme.emergency.lines) expect(text).toContain(line);
    });
  });
});

describe('a usual programme', () => {
  it.each([
    ['A4', otter, [595.28, 841.89]],
    ['Letter', letter, [612, 792]],
  ])('has two to six pages of %s', async (_, programme, size) => {
    const pdf = await openPdf(await leafletOf(programme));
    const { width, height } = (await pdf.getPage(1)).getViewport({ scale: 1 });
    expect([Number(width.toFixed(2)), Number(height.toFixed(2))]).toEqual(size);
    expect(pdf.numPages).toBeGreaterThanOrEqual(2);
    expect(pdf.numPages).toBeLessThanOrEqual(6);
    await pdf.destroy();
  });

  it('has bookmarks in the order of its headings', async () => {
    const pdf = await openPdf(await leafletOf(otter));
    const outline = await pdf.getOutline();
    await pdf.destroy();
    expect(
      outline.map(({ title, items }) => [title, items.map((item: { title: string }) => item.title)]),
    ).toEqual([
      ['Home exercises for otter', []],
      ['Your next session', otter.exercises.map(({ title }) => title)],
      ['Call 112 or 999 now', []],
      ['How much pain is fine', []],
      ['Morning check', []],
      ['When it flares up', []],
      ['Missed days', []],
      ['When to get help', []],
      ['The exercises', otter.exercises.map(({ title }) => title)],
      ['Your week', []],
      ['Running', []],
      ['Sitting', []],
      ['Stretching', []],
      ['What else you do', []],
      ['Your steps', ['Step 2', 'Step 3']],
      ['What comes next', []],
      ['Why it hurts to sit and bend', []],
      ['Sleep and strain', []],
      ['Your numbers', []],
      ['The easier numbers', []],
      ['Your log', []],
    ]);
  });

  it('has one row a day to fill in, a box for each question', async () => {
    const pdf = await openPdf(await leafletOf(otter));
    const rows: string[][] = [];
    for (let at = 1; at <= pdf.numPages; at++)
      for (const row of viewed(await viewedTree(await pdf.getPage(at)), 'TR'))
        rows.push(row.kids.map(({ text }) => text.trim()));
    await pdf.destroy();
    const days = rows.filter(
      (row) => row.length === otter.log.columns.length && row.slice(2).every((cell) => cell === ''),
    );
    expect(days.map((row) => row.slice(0, 2))).toEqual(
      otter.log.days.map(({ label, planned }) => [label, planned]),
    );
  });
});

describe('the title in the metadata', () => {
  it.each(['A & B <x>', '</rdf:li> "quoted" \'too\'', 'Übung für Zoë – 3 × 8'])('%s', async (title) => {
    const file = readObjects(await leafletOf({ ...otter, title }));
    const metadata = resolved(file, dictOf(file, file.trailer.get('Root')).get('Metadata'));
    const xmp = readXmp(isStream(metadata) ? metadata.data : '');
    expect(xmp.faults).toEqual([]);
    expect(xmp.text('dc:title')).toBe(title);
    const pdf = await openPdf(await leafletOf({ ...otter, title }));
    const { info } = await pdf.getMetadata();
    await pdf.destroy();
    expect((info as { Title: string }).Title).toBe(title);
  });
});

describe('a foreign word', () => {
  it('is an element of its own with its language', async () => {
    const foreign = [{ word: 'Notaufnahme', language: 'de' }];
    const emergency = { ...otter.emergency, call: 'Go to the Notaufnahme at once for:', foreign };
    const structure = structureOf(readObjects(await leafletOf({ ...otter, emergency })));
    const texts = textsByMark(structure);
    const spans = [...walk(structure.top)]
      .filter(({ dict }) => dict.has('Lang'))
      .map((element) => [element.role, textOf(element.dict.get('Lang')), textIn(element, texts).trim()]);
    expect(spans).toEqual([['Span', 'de', 'Notaufnahme']]);
    const read = structure.top.map((element) => textIn(element, texts)).join('');
    expect(read.replace(/\s+/g, ' ')).toContain('Go to the Notaufnahme at once for:');
  });
});

describe('type on paper', () => {
  it.each([11, 12])('is no smaller than %d points in running text', async (bodyTypePt) => {
    const pdf = await openPdf(await leafletOf({ ...otter, bodyTypePt }));
    const said = new Map<string, number>();
    // The front and the back of the first sheet; the tables of numbers come later, and are smaller.
    for (const at of [1, 2])
      for (const item of (await (await pdf.getPage(at)).getTextContent()).items)
        if ('str' in item && !said.has(item.str.trim()))
          said.set(item.str.trim(), (item.transform as number[])[3] ?? 0);
    await pdf.destroy();
    const sizesOf = (words: readonly string[]) =>
      [...said].filter(([text]) => text.length > 12 && words.some((one) => one.includes(text)));
    const body = sizesOf([
      ...otter.opening,
      ...otter.exercises.flatMap(({ facts }) => facts.map(({ text }) => text)),
    ]);
    expect(body.length).toBeGreaterThan(4);
    expect(body.filter(([, sizePt]) => sizePt < bodyTypePt - 0.01)).toEqual([]);
  });
});

describe('bodies on paper', () => {
  it('are of one size on page one, standing or lying', async () => {
    const file = readObjects(await leafletOf(otter));
    const page = pagesOf(file)[0];
    const content = resolved(file, page?.page.get('Contents'));
    const scales = [...operatorsOf(isStream(content) ? content.data : '')]
      .filter(({ operator, operands }) => operator === 'cm' && Number(operands[0]) < 0.9)
      .map(({ operands }) => Number(operands[0]));
    expect(scales).toHaveLength(otter.exercises.length);
    expect(Math.max(...scales) / Math.min(...scales)).toBeLessThan(1.5);
  });
});

describe('a logo', () => {
  it('stands in the masthead as a figure named after the clinic', async () => {
    const picture = sharp({ create: { width: 240, height: 80, channels: 3, background: '#084658' } });
    const logo = new Uint8Array(await picture.png().toBuffer());
    const bytes = await leafletPdf(otter, { ...assets, logo });
    expect(brokenRules(readObjects(bytes))).toEqual([]);
    const pdf = await openPdf(bytes);
    expect(viewed(await viewedTree(await pdf.getPage(1)), 'Figure')).toHaveLength(otter.exercises.length + 1);
    await pdf.destroy();
  });
});

describe('the same programme gives the same bytes', () => {
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllEnvs();
  });

  it('on any day, in any zone and language, with fresh fonts or used ones', async () => {
    const first = await leafletPdf(otter, assets);
    vi.stubEnv('TZ', 'Pacific/Kiritimati');
    vi.stubEnv('LC_ALL', 'tr_TR.UTF-8');
    vi.useFakeTimers({ now: new Date('2031-12-31T23:59:59Z'), toFake: ['Date'] });
    await leafletPdf(letter, assets);
    const fresh = openFonts(
      readFileSync('shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf'),
      readFileSync('shared/fonts/AtkinsonHyperlegibleNext_700Bold.ttf'),
    );
    const again = await leafletPdf(otter, { ...assets, fonts: fresh });
    expect(Buffer.from(again).equals(Buffer.from(first))).toBe(true);
  });

  it('as plain bytes that share no memory with anything', async () => {
    const bytes = await leafletPdf(otter, assets);
    expect(Object.getPrototypeOf(bytes)).toBe(Uint8Array.prototype);
    expect(bytes.buffer.byteLength).toBe(bytes.length);
  });

  it('and another programme other bytes', async () => {
    const later = await leafletPdf({ ...otter, revision: 3, runningLine: 'otter, revision 3' }, assets);
    expect(Buffer.from(later).equals(Buffer.from(await leafletOf(otter)))).toBe(false);
  });

  it('with the mark of its make on every page and in the file, and without one with none', async () => {
    const texts = await textsOf({ ...otter, mark: '0a1b2c3d' });
    texts.forEach((text, at) => {
      expect(text).toContain(`Mark 0a1b2c3d · ${otter.pageWord} ${at + 1} of ${texts.length}`);
      expect(text).toContain(otter.runningLine);
    });
    const pdf = await openPdf(await leafletPdf({ ...otter, mark: '0a1b2c3d' }, assets));
    const { info } = await pdf.getMetadata();
    await pdf.destroy();
    expect((info as { Keywords: string }).Keywords).toBe('mark 0a1b2c3d');
    expect((await textsOf(otter)).join('')).not.toMatch(/Mark [0-9a-f]{8}/);
  });

  it('dates the file by the programme, not by the clock', async () => {
    const pdf = await openPdf(await leafletOf(otter));
    const { info } = await pdf.getMetadata();
    await pdf.destroy();
    expect((info as { CreationDate: string }).CreationDate).toBe('D:20260303000000Z');
  });
});
