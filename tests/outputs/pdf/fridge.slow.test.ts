/** The sheet for the fridge: one page, with all that stands on a fridge, in the order of the tags and in PDF/UA. */
import { describe, expect, it } from 'vitest';
import { fridgePdf } from '../../../src/outputs/pdf/fridge.ts';
import { labelsOf } from '../../../src/messages/en/labels.ts';
import type { Section } from '../../../src/messages/shapes.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { CASES, caseMade } from '../../programme/outcome.ts';
import { programmes } from '../html/programmes.ts';
import { brokenRules } from './check.ts';
import { assets } from './make.ts';
import { listOf, readObjects } from './objects.ts';
import { structureOf, walk } from './structure.ts';
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

const labels = labelsOf('en').leaflet;

/** Lines break where they must. */
const joined = (text: string) => text.replace(/\s+/g, '');

const letter = ([name, programme]: Named): Named => [`${name}, on Letter`, { ...programme, paper: 'Letter' }];

type Named = readonly [name: string, programme: Programme];
const [otter, marten] = [programmes[0]!, programmes[1]!];
const ofCases = CASES.flatMap((name): Named[] => {
  const made = caseMade(name);
  return 'programme' in made ? [[name, made.programme]] : [];
});
const single: Named = ['otter, of one exercise', { ...otter[1], exercises: otter[1].exercises.slice(0, 1) }];
const sheets: readonly Named[] = [otter, letter(otter), single, marten, letter(marten), ...ofCases];

const textsOf = ({ heading, parts }: Section): string[] => [
  heading,
  ...parts.flatMap((part) => {
    if (part.kind === 'paragraph') return [part.text];
    return part.kind === 'list' ? part.entries : [part.table.caption, ...part.table.rows.flat()];
  }),
];

/** What no sheet may be without, whatever goes first. */
function neverLeftOut({ nextSession, exercises, painRule, emergency, week }: Programme): string[] {
  const [firstWeek] = week.parts.filter(({ kind }) => kind === 'table');
  return [
    nextSession.heading,
    nextSession.when,
    ...exercises.flatMap(({ title, doseWords, howFar }) => [...title.split(' '), doseWords, howFar[0] ?? '']),
    ...textsOf({ ...week, parts: firstWeek === undefined ? [] : [firstWeek] }),
    ...textsOf(painRule),
    emergency.heading,
    emergency.call,
    ...emergency.lines,
    ...emergency.then,
  ];
}

describe.each(sheets)('the sheet of %s', (_, programme) => {
  const made = fridgePdf(programme, assets);

  it('is one page: session, week, pain rule, emergency, and whole weeks of the log from the first on', async () => {
    const [text = '', ...more] = await pagesOf((await made)!);
    expect(more).toEqual([]);
    const page = joined(text);
    expect(neverLeftOut(programme).filter((one) => !page.includes(joined(one)))).toEqual([]);
    const { log, plan } = programme;
    const ticked = page.slice(page.indexOf(joined(log.hint)));
    const isThere = log.days.map(({ label }) => ticked.includes(joined(label)));
    const weeks = plan.filter((__, at) => isThere[at]).at(-1)?.week ?? 0;
    expect(isThere).toEqual(plan.map(({ week }) => week <= weeks));
    expect(weeks).toBeGreaterThan(0);
    expect(page.includes(joined(labels.otherDays))).toBe(isThere.includes(false));
  });

  it('keeps the rules of PDF/UA-1, the order of reading among them', async () => {
    expect(brokenRules(readObjects((await made)!))).toEqual([]);
  });
});

it('is the same bytes each time', async () => {
  expect(await fridgePdf(otter[1], assets)).toEqual(await fridgePdf(otter[1], assets));
});

it('holds every day where all of them go on the page', async () => {
  const [text = ''] = await pagesOf((await fridgePdf(otter[1], assets))!);
  expect(text).toContain(otter[1].log.days.at(-1)?.label);
});

it('is none where what must be on it goes on no page', async () => {
  const [, full] = otter;
  const parts = Array.from({ length: 90 }, (_, at) => ({
    kind: 'paragraph' as const,
    text: `Rule ${at}: no more than this.`,
    weight: 'strong' as const,
  }));
  expect(await fridgePdf({ ...full, painRule: { ...full.painRule, parts } }, assets)).toBeNull();
});

it('the order of reading sees days that are read in another order than they stand', async () => {
  const file = readObjects((await fridgePdf(otter[1], assets))!);
  const log = structureOf(file)
    .top.flatMap((one) => [...walk([one])])
    .findLast(({ role }) => role === 'TBody')!;
  log.dict.set('K', [...listOf(file, log.dict.get('K'))].reverse());
  expect(brokenRules(file)).toContainEqual(expect.stringMatching(/^order on the page: TH /));
});
