/** Telephone numbers and mail addresses in a line as links that a phone can follow. The words stay as they are, a number in one line. */
import { html, type Html } from '../html.ts';

// An address, a number of at least seven digits, or the short number a line tells to call.
const FOUND = /([\w.+-]+@[\w-]+(?:\.[\w-]+)+)|(\+?\d(?:[\d ()/-]*\d)?)/g;
const LEAST_DIGITS = 7;
// A number after these is to be called, however short it is.
const CALLED = /(?:\b(?:call|ring|dial|phone|telephone|emergency):?|\bcall\b[^.;]*\b(?:on|or)) $/i;
const LEAST_CALLED = 3;

/** @example contactHtml('Mail: desk@larkfield.example') // => 'Mail: <a href="mailto:desk@larkfield.example">...</a>' */
export function contactHtml(line: string): Html {
  const pieces: Html[] = [];
  let at = 0;
  for (const found of line.matchAll(FOUND)) {
    const [, mail, number = ''] = found;
    const before = line.slice(0, found.index);
    const linked = mail ?? called(number, before);
    if (linked === null) continue;
    pieces.push(html`${line.slice(at, found.index)}<a href="${hrefOf(linked)}">${whole(linked)}</a>`);
    at = found.index + linked.length;
  }
  return html`${pieces}${line.slice(at)}`;
}

/** The part of a number that is one to call; a date is none. */
function called(number: string, before: string): string | null {
  if (/^\d{4}-\d{2}-\d{2}$/.test(number)) return null;
  if (digitsOf(number).length >= LEAST_DIGITS) return number;
  const [short = ''] = /^\d+/.exec(number) ?? [];
  return short.length >= LEAST_CALLED && CALLED.test(before) ? short : null;
}

function hrefOf(linked: string): string {
  if (linked.includes('@')) return `mailto:${linked}`;
  return `tel:${linked.startsWith('+') ? '+' : ''}${digitsOf(linked)}`;
}

// A number is not parted at a line's end.
function whole(linked: string): string {
  return linked.replace(/ /g, '\u00a0');
}

function digitsOf(number: string): string {
  return number.replace(/\D/g, '');
}
