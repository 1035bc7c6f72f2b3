/** Pages with one fault each, seeded into a good one: the checkers are checked by them. */

export interface Fault {
  readonly name: string;
  /** What the checker must name. */
  readonly seen: string;
  readonly spoil: (markup: string) => string;
}

/** Puts `piece` at the start of the main part. */
function within(piece: string): (markup: string) => string {
  return (markup) => markup.replace('<main>', `<main>${piece}`);
}

/** The same fault twice: on the first screen of a leaflet, and last of what is drawn after it. */
function highAndLow(name: string, seen: string, piece: string): readonly Fault[] {
  return [
    { name, seen, spoil: within(piece) },
    {
      name: `${name}, at the end`,
      seen,
      spoil: (markup) => markup.replace(/<\/div>\s*<\/main>/, `${piece}$&`),
    },
  ];
}

export const AXE_FAULTS: readonly Fault[] = [
  ...highAndLow('a picture without text', 'svg-img-alt', '<svg role="img" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>'),
  ...highAndLow('a pale line', 'color-contrast', '<p class="pale">Hardly seen</p><style>.pale{color:#b9c0c4}</style>'),
  { name: 'pale text', seen: 'color-contrast', spoil: (markup) => markup.replaceAll(/--quiet:#[0-9a-f]{6}/g, '--quiet:#b9c0c4') },
  { name: 'no language', seen: 'html-has-lang', spoil: (markup) => markup.replace(/<html lang="[^"]*"/, '<html') },
  ...highAndLow('a button without a name', 'button-name', '<button type="button"></button>'),
  ...highAndLow('buttons too small to hit', 'target-size', '<p><button type="button" class="tiny">a</button><button type="button" class="tiny">b</button></p><style>.tiny{width:9px;height:9px;padding:0;border:0;font-size:6px}</style>'),
  { name: 'zoom forbidden', seen: 'meta-viewport', spoil: (markup) => markup.replace('initial-scale=1', 'initial-scale=1, user-scalable=no') },
  ...highAndLow('a skipped heading', 'heading-order', '<h6>Too deep</h6>'),
]; // prettier-ignore

/** To be seen in the dark, and not in light. */
export const DARK_FAULTS: readonly Fault[] = [
  { name: 'pale text', seen: 'color-contrast', spoil: (markup) => markup.replace(/(\(prefers-color-scheme:dark\)[^}]*--quiet:)#[0-9a-f]{6}/, '$1#39444c') },
  { name: 'a link that only its colour tells', seen: 'link-in-text-block', spoil: within('<p>Before <a class="told" href="#exercise-1">a link</a> and after.</p><style>.told{text-decoration:underline}@media (prefers-color-scheme:dark){.told{color:#c9d2d6;text-decoration:none}}</style>') },
]; // prettier-ignore

export const VALIDATE_FAULTS: readonly Fault[] = [
  { name: 'an id twice', seen: 'no-dup-id', spoil: within('<p id="exercise-1">a</p>') },
  { name: 'a style attribute', seen: 'no-inline-style', spoil: within('<p style="color:red">a</p>') },
  { name: 'an element left open', seen: 'no-implicit-close', spoil: within('<div><p>a</div>') },
  { name: 'a paragraph straight in a list', seen: 'element-permitted-content', spoil: within('<ul><p>a</p></ul>') },
  { name: 'a made-up attribute value', seen: 'attribute-allowed-values', spoil: within('<table><caption>a</caption><tbody><tr><th scope="sideways">a</th></tr></tbody></table>') },
]; // prettier-ignore
