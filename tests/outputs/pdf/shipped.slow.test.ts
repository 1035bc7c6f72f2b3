/** The leaflets of the consults that are shipped: real lengths, five and six exercises, all words of the library. */
import { describe, expect, it } from 'vitest';
import { orderOf } from '../../../src/shell/building/oneSet.ts';
import { readWorkspace } from '../../../src/shell/io/workspace.ts';
import { assembleProgramme } from '../../../src/programme/assemble.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { brokenRules } from './check.ts';
import { collisions, unsaid } from './judge.ts';
import { leafletOf } from './make.ts';
import { readObjects } from './objects.ts';
import { cellFaults } from './said.ts';
import { openPdf, viewed, viewedTree } from './viewer.ts';

const workspace = readWorkspace({ content: 'content', consults: 'content/consults' });
if (workspace.library === null) throw new Error('the shipped library cannot be read');
const workshop = { library: workspace.library, models: new Map(), loadleaf: '0' };
const assembled = workspace.current.map((inUse) =>
  assembleProgramme(orderOf(inUse, workspace).consult, null, workshop),
);
const programmes = assembled.flatMap((one) => ('programme' in one ? [one.programme] : []));

/** Four sheets printed on both sides at most, in type of 11 points. */
const PAGES_MOST = 8;

/** Bytes of the fullest leaflet [choice]: what goes through any mailbox without a thought. */
const BYTES_MOST = 85_000;

it('every shipped consult has a programme to print', () => {
  expect(assembled.filter((one) => 'refusals' in one)).toEqual([]);
  expect(programmes.length).toBeGreaterThan(2);
});

describe.each(programmes.map((programme): [string, Programme] => [programme.alias, programme]))(
  '%s',
  (_, programme) => {
    it('keeps the rules of PDF/UA-1', async () => {
      expect(brokenRules(readObjects(await leafletOf(programme)))).toEqual([]);
    });

    it('says every dosage cell as the programme does', async () => {
      expect(await cellFaults(programme, await leafletOf(programme))).toEqual([]);
    });

    it('says everything, and nothing over anything', async () => {
      const bytes = await leafletOf(programme);
      expect(unsaid(programme, bytes)).toEqual([]);
      expect(await collisions(bytes)).toEqual([]);
    });

    it('has every exercise and the emergency box on page one, the safety texts on its back, few pages and bytes', async () => {
      const bytes = await leafletOf(programme);
      expect(bytes.length).toBeLessThan(BYTES_MOST);
      const pdf = await openPdf(bytes);
      const [tree, back] = [await viewedTree(await pdf.getPage(1)), await viewedTree(await pdf.getPage(2))];
      expect(pdf.numPages).toBeLessThanOrEqual(PAGES_MOST);
      await pdf.destroy();
      const said = viewed(tree, 'Document')[0]?.text ?? '';
      const needed = [
        ...programme.exercises.flatMap(({ title, dose, side, howFar }) => [
          title,
          dose,
          side,
          ...howFar.slice(0, 1),
        ]),
        programme.emergency.call,
        ...programme.emergency.lines,
        ...programme.emergency.then,
      ];
      const bare = (text: string) => text.replace(/\s+/g, '');
      expect(needed.filter((text) => !bare(said).includes(bare(text)))).toEqual([]);
      const { painRule, morningCheck, flare, missedDays, getHelp } = programme;
      const sheet = bare(said + (viewed(back, 'Document')[0]?.text ?? ''));
      const safe = [painRule, morningCheck, flare, missedDays, getHelp].map(({ heading }) => heading);
      expect([...safe, ...programme.opening].filter((text) => !sheet.includes(bare(text)))).toEqual([]);
      const pictured = programme.exercises.filter(({ figures }) => figures !== null);
      expect(viewed(tree, 'Figure')).toHaveLength(pictured.length);
    });
  },
);
