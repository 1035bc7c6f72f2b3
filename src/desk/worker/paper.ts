/** The script that is fetched with the first PDF: pdfkit and what draws with it. */
import { openFonts, type Fonts } from '../../outputs/pdf/fonts.ts';
import { fridgePdf } from '../../outputs/pdf/fridge.ts';
import { leafletPdf } from '../../outputs/pdf/leaflet.ts';

export interface PaperScript {
  readonly fridgePdf: typeof fridgePdf;
  readonly leafletPdf: typeof leafletPdf;
  openFonts(regular: Uint8Array, bold: Uint8Array): Fonts;
}

const script: PaperScript = { fridgePdf, leafletPdf, openFonts };
(globalThis as { loadleafPaper?: PaperScript }).loadleafPaper = script;
