/** The sheets the checkers look at: leaflet and record of each programme, by name. */
import { leafletHtml } from '../../src/page/leaflet.ts';
import { recordHtml } from '../../src/page/record.ts';
import { assets } from './assets.ts';
import { programmes } from './programmes.ts';

export const sheets = programmes.flatMap(([name, programme]): [name: string, markup: string][] => [
  [`the leaflet of ${name}`, leafletHtml(programme, assets)],
  [`the record of ${name}`, recordHtml(programme, assets)],
]);
