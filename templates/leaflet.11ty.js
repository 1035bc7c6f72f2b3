/** Private: the patient's page of every programme. */
import { leafletHtml } from '#dist/outputs/html/leaflet.js';

export const data = {
  pagination: { data: 'aliases', size: 1, alias: 'alias' },
  permalink: ({ alias }) => `private/${alias}/leaflet.html`,
};

export function render({ alias, programmes, assets }) {
  return leafletHtml(programmes.get(alias), assets);
}
