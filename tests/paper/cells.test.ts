/** Every dosage cell of every step, read back through pdf.js from the tagged tables, one by one. */
import { describe, expect, it } from 'vitest';
import { CELLS, type Programme, type StepTable } from '../../src/programme/programme.ts';
import { otter } from '../fixtures/programme.ts';
import { leafletOf } from './make.ts';
import { twelve } from './strain.ts';
import { openPdf, viewed, viewedTree, type ViewedElement } from './viewer.ts';

/** What a table says of one exercise in one step, by the label of the number. */
interface Said {
  readonly step: string;
  readonly title: string;
  readonly byLabel: ReadonlyMap<string, string>;
}

describe('the cells of the tagged tables are the programme’s', () => {
  it.each([
    ['A4', otter],
    ['Letter', { ...otter, paper: 'Letter' as const }],
    ['twelve exercises', twelve],
  ])('%s', async (_, programme) => {
    const said = await saidBy(programme);
    const expected = programme.steps.flatMap((step) =>
      step.prescriptions.map((prescription) => ({ step, prescription })),
    );
    expect(said).toHaveLength(expected.length);
    expected.forEach(({ step, prescription }, at) => {
      const found = said[at]!;
      expect([found.step, found.title]).toEqual([step.heading, prescription.title]);
      for (const name of CELLS) {
        const cell = prescription.cells.find((one) => one.cell === name)!;
        expect([step.step, cell.card, name, found.byLabel.get(step.columns[name]) ?? '']).toEqual([
          step.step,
          cell.card,
          name,
          cell.text,
        ]);
      }
    });
  });
});

async function saidBy(programme: Programme): Promise<readonly Said[]> {
  const pdf = await openPdf(await leafletOf(programme));
  const trees = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, at) => viewedTree(await pdf.getPage(at + 1))),
  );
  await pdf.destroy();
  const present = programme.steps.filter((step) => step.present);
  const coming = programme.steps.filter((step) => !step.present);
  return [
    ...present.flatMap((step) =>
      trees.flatMap((tree) => viewed(tree, 'Table').flatMap((table) => gridSays(table, step))),
    ),
    ...comingSays(trees, coming),
  ];
}

/** A table with the step in its corner: one exercise a column. */
function gridSays(table: ViewedElement, step: StepTable): readonly Said[] {
  const [head, ...rows] = viewed(table, 'TR').map((row) => row.kids.map((cell) => cell.text.trim()));
  const [corner, ...titles] = head ?? [];
  if (corner !== step.heading || rows.length !== CELLS.length) return [];
  return titles.map((title, at) => ({
    step: step.heading,
    title,
    byLabel: new Map(rows.map((row) => [row[0]!, row[at + 1]!])),
  }));
}

/** Tables under the heading of a step: one exercise each, named in the caption, one number a row. */
function comingSays(trees: readonly ViewedElement[], coming: readonly StepTable[]): readonly Said[] {
  const headings = new Set(coming.map(({ heading }) => heading));
  let step = '';
  const said: Said[] = [];
  const read = (element: ViewedElement): void => {
    if (element.role === 'H3' && headings.has(element.text.trim())) step = element.text.trim();
    const [caption] = element.kids;
    if (
      element.role === 'Table' &&
      step !== '' &&
      caption?.role === 'Caption' &&
      viewed(element, 'THead').length === 0
    ) {
      const rows = viewed(element, 'TR').map((row) => row.kids.map((cell) => cell.text.trim()));
      said.push({
        step,
        title: caption.text.trim(),
        byLabel: new Map(rows.map(([label, text]) => [label!, text!])),
      });
    } else element.kids.forEach(read);
  };
  trees.forEach(read);
  return said;
}
