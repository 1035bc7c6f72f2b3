/** Names of keys, such as `stages[].caps.hipFlexionDeg`: on a narrow page they part where a word of them begins. */
import { html, trusted, type Html } from '../html.ts';

const BREAK = trusted('<wbr />');

// Letters, digits, dots and brackets alone, with a dot or a hump within: no word of a sentence is.
const KEY = /(?<![\w.])[a-z]+(?:\[\]|[A-Z.][a-z]+|\.<)[\w.[\]<>]*/g;

/** Where a part of the name begins: after a dot, and before a capital. */
const PARTS = /(?<=\.)|(?<=[a-z\]])(?=[A-Z])/;

/** The text with places to part in its names of keys; as it is where there is none. */
export function withKeyNames(text: string): Html | string {
  const pieces: (Html | string)[] = [];
  let from = 0;
  for (const { 0: name, index } of text.matchAll(KEY)) {
    const parts = name.split(PARTS);
    if (parts.length < 2) continue;
    pieces.push(
      text.slice(from, index),
      html`${parts.map((part, at) => (at === 0 ? html`${part}` : html`${BREAK}${part}`))}`,
    );
    from = index + name.length;
  }
  if (pieces.length === 0) return text;
  return html`${pieces.map((one) => html`${one}`)}${text.slice(from)}`;
}
