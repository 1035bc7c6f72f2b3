/** The desk's worker over the shipped library, as a site hands it out. */
import type { DeskFile } from '../../src/desk/deskData.ts';
import { openBench } from '../../src/desk/worker/bench.ts';
import { files as pages } from '../outputs/html/assets.ts';
import { filesBelow } from '../programme/shipped.ts';

const texts: DeskFile[] = filesBelow('content', 'consults/').map(({ file, bytes }) => ({
  file,
  text: new TextDecoder().decode(bytes),
}));

export const bench = openBench({
  loadleaf: '0',
  folders: [texts],
  logo: null,
  pages,
  photoBytes: {},
  letters: [[0, 0x10ffff]],
});
