/** The shipped cards in the invented language: a file of words beside each, every sentence between two marks. */
import { parse, stringify } from 'yaml';
import type { SourceFile } from '../../src/content/source.ts';
import { CLOSE, OPEN } from './pseudo.ts';
import { filesBelow } from './shipped.ts';

interface Head {
  readonly title: string;
  readonly alsoCalled?: readonly string[];
  readonly landmark?: string;
  readonly cautions?: readonly string[];
  readonly withWeight?: readonly string[];
  readonly photos?: readonly { readonly alt: string }[];
  readonly givesWay?: readonly {
    readonly entry: string;
    readonly when: unknown;
    readonly instead?: string;
  }[];
}

const mark = (text: string) => `${OPEN}${text}${CLOSE}`;

/** English is the only language the reader knows; here its files hold the invented one. */
export function pseudoCards(): SourceFile[] {
  return filesBelow('content', 'consults/')
    .filter(({ file }) => /^(exercises|advice)\//.test(file))
    .map(({ file, bytes }) => {
      const [, head = '', body = ''] = new TextDecoder().decode(bytes).split(/^---\n/m);
      const words = stringify(wordsOf(parse(head) as Head), { lineWidth: 0 });
      const text = `---\n${words}---\n${marked(body)}`;
      return { file: file.replace(/\.md$/, '.en.md'), bytes: new TextEncoder().encode(text), link: 'no' };
    });
}

function wordsOf({
  title,
  alsoCalled,
  landmark,
  cautions,
  withWeight,
  photos,
  givesWay,
}: Head): Partial<Head> {
  return {
    title: mark(title),
    ...(alsoCalled === undefined ? {} : { alsoCalled: alsoCalled.map(mark) }),
    ...(landmark === undefined ? {} : { landmark: mark(landmark) }),
    ...(cautions === undefined ? {} : { cautions: cautions.map(mark) }),
    // They are found letter for letter within the marked ones.
    ...(withWeight === undefined ? {} : { withWeight }),
    ...(photos === undefined ? {} : { photos: photos.map((one) => ({ ...one, alt: mark(one.alt) })) }),
    ...(givesWay === undefined
      ? {}
      : {
          givesWay: givesWay.map(({ entry, instead, ...one }) => ({
            ...one,
            entry: mark(entry),
            ...(instead === undefined ? {} : { instead: mark(instead) }),
          })),
        }),
  };
}

/** Every paragraph and list entry, a line each; headings stay, by which the text is read. */
function marked(body: string): string {
  const lines = body.replace(/\n(?!\n|#|\s*-|\s*\d+\.)[ \t]*(?=\S)/g, (found, at: number) =>
    /\n$/.test(body.slice(0, at)) || at === 0 ? found : ' ',
  );
  return lines.replace(
    /^(\s*(?:- |\d+\. )?)(?!#)(\S.*)$/gm,
    (_, before: string, text: string) => before + mark(text),
  );
}
