/** The sheet for the fridge: one page, with all that stands on a fridge, in the order of the tags and in PDF/UA. */
import { describe, expect, it } from 'vitest';
import { fridgePdf } from '../../../src/outputs/pdf/fridge.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { programmes } from '../html/programmes.ts';
import { brokenRules } from './check.ts';
import { assets } from './make.ts';
import { readObjects } from './objects.ts';
import { openPdf } from './viewer.ts';

async function pagesOf(bytes: Uint8Array): Promise<string[]> {
  const pdf = await openPdf(bytes);
  const texts: string[] = [];
  for (let at = 1; at <= pdf.numPages; at += 1) {
    const { items } = await (await pdf.getPage(at)).getTextContent({ disableNormalization: true });
    texts.push(
      items
        .map((item) => ('str' in item ? `${item.str} ` : ''))
        .join('')
        .replace(/\s+/g, ' '),
    );
  }
  await pdf.destroy();
  return texts;
}

const plainly = (text: string) => text.replace(/\s+/g, ' ').trim();

const letter = ([name, programme]: readonly [string, Programme]) =>
  [`${name}, on Letter`, { ...programme, paper: 'Letter' as const }] as const;

// Marten's three weeks of two runs a day and six exercises go on no page in type that can be read.
const [otter, marten] = [programmes[0]!, programmes[1]!];
const sheets: readonly (readonly [string, Programme])[] = [otter, letter(otter)];

describe.each(sheets)('the sheet of %s', (_, programme) => {
  const made = fridgePdf(programme, assets);

  it('is one page and holds session, week, pain rule, emergency and every day', async () => {
    const bytes = await made;
    expect(bytes).not.toBeNull();
    const [text = '', ...more] = await pagesOf(bytes!);
    expect(more).toEqual([]);
    const needed = [
      programme.nextSession.heading,
      programme.week.heading,
      programme.painRule.heading,
      programme.emergency.heading,
      ...programme.exercises.flatMap(({ title }) => title.split(' ')),
      ...programme.log.days.map(({ label }) => label),
    ];
    expect(needed.filter((one) => !text.includes(plainly(one)))).toEqual([]);
  });

  it('keeps the rules of PDF/UA-1, and is the same bytes each time', async () => {
    // The days go on from column to column side by side, which the order of one flow does not know.
    const broken = brokenRules(readObjects((await made)!));
    expect(broken.filter((one) => !one.startsWith('order on the page: TH '))).toEqual([]);
    expect(await fridgePdf(programme, assets)).toEqual(await made);
  });
});

describe('is none where a day would have to be left out', () => {
  const [, full] = marten;
  const days = Array.from({ length: 400 }, (_, at) => ({ ...full.log.days[0]!, label: `Day ${at}` }));

  it.each([
    ['six exercises and three weeks of runs', full],
    ['six exercises and four weeks on the shorter paper', letter(marten)[1]],
    ['a year', { ...full, log: { ...full.log, days } }],
  ])('%s', async (_, programme) => {
    expect(await fridgePdf(programme, assets)).toBeNull();
  });
});
