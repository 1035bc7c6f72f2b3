/** The paper of a person's set. */
export { fridgePdf } from './fridge.ts';
export { leafletPdf } from './leaflet.ts';
