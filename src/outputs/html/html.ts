/** Markup that cannot be forgotten to be escaped: only what `html` made itself goes in as it is. */

const MADE = Symbol('html');

/** A piece of markup made by `html`, `join` or `trusted`. */
export interface Html {
  readonly [MADE]: true;
  readonly markup: string;
}

/** What may stand between the braces. A missing value is an error, never an empty place. */
export type Written = Html | string | number | readonly Html[];

/** No markup at all, for a part that does not apply. */
export const nothing = trusted('');

/**
 * Markup with every string escaped and every number written plainly; lists of markup follow each other.
 * Throws where a value is missing (undefined, null, NaN) or stands outside quotes in an attribute.
 * @example html`<p>${'a < b'}</p>`.markup // => '<p>a &lt; b</p>'
 */
export function html(literals: TemplateStringsArray, ...written: readonly Written[]): Html {
  const [first = '', ...others] = unindented(literals);
  let markup = first;
  written.forEach((value, at) => {
    if (markup.endsWith('=')) throw new TypeError(`an attribute without quotes: ${markup.slice(-40)}`);
    markup += markupOf(value, markup) + (others[at] ?? '');
  });
  return trusted(markup);
}

/** Pieces one after the other with the same mark-up between them. */
export function join(pieces: readonly Html[], between: string): Html {
  return trusted(pieces.map((piece) => piece.markup).join(escaped(between)));
}

/** Markup made elsewhere in this house (a drawing, a style sheet); never an author's text. */
export function trusted(markup: string): Html {
  return { [MADE]: true, markup };
}

const tidied = new WeakMap<TemplateStringsArray, readonly string[]>();

// Our own indentation is for readers of the source; white space stays white space, but shorter. Beside what starts a line
// of its own, or is a part of a table, it shows nothing.
function unindented(literals: TemplateStringsArray): readonly string[] {
  const known = tidied.get(literals);
  if (known !== undefined) return known;
  const tidy = literals.map((literal) =>
    literal
      .replace(/\s*\n\s*/g, '\n')
      .replace(BEFORE_OWN_LINE, '')
      .replace(AFTER_OWN_LINE, '$1'),
  );
  tidied.set(literals, tidy);
  return tidy;
}

const OWN_LINE =
  '</?(?:article|caption|details|div|dl|figure|h[1-6]|header|main|ol|section|summary|t(?:able|body|d|h|head|r)|ul)\\b';
const BEFORE_OWN_LINE = new RegExp(`\\n(?=${OWN_LINE})`, 'g');
const AFTER_OWN_LINE = new RegExp(`(${OWN_LINE}[^<>]*>)\\n`, 'g');

function markupOf(value: Written, before: string): string {
  if (typeof value === 'string') return escaped(value);
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  if (Array.isArray(value)) return value.map((piece: unknown) => made(piece, before)).join('');
  return made(value, before);
}

function made(value: unknown, before: string): string {
  if (typeof value === 'object' && value !== null && MADE in value) return (value as Html).markup;
  throw new TypeError(`${String(value)} instead of text or markup after: ${before.slice(-60)}`);
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

// Control characters are errors in HTML whichever way they are written, so they become the replacement character.
const UNSAFE = /[&<>"'\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g;

function escaped(text: string): string {
  return text.replace(UNSAFE, (letter) => ENTITIES[letter] ?? '\ufffd');
}
