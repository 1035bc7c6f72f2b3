/** The leaflets of the consults that are shipped: real lengths, five and six exercises, all words of the library. */
import { describe, expect, it } from 'vitest';
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
const assembled = workspace.current.map((consult) => assembleProgramme(consult, null, workshop));
const programmes = assembled.flatMap((one) => ('programme' in one ? [one.programme] : []));

/** Two sheets printed on both sides, and a page for what else is named; a page more from five exercises on. */
const pagesMost = ({ exercises }: Programme) => (exercises.length > 4 ? 6 : 5);

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

    it('has every exercise, the safety texts and the emergency box on page one, and few pages', async () => {
      const pdf = await openPdf(await leafletOf(programme));
      const tree = await viewedTree(await pdf.getPage(1));
      expect(pdf.numPages).toBeLessThanOrEqual(pagesMost(programme));
      await pdf.destroy();
      const said = viewed(tree, 'Document')[0]?.text ?? '';
      const needed = [
        ...programme.exercises.flatMap(({ title, dose, side, howFar }) => [
          title,
          dose,
          side,
          ...howFar.slice(0, 1),
        ]),
        ...[
          programme.painRule,
          programme.morningCheck,
          programme.flare,
          programme.missedDays,
          programme.getHelp,
        ].map(({ heading }) => heading),
        ...programme.emergency.lines,
      ];
      const bare = (text: string) => text.replace(/\s+/g, '');
      expect(needed.filter((text) => !bare(said).includes(bare(text)))).toEqual([]);
      const pictured = programme.exercises.filter(({ figures }) => figures !== null);
      expect(viewed(tree, 'Figure')).toHaveLength(pictured.length);
    });
  },
);
