import { writeFileSync } from 'node:fs';
import { readPaperAssets, readPageAssets } from '#dist/shell/io/assets.js';
import { leafletPdf } from '#dist/outputs/pdf/leaflet.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { cases, demos, programmeOf } from './shipped.mjs';
const paper = await readPaperAssets(null), page = await readPageAssets();
for (const c of [...demos, ...cases]) { const p = programmeOf(c); if (p?.alias === process.argv[2]) { writeFileSync('/tmp/one.pdf', await leafletPdf(p, paper)); writeFileSync('/tmp/one.html', leafletHtml(p, page)); break; } }
