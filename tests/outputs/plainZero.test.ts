/** The printed face: a zero of a dose is no code, so it has no slash; one counter alone, in digits of one width and of their own. */
import { readFileSync } from 'node:fs';
import { create, type Font } from 'fontkit';
import { expect, it } from 'vitest';

const FACES = [
  'AtkinsonHyperlegibleNext_400Regular.ttf',
  'AtkinsonHyperlegibleNext_700Bold.ttf',
  'atkinson-hyperlegible-next-latin-400-normal.woff2',
  'atkinson-hyperlegible-next-latin-700-normal.woff2',
  'atkinson-hyperlegible-next-few-letters-400-normal.woff2',
  'atkinson-hyperlegible-next-few-letters-700-normal.woff2',
];

/** What fontkit's types leave out. */
interface Named {
  readonly familyName: string;
}
interface Outlined {
  readonly path: { readonly commands: readonly { readonly command: string }[] };
}

it.each(FACES)('%s has a plain zero', (file) => {
  const face = create(readFileSync(`shared/fonts/${file}`)) as Font;
  // A changed face does not go by the name of the one it was made from.
  expect((face as unknown as Named).familyName).toBe('Loadleaf Hyperlegible');
  for (const way of ['tnum', 'pnum']) {
    const [zero] = face.layout('0', [way]).glyphs;
    const { path } = zero as unknown as Outlined;
    const contours = path.commands.filter(({ command }) => command === 'moveTo');
    expect(contours).toHaveLength(2);
  }
});
