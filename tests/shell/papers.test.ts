/** What is left of a person when the papers are made. */
import type { Font } from 'fontkit';
import { expect, it, vi } from 'vitest';
import { setFiles } from '../../src/shell/building/make.ts';
import { assets as pages } from '../outputs/html/assets.ts';
import { programmes } from '../outputs/html/programmes.ts';
import { assets } from '../outputs/pdf/make.ts';

it('no text of the leaflet, nor how its words are shaped, is remembered', async () => {
  const [, programme] = programmes[0]!;
  const files = await setFiles(programme, { pages, paper: assets, link: null, fridge: false }, []);
  expect(files.map(({ name }) => name)).toContain('leaflet.pdf');
  const { printable, regular, bold } = assets.fonts;
  expect(printable.size).toBe(0);
  const word = `${programme.exercises[0]?.title.split(' ')[0] ?? ''} `;
  for (const { font } of [regular, bold]) {
    const shaping = vi.spyOn(Object.getPrototypeOf(font) as Font, 'layout');
    font.layout(word);
    font.layout(word);
    expect(shaping).toHaveBeenCalledOnce();
    shaping.mockRestore();
  }
});
