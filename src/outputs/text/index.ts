/** The texts of a person's set. */
export { letterText } from './letterText.ts';
export { noteText } from './noteText.ts';
export { recordJson } from './recordJson.ts';
