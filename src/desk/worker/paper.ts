/** The script that is fetched with the first PDF: pdfkit and what draws with it. */
import { openFonts, type Fonts } from '../../outputs/pdf/fonts.ts';
import { leafletPdf } from '../../outputs/pdf/leaflet.ts';
import type { PaperTokens } from '../../outputs/pdf/sheet.ts';
import type { Programme } from '../../programme/programme.ts';

export interface PaperScript {
  openFonts(regular: Uint8Array, bold: Uint8Array): Fonts;
  leafletPdf(
    programme: Programme,
    assets: { readonly fonts: Fonts; readonly tokens: PaperTokens; readonly logo: Uint8Array | null },
  ): Promise<Uint8Array>;
}

(globalThis as { loadleafPaper?: PaperScript }).loadleafPaper = { openFonts, leafletPdf };
