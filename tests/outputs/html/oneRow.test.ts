/** A table compares rows: what has a single one is said in a list or set upright, on page and record of every whole case. */
import { expect, it } from 'vitest';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { recordHtml } from '../../../src/outputs/html/record.ts';
import { CASES, caseMade } from '../../programme/outcome.ts';
import { assets } from './assets.ts';
import { programmes } from './programmes.ts';

const [, marten] = programmes;
const made = CASES.flatMap((name) => {
  const one = caseMade(name);
  return 'programme' in one ? [[name, one.programme] as const] : [];
});
const all = [marten!, ...made];

function tablesOfOneRow(markup: string): string[] {
  const tables = markup.match(/<table[^>]*>[^]*?<\/table>/g) ?? [];
  return tables.filter((table) => (/<tbody>[^]*<\/tbody>/.exec(table)?.[0].match(/<tr/g) ?? []).length === 1);
}

it.each(all)('%s', (_, programme) => {
  expect(tablesOfOneRow(leafletHtml(programme, assets))).toEqual([]);
  expect(tablesOfOneRow(recordHtml(programme, assets))).toEqual([]);
});

it('sees one', () => {
  expect(tablesOfOneRow('<table class="x"><thead><tr></thead><tbody><tr></tbody></table>')).toHaveLength(1);
});

it('shows a step to come of a single exercise with all its numbers', () => {
  const alone = made.find(([, { steps }]) =>
    steps.some(({ present, prescriptions }) => !present && prescriptions.length === 1),
  );
  const [, programme] = alone!;
  const markup = leafletHtml(programme, assets);
  const [one] = programme.steps.filter(
    ({ present, prescriptions }) => !present && prescriptions.length === 1,
  );
  expect(markup).toContain(`<h4>${one!.caption}</h4>`);
  const cells = one!.prescriptions[0]!.cells.map(({ cell }) => cell);
  expect(
    cells.filter(
      (cell) =>
        !markup.includes(
          `data-step="${one!.step}" data-card="${one!.prescriptions[0]!.cells[0]!.card}" data-cell="${cell}"`,
        ),
    ),
  ).toEqual([]);
});
