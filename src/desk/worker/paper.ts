/** The script that is fetched with the first PDF: pdfkit and what draws with it. */
import { openFonts, type Fonts } from '../../outputs/pdf/fonts.ts';
import * as pdf from '../../outputs/pdf/index.ts';

export interface PaperScript {
  readonly pdf: typeof pdf;
  openFonts(regular: Uint8Array, bold: Uint8Array): Fonts;
}

const script: PaperScript = { pdf, openFonts };
(globalThis as { loadleafPaper?: PaperScript }).loadleafPaper = script;
