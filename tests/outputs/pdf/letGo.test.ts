/** Documents are let go of one after the other, also where a build waits for nothing else in between. */
import PDFDocument from 'pdfkit';
import { queryObjects } from 'node:v8';
import { expect, it } from 'vitest';
import { leafletPdf } from '../../../src/outputs/pdf/leaflet.ts';
import { programmes } from '../html/programmes.ts';
import { assets } from './make.ts';

it('of leaflets drawn one after the other at most the last is still there', async () => {
  const [[, programme]] = programmes as [(typeof programmes)[0]];
  const before = documents();
  for (let at = 0; at < 4; at += 1) await leafletPdf(programme, assets);
  expect(documents() - before).toBeLessThanOrEqual(1);
});

/** What can still be reached; Node clears what cannot before it counts. */
function documents(): number {
  return queryObjects(PDFDocument, { format: 'count' }) as unknown as number;
}
