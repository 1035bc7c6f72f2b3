/** Letters the typeface lacks: found before anything is drawn, so that no leaflet shows an empty box for a word. */
import type { Programme } from '../../programme/programme.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { Fonts } from './fonts.ts';
import { SIGNS } from './signs.ts';

/** White space is set as one space, whatever it was. */
const WHITE = /\s/u;

/** A mark that made no letter of its own with what stands before it: the shaper leaves it without a character. */
const LOOSE_MARK = /\p{M}/u;

/** What the leaflet never prints: the clinician's record, and reasons and keys beside a printed text. */
const NOT_PRINTED = new Set([
  'record',
  'stage',
  'calendar',
  'rule',
  'inputs',
  'source',
  'value',
  'scene',
  'alt',
  'href',
  'logo',
]);

/** Texts kept before starting afresh. */
const MEMORY_TEXTS = 20_000;

/** The characters of these texts that can be neither set nor drawn, each once, in order of first use. */
export function lettersMissing(texts: Iterable<string>, fonts: Fonts): readonly string[] {
  const missing = new Set<string>();
  for (const text of texts)
    for (const letter of text.normalize('NFC')) if (!isPrintable(letter, fonts)) missing.add(letter);
  return [...missing];
}

export interface LetterRefusal extends Refusal {
  /** That the typeface lacks, in order of first use. */
  readonly letters: readonly string[];
  /** As it would be printed. */
  readonly text: string;
}

/**
 * A refusal (`letter-not-in-font`) for every printed text with a letter the typeface lacks; none when all can be set.
 * It names the file the text came from: the exercise or advice card, the clinic file, or else the consult.
 */
export function letterRefusals(programme: Programme, fonts: Fonts): readonly LetterRefusal[] {
  const refusals = new Map<string, LetterRefusal>();
  forEachPrinted(programme, [], (text, path) => {
    if (fonts.printable.has(text)) return;
    const missing = lettersMissing([text], fonts);
    if (missing.length === 0) {
      if (fonts.printable.size >= MEMORY_TEXTS) fonts.printable.clear();
      fonts.printable.add(text);
      return;
    }
    const owner = ownerOf(path, programme);
    const found = `${missing.map(codePointName).join(', ')} in "${text}"`;
    refusals.set(`${owner.kind} ${owner.id} ${found}`, {
      code: 'letter-not-in-font',
      ...owner,
      found,
      expected: 'letters of the Latin alphabets, which the printed typeface has',
      fix: 'write the text with Latin letters and plain signs',
      letters: missing,
      text,
    });
  });
  return [...refusals.values()];
}

function isPrintable(letter: string, fonts: Fonts): boolean {
  const known = fonts.letters.get(letter);
  if (known !== undefined) return known;
  const can = canBeSet(letter, fonts);
  fonts.letters.set(letter, can);
  return can;
}

function canBeSet(letter: string, fonts: Fonts): boolean {
  if (WHITE.test(letter) || SIGNS.has(letter)) return true;
  if (LOOSE_MARK.test(letter)) return false;
  const codePoint = letter.codePointAt(0) ?? 0;
  return [fonts.regular, fonts.bold].every(({ font }) => font.hasGlyphForCodePoint(codePoint));
}

type Path = readonly string[];

/** Shows `look` every printed text and where it stands; one path for all of them, good only until `look` returns. */
function forEachPrinted(node: unknown, path: string[], look: (text: string, path: Path) => void): void {
  if (typeof node === 'string') look(node, path);
  if (typeof node !== 'object' || node === null) return;
  for (const [key, child] of Object.entries(node)) {
    if (NOT_PRINTED.has(key)) continue;
    path.push(key);
    forEachPrinted(child, path, look);
    path.pop();
  }
}

function ownerOf(path: Path, programme: Programme): Pick<Refusal, 'kind' | 'id' | 'path'> {
  const [room, at, key] = path;
  if (room === 'clinic') return { kind: 'clinic', id: 'clinic', path: at === 'name' ? ['name'] : [] };
  if (room === 'exercises') {
    const card = programme.exercises[Number(at)]?.card ?? '';
    return { kind: 'exercise', id: card, path: key === 'title' ? ['title'] : [] };
  }
  if (room === 'advice') return { kind: 'advice', id: programme.advice[Number(at)]?.id ?? '', path: [] };
  return { kind: 'consult', id: programme.alias, path: [] };
}

function codePointName(letter: string): string {
  return `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
