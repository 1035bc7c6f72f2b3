/** The files of one make, each the bytes that `build` writes. */
import { leafletHtml } from '../../outputs/html/leaflet.ts';
import { recordHtml } from '../../outputs/html/record.ts';
import { letterText } from '../../outputs/text/letterText.ts';
import { noteText } from '../../outputs/text/noteText.ts';
import { recordJson } from '../../outputs/text/recordJson.ts';
import type { Programme } from '../../programme/programme.ts';
import type { MadeName } from '../talk.ts';
import type { Bench } from './bench.ts';

/** Makes the paper; comes with a script of its own when it is first asked for. */
export type Paper = (programme: Programme, bench: Bench) => Promise<Uint8Array>;

/** Null for a letter where there is none. */
export async function outputOf(
  name: MadeName,
  programme: Programme,
  bench: Bench,
  paper: Paper | null,
): Promise<Uint8Array | string | null> {
  switch (name) {
    case 'leaflet.html':
      return leafletHtml(programme, bench.assets);
    case 'record.html':
      return recordHtml(programme, bench.assets);
    case 'record.json':
      return recordJson(programme);
    case 'note.txt':
      return noteText(programme);
    case 'letter.txt':
      return programme.letter === null ? null : letterText(programme.letter, programme);
    case 'leaflet.pdf':
      if (paper === null) throw new Error('the paper was not fetched');
      return paper(programme, bench);
  }
}
