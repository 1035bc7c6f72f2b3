/** The pages of a person's set. */
export { leafletHtml } from './leaflet.ts';
export { recordHtml } from './record.ts';
