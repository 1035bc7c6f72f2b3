/** What is left of a person when the papers are made. */
import { expect, it } from 'vitest';
import { papersOf } from '../../src/shell/commands/make.ts';
import { programmes } from '../outputs/html/programmes.ts';
import { assets } from '../outputs/pdf/make.ts';

it('no text of the leaflet, nor how its words are shaped, is remembered', async () => {
  const [, programme] = programmes[0]!;
  const papers = await papersOf(programme, assets, { page: null, link: null, fridge: false });
  expect(papers.map(({ path }) => path)).toContain(`private/${programme.alias}/leaflet.pdf`);
  const { printable, regular, bold } = assets.fonts;
  expect(printable.size).toBe(0);
  expect([regular, bold].map((face) => Object.keys(face.shaped().runs))).toEqual([[], []]);
});
