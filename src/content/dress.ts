/** A clinic's own style and layout over ours, as far as they may go: nothing is fetched, nothing runs. */
import { errorAt, type Problem } from './problem.ts';
import { decode, type SourceFile } from './source.ts';
import { placeAt, type SourceText } from './sourceText.ts';

const STYLE_FILE = 'style.css';
export const LAYOUT_FILE = 'layouts/page.liquid';

export interface Dress {
  /** Comes after our style on every public page; null where there is none. */
  readonly style: string | null;
  /** Around the text of the clinic's own pages, within our frame; null where there is none. */
  readonly layout: string | null;
}

/** `files`: those of the clinic's own folder. */
export function readDress(files: readonly SourceFile[]): Dress & { readonly problems: readonly Problem[] } {
  const [style, layout] = [STYLE_FILE, LAYOUT_FILE].map((name) => {
    const file = files.find((one) => one.file === name);
    return file === undefined ? null : decode(file);
  });
  return {
    style: style?.source?.text ?? null,
    layout: layout?.source?.text ?? null,
    problems: [
      ...(style?.problems ?? []),
      ...(layout?.problems ?? []),
      ...forbidden(style?.source ?? null, IN_STYLE),
      ...forbidden(layout?.source ?? null, IN_LAYOUT),
      ...withoutContent(layout?.source ?? null),
    ],
  };
}

type Rule = readonly [found: RegExp, expected: string, fix: string];

const IN_STYLE: readonly Rule[] = [
  [/@import\b/gi, 'one file', 'put the other rules in here'],
  [/url\(\s*["']?(?!data:)[^)]*/gi, 'without files of its own', 'take the picture or typeface out'],
  [/<\/?style/gi, 'style alone', 'take the tag out'],
];

const IN_LAYOUT: readonly Rule[] = [
  [/^---/g, 'a layout without front matter', 'take the lines between the hyphens out'],
  [
    /<(script|style|iframe|object|embed|form|base|link|meta|html|head|body|main|h1)\b/gi,
    'what stands inside the page',
    'take the tag out; style belongs in style.css',
  ],
  [
    /\s(on[a-z]+|style)\s*=/gi,
    'without script and style in its tags',
    'take the attribute out; style belongs in style.css',
  ],
  [
    /\b(src|srcset)\s*=\s*["']?\s*(https?:)?\/\//gi,
    'without pictures of other sites',
    'take the picture out',
  ],
  [/\{%-?\s*(include|render|layout)\b[^%]*/gi, 'one file', 'put the other layout in here'],
];

function forbidden(source: SourceText | null, rules: readonly Rule[]): Problem[] {
  if (source === null) return [];
  return rules.flatMap(([pattern, expected, fix]) =>
    [...source.text.matchAll(pattern)].map(({ index, 0: found }) =>
      errorAt(placeAt(source, index), 'does-not-fit', { found: found.trim().slice(0, 60), expected, fix }),
    ),
  );
}

function withoutContent(source: SourceText | null): Problem[] {
  if (source === null || /\{\{-?\s*content\s*-?\}\}/.test(source.text)) return [];
  return [
    errorAt(placeAt(source, 0), 'does-not-fit', {
      found: 'a layout that shows no text',
      expected: 'a layout with {{ content }} in it',
      fix: 'write {{ content }} where the text of the page is to stand',
    }),
  ];
}
