/** Text that can stand in one line of a file that programs read. */

// Controls of C0 and C1, the line and paragraph separators, and what turns the direction of writing.

const UNSEEN = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;

/** With a space for what is not seen or breaks a line; halves of a letter (lone surrogates) become U+FFFD. */
export function oneLineText(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(UNSEEN, ' ')
    .trim();
}
