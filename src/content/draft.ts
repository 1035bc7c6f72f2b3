/** A consult that is still being written: what it says already, however much of it is missing or wrong. */
import type { FrontMatter } from './frontMatter.ts';
import type { Consult } from './library.ts';
import { valueAt } from './path.ts';
import { consultSchema, SCREEN_ITEMS, type ScreenItem } from './schema/consult.ts';
import { decode, type SourceFile } from './source.ts';

export interface Draft {
  readonly alias: string;
  /** Null where neither keys nor name tell it. */
  readonly revision: number | null;
  readonly file: string;
  /** Null while anything in it has a Problem. */
  readonly consult: Consult | null;
  readonly said: Said;
}

/** What the screen of a file says, read even where the rest of the file cannot be. */
export interface Said {
  readonly yes: readonly ScreenItem[];
  readonly clearances: Consult['clearances'];
  readonly cannotDo: Consult['cannotDo'];
  readonly ageYears: number | null;
  readonly country: string | null;
}

/** Whether a file says `draft: yes`: by its key, or by its line alone where the keys cannot be read. */
export function isDraft(file: SourceFile, front: FrontMatter | null): boolean {
  if (front?.value !== undefined) return isYes(valueAt(front.value, ['draft']));
  return saysYes(textOf(file), /^/, 'draft');
}

/** Of keys that are missing or wrong nothing is said; where no key can be read, the lines of the screen still speak. */
export function saidIn(file: SourceFile, front: FrontMatter | null): Said {
  const { clearances, cannotDo, ageYears, country } = consultSchema.shape;
  const at = (key: string) => valueAt(front?.value, [key]);
  return {
    yes: SCREEN_ITEMS.filter((item) =>
      front?.value === undefined
        ? saysYes(textOf(file), /^[ \t]+/, item)
        : isYes(valueAt(front.value, ['screen', item])),
    ),
    clearances: clearances.safeParse(at('clearances')).data ?? [],
    cannotDo: cannotDo.safeParse(at('cannotDo')).data ?? [],
    ageYears: ageYears.safeParse(at('ageYears')).data ?? null,
    country: country.safeParse(at('country')).data ?? null,
  };
}

function isYes(value: unknown): boolean {
  return value === true || value === 'yes';
}

function saysYes(text: string, before: RegExp, key: string): boolean {
  return new RegExp(`${before.source}${key}:[ \\t]*["']?(?:yes|true)\\b`, 'm').test(text);
}

// A file that is no text may still hold lines of it.
function textOf(file: SourceFile): string {
  return decode(file).source?.text ?? new TextDecoder().decode(file.bytes);
}
