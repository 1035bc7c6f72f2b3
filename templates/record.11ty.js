/** Private: the clinician's page of every programme. */
import { recordHtml } from '#dist/outputs/html/record.js';

export const data = {
  pagination: { data: 'aliases', size: 1, alias: 'alias' },
  permalink: ({ alias }) => `private/${alias}/record.html`,
};

export function render({ alias, programmes, assets }) {
  return recordHtml(programmes.get(alias), assets);
}
