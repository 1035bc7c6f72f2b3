/** The dosage cells as pdf.js reads them from the tagged tables and lists, held against the programme's one by one. */
import { type Programme, type StepTable } from '../../../src/programme/programme.ts';
import { cellsFor } from '../../../src/decisions/session/cells/angleCell.ts';
import { openPdf, viewed, viewedTree, type ViewedElement } from './viewer.ts';

/** What a table says of one exercise in one step, by the label of the number. */
interface Said {
  readonly step: string;
  readonly title: string;
  readonly byLabel: ReadonlyMap<string, string>;
}

/** Every cell the leaflet does not say as the programme does, of coming steps what is new; empty when all agree. */
export async function cellFaults(programme: Programme, bytes: Uint8Array): Promise<readonly string[]> {
  const said = await saidBy(programme, bytes);
  const expected = programme.steps.flatMap((step) =>
    step.prescriptions
      .filter(({ news }) => step.present || news.length > 0)
      .map((prescription) => ({ step, prescription })),
  );
  const faults =
    said.length === expected.length ? [] : [`${said.length} exercises said, ${expected.length} prescribed`];
  expected.forEach(({ step, prescription }, at) => {
    const found = said[at];
    const place = `step ${step.step}, ${prescription.card}`;
    if (found?.step !== step.heading || plain(found.title) !== plain(prescription.title))
      faults.push(`${place}: ${found?.step}, ${found?.title}`);
    for (const { cell, text } of prescription.cells) {
      const printed = found?.byLabel.get(step.columns[cell]) ?? '';
      const isKept = !step.present && !prescription.news.includes(cell);
      if (printed !== (isKept ? '' : plain(text)))
        faults.push(`${place}, ${cell}: "${printed}" for "${text}"`);
    }
  });
  return faults;
}

/** White space as a line break leaves it; a word may break at its hyphen. */
function plain(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/- (?=\w)/g, '-')
    .trim();
}

async function saidBy(programme: Programme, bytes: Uint8Array): Promise<readonly Said[]> {
  const pdf = await openPdf(bytes);
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
  if (corner !== step.heading || rows.length !== cellsFor('hipFlexion').length) return [];
  return titles.map((title, at) => ({
    step: step.heading,
    title,
    byLabel: new Map(rows.map((row) => [row[0]!, row[at + 1]!])),
  }));
}

/** Lists under the heading of a step: one exercise each, named in the caption, one number an entry. */
function comingSays(trees: readonly ViewedElement[], coming: readonly StepTable[]): readonly Said[] {
  const headings = new Set(coming.map(({ heading }) => heading));
  let step = '';
  const said: Said[] = [];
  const read = (element: ViewedElement): void => {
    if (element.role === 'H2') step = '';
    if (element.role === 'H3' && headings.has(element.text.trim())) step = element.text.trim();
    const [caption, ...entries] = element.kids;
    if (element.role === 'L' && step !== '' && caption?.role === 'Caption')
      said.push({
        step,
        title: caption.text.trim(),
        byLabel: new Map(
          entries.map(({ kids: [label, body] }) => [label?.text.trim() ?? '', body?.text.trim() ?? '']),
        ),
      });
    else element.kids.forEach(read);
  };
  trees.forEach(read);
  return said;
}
