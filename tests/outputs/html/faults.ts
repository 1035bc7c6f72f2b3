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

/** Puts rules at the end of the sheet's own style. */
function styled(rules: string): (markup: string) => string {
  return (markup) => markup.replace('</style>', `${rules}</style>`);
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
  { name: 'pale text', seen: 'color-contrast', spoil: styled('.quiet{color:#b9c0c4}') },
  { name: 'no language', seen: 'html-has-lang', spoil: (markup) => markup.replace(/<html lang="[^"]*"/, '<html') },
  ...highAndLow('a button without a name', 'button-name', '<button type="button"></button>'),
  ...highAndLow('buttons too small to hit', 'target-size', '<p><button type="button" class="tiny">a</button><button type="button" class="tiny">b</button></p><style>.tiny{width:9px;height:9px;padding:0;border:0;font-size:6px}</style>'),
  { name: 'zoom forbidden', seen: 'meta-viewport', spoil: (markup) => markup.replace('initial-scale=1', 'initial-scale=1, user-scalable=no') },
  ...highAndLow('a skipped heading', 'heading-order', '<h6>Too deep</h6>'),
]; // prettier-ignore

/** To be seen in the dark, and not in light. */
export const DARK_FAULTS: readonly Fault[] = [
  { name: 'pale text', seen: 'color-contrast', spoil: styled('@media (prefers-color-scheme:dark){.quiet{color:#39444c}}') },
  { name: 'a link that only its colour tells', seen: 'link-in-text-block', spoil: within('<p>Before <a class="told" href="#exercise-1">a link</a> and after.</p><style>.told{text-decoration:underline}@media (prefers-color-scheme:dark){.told{color:#c9d2d6;text-decoration:none}}</style>') },
]; // prettier-ignore

export const SNIFFER_FAULTS: readonly Fault[] = [
  { name: 'a frame without a title', seen: 'WCAG2AA.Principle2.Guideline2_4.2_4_1.H64.1', spoil: within('<iframe></iframe>') },
  { name: 'a field without a label', seen: 'WCAG2AA.Principle1.Guideline1_3.1_3_1.F68', spoil: within('<input type="text">') },
  { name: 'a link to no place', seen: 'WCAG2AA.Principle2.Guideline2_4.2_4_1.G1,G123,G124.NoSuchID', spoil: within('<a href="#nowhere">there</a>') },
]; // prettier-ignore

export const ENGINE_FAULTS: readonly Fault[] = [
  { name: 'articles without names', seen: 'aria_article_label_unique', spoil: (markup) => markup.replaceAll(/(<article[^>]*)\s+aria-labelledby="[^"]*"/g, '$1') },
  { name: 'a picture without text', seen: 'img_alt_valid', spoil: within('<img src="data:,">') },
  { name: 'a role that is none', seen: 'aria_role_allowed', spoil: within('<p role="paragraphish">a</p>') },
]; // prettier-ignore

/** By what a page must be for eye and hand, in `eye.ts`. */
export const EYE_FAULTS: readonly Fault[] = [
  { name: 'a word broken over two lines', seen: 'broken word', spoil: within('<p class="slim">physiotherapist</p><style>.slim{width:3em;overflow-wrap:anywhere}</style>') },
  { name: 'a button too small for a thumb', seen: 'small target', spoil: within('<p><button type="button" class="low">Go on</button></p><style>.low{height:30px;width:80px}</style>') },
  { name: 'a group of pictures without a name', seen: 'unnamed figure', spoil: within('<figure><p>a</p></figure>') },
  { name: 'a tab stop where nothing scrolls', seen: 'idle tab stop', spoil: within('<div tabindex="0">a</div>') },
  { name: 'a slashed zero asked for', seen: 'slashed zero', spoil: within('<p class="nought">100</p><style>.nought{font-variant-numeric:slashed-zero}</style>') },
]; // prettier-ignore

export const VALIDATE_FAULTS: readonly Fault[] = [
  { name: 'an id twice', seen: 'no-dup-id', spoil: within('<p id="exercise-1">a</p>') },
  { name: 'a style attribute', seen: 'no-inline-style', spoil: within('<p style="color:red">a</p>') },
  { name: 'an element left open', seen: 'no-implicit-close', spoil: within('<div><p>a</div>') },
  { name: 'a paragraph straight in a list', seen: 'element-permitted-content', spoil: within('<ul><p>a</p></ul>') },
  { name: 'a made-up attribute value', seen: 'attribute-allowed-values', spoil: within('<table><caption>a</caption><tbody><tr><th scope="sideways">a</th></tr></tbody></table>') },
]; // prettier-ignore
