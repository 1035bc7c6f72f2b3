/** What was said with options, as values. */
import { siteAddress } from '../units/siteAddress.ts';
import { isoDate, type IsoDate } from '../units/date.ts';
import { EXIT } from './exit.ts';
import { Stop } from './io/stop.ts';
import type { OptionName } from './options.ts';

/** Options as they were written: text after the name, true for a switch. */
export type Said = Readonly<Partial<Record<OptionName, string | true>>>;

export interface Flags {
  readonly content: string;
  /** Null: inside the library folder. */
  readonly consults: string | null;
  readonly out: string;
  /** Null: today. */
  readonly on: IsoDate | null;
  readonly json: boolean;
  readonly quiet: boolean;
  readonly color: boolean;
  readonly heightM: number | null;
  readonly massKg: number | null;
  readonly loadKg: number;
  readonly hipCapDeg: number | null;
  readonly compressionCapBw: number | null;
  readonly tensionCapBw: number | null;
  readonly demandCap: number | null;
  /** Null: held against nothing. */
  readonly against: string | null;
  readonly port: number | null;
  /** Of so many parts the persons of one, from 1; null for everybody. */
  readonly part: { readonly part: number; readonly of: number } | null;
  /** Whether files that look unchanged are read all the same. */
  readonly verify: boolean;
  /** Null: the one beside the consult. */
  readonly log: string | null;
  readonly write: boolean;
  /** Whether everybody gets the one-page sheet. */
  readonly fridge: boolean;
  readonly sealed: boolean;
  /** Where `public/` will stand, with a slash at its end. */
  readonly site: string | null;
  /** The file of the clinic secret; null for the usual one. */
  readonly secret: string | null;
  /** The folder that is to be looked through. */
  readonly public: string | null;
}

/** The library folder where none is named. */
export const CONTENT = 'content';

const LAST_PORT = 65535;

/** Stops with 64 where a value is none of its kind. */
export function flagsOf(said: Said): Flags {
  return {
    content: folder(said, 'content') ?? CONTENT,
    consults: folder(said, 'consults'),
    out: folder(said, 'out') ?? '_site',
    on: day(said),
    json: said.json === true,
    quiet: said.quiet === true,
    color: said['no-color'] !== true,
    heightM: number(said, 'height'),
    massKg: number(said, 'mass'),
    loadKg: number(said, 'load') ?? 0,
    hipCapDeg: number(said, 'hip-cap'),
    compressionCapBw: number(said, 'compression-cap'),
    tensionCapBw: number(said, 'tension-cap'),
    demandCap: number(said, 'demand-cap'),
    against: folder(said, 'against'),
    port: port(said),
    part: part(said),
    verify: said.verify === true,
    log: folder(said, 'log'),
    write: said.write === true,
    fridge: said.fridge === true,
    ...sealing(said),
    secret: folder(said, 'secret'),
    public: folder(said, 'public'),
  };
}

/** Neither goes without the other: a link needs a place. */
function sealing(said: Said): Pick<Flags, 'sealed' | 'site'> {
  const site = siteOf(said);
  if ((said.sealed === true) !== (site !== null))
    throw new Stop(
      EXIT.usage,
      '--sealed and --site go together: build --sealed --site https://clinic.example/',
    );
  return { sealed: said.sealed === true, site };
}

function siteOf({ site }: Said): string | null {
  if (typeof site !== 'string') return null;
  const address = siteAddress(site);
  if (address === null)
    throw new Stop(EXIT.usage, `--site ${site}: must be an https address, such as https://clinic.example/`);
  return address;
}

function folder(said: Said, name: OptionName): string | null {
  const text = said[name];
  if (text === '') throw new Stop(EXIT.usage, `--${name} must name a folder`);
  return typeof text === 'string' ? text : null;
}

function day({ on }: Said): IsoDate | null {
  if (typeof on !== 'string') return null;
  const date = isoDate(on);
  if (date === null) throw new Stop(EXIT.usage, `--on ${on}: must be a date that exists, YYYY-MM-DD`);
  return date;
}

function number(said: Said, name: OptionName): number | null {
  const text = said[name];
  if (typeof text !== 'string') return null;
  // Number() would also read hexadecimal, spaces and nothing at all.
  if (!/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text))
    throw new Stop(EXIT.usage, `--${name} ${text}: must be a number, such as 1.75`);
  return Number(text);
}

function part({ part: text }: Said): Flags['part'] {
  if (typeof text !== 'string') return null;
  const [part = 0, of = 0] = /^[1-9]\d{0,3}\/[1-9]\d{0,3}$/.test(text) ? text.split('/').map(Number) : [];
  if (part < 1 || part > of)
    throw new Stop(EXIT.usage, `--part ${text}: must be one of so many parts, such as 3/8`);
  return { part, of };
}

function port(said: Said): number | null {
  const wanted = number(said, 'port');
  if (wanted !== null && !(Number.isInteger(wanted) && wanted >= 0 && wanted <= LAST_PORT))
    throw new Stop(EXIT.usage, `--port ${wanted}: must be a whole number from 0 to ${LAST_PORT}`);
  return wanted;
}
