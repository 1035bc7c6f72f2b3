/** Elements of the page made by scripts: by attributes and text alone, so that no word is ever read as markup. */

type Attributes = Readonly<Record<string, string | boolean>>;

/** `true` stands for an attribute without a value, `false` for none. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes))
    if (value !== false) made.setAttribute(key, value === true ? '' : value);
  made.append(...children);
  return made;
}

/** The same for a picture. */
export function svgElement(
  name: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly Node[]
): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.append(...children);
  return made;
}

export function button(words: string, attributes: Attributes, press: () => void): HTMLButtonElement {
  const made = element('button', { type: 'button', ...attributes }, words);
  made.addEventListener('click', press);
  return made;
}

/** The words with the number in them as one to press. */
export function withCall(words: string, number: string): (Node | string)[] {
  const [before = '', ...after] = words.split(number);
  return after.length === 0
    ? [words]
    : [before, element('a', { href: `tel:${number}` }, number), after.join(number)];
}

/** A line that readers of the screen are told of when it changes. */
export function spoken(attributes: Attributes = {}): HTMLElement {
  return element('p', { role: 'status', ...attributes });
}
