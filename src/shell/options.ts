/** Every option there is: what it takes, and its line in the help. */

export interface Option {
  /** The word for its value, or null for a switch. */
  readonly takes: string | null;
  readonly says: string;
}

export const OPTIONS = {
  content: { takes: 'dir', says: 'the library folder (content)' },
  consults: { takes: 'dir', says: 'the consults folder (consults in it)' },
  out: { takes: 'dir', says: 'where to write (_site)' },
  on: { takes: 'date', says: 'the day it counts as, YYYY-MM-DD (today)' },
  json: { takes: null, says: 'one JSON object on stdout, all else on stderr' },
  quiet: { takes: null, says: 'nothing but problems' },
  'no-color': { takes: null, says: 'no colours' },
  help: { takes: null, says: 'print this help (also -h)' },
  version: { takes: null, says: 'print the version' },
  height: { takes: 'm', says: 'height in metres, 1.2 to 2.2' },
  mass: { takes: 'kg', says: 'body mass in kilograms, 30 to 250' },
  load: { takes: 'kg', says: 'weight moved, in kilograms (0)' },
  'hip-cap': { takes: 'deg', says: 'hip bend at most, in degrees' },
  'compression-cap': { takes: 'bw', says: 'squeeze at most, in body weights' },
  'tension-cap': { takes: 'bw', says: 'pull at most, in body weights' },
  'demand-cap': { takes: 'share', says: 'share of strength at most' },
  against: { takes: 'dir', says: 'the shipped library as it was, or one protocol of it' },
  part: { takes: 'k/n', says: 'only the k-th of n parts of the persons, to be joined' },
  verify: { takes: null, says: 'read unchanged files too, not their size and times alone' },
  log: { takes: 'file', says: 'the log to review by (the one beside the consult)' },
  write: { takes: null, says: 'write the next revision as a draft' },
  fridge: { takes: null, says: 'make the one-page sheet for the fridge too' },
  sealed: { takes: null, says: 'seal the leaflets for a web host too' },
  site: { takes: 'url', says: 'address at which public/ will stand, https' },
  secret: { takes: 'file', says: 'the clinic secret (~/.config/loadleaf/secret)' },
  public: { takes: 'dir', says: 'prove that nothing private is in this folder' },
  port: { takes: 'n', says: 'port (any that is free)' },
} as const satisfies Record<string, Option>;

export type OptionName = keyof typeof OPTIONS;

/** What every command takes. */
export const SHARED: readonly OptionName[] = [
  'content',
  'consults',
  'out',
  'on',
  'json',
  'quiet',
  'no-color',
  'help',
  'version',
];

export function isOption(name: string): name is OptionName {
  return Object.hasOwn(OPTIONS, name);
}
