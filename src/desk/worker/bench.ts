/** The library read once, and everything that programmes are made with. */
import type { Nameable, Library } from '../../content/library.ts';
import { readLibrary } from '../../content/readLibrary.ts';
import type { PlaceOf } from '../../content/place.ts';
import type { SourceFile } from '../../content/source.ts';
import type { Fonts } from '../../outputs/pdf/fonts.ts';
import type { Workshop } from '../../programme/assemble.ts';
import { fromBase64 } from '../../units/base64.ts';
import { isInRuns, sourceOf, type DeskData, type Run } from '../deskData.ts';

export interface Bench {
  readonly library: Library;
  readonly known: Nameable;
  readonly workshop: Workshop;
  readonly logo: Uint8Array | null;
  /** What the clinic's own photos of a card add to a leaflet. */
  readonly photoBytes: DeskData['photoBytes'];
  readonly letters: Fonts;
  readonly placeOf: PlaceOf;
  readonly files: readonly SourceFile[];
}

/** Throws where the library has an error: the build lays out none that has. */
export function openBench(data: DeskData): Bench {
  const reading = readLibrary(...data.folders.map((files) => files.map(sourceOf)));
  const { library, known, placeOf, files } = reading;
  if (library === null)
    throw new Error(
      `the library has an error: ${reading.problems[0]?.file ?? ''} ${reading.problems[0]?.found ?? ''}`,
    );
  const logo = data.logo === null ? null : fromBase64(data.logo);
  return {
    library,
    known,
    workshop: { library, models: new Map(), loadleaf: data.loadleaf },
    logo,
    photoBytes: data.photoBytes,
    letters: lettersOnly(data.letters),
    placeOf,
    files,
  };
}

/** As much of the typeface as tells which letters it has; the typeface itself comes with the paper. */
function lettersOnly(runs: readonly Run[]): Fonts {
  const face = { font: { hasGlyphForCodePoint: (codePoint: number) => isInRuns(runs, codePoint) } };
  return { regular: face, bold: face, printable: new Set(), letters: new Map() } as unknown as Fonts;
}
