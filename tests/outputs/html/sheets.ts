/** The sheets the checkers look at: leaflet and record of each programme, by name. */
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { recordHtml } from '../../../src/outputs/html/record.ts';
import { assets } from './assets.ts';
import { programmesReviewed } from './programmes.ts';

export const sheets = programmesReviewed().flatMap(([name, programme]): [name: string, markup: string][] => [
  [`the leaflet of ${name}`, leafletHtml(programme, assets)],
  [`the record of ${name}`, recordHtml(programme, assets)],
]);
