/** Reads our markup back without the code that wrote it: tags, attributes and text as a browser takes them. */

export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Text up to the next tag. */
  readonly text: string;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Every opening tag in order, style and script left out. */
export function tagsOf(markup: string): Tag[] {
  const body = markup.replace(/<(style|script)>[^]*?<\/\1>/g, '');
  return [...body.matchAll(/<([a-zA-Z][\w-]*)((?:\s+[\w:-]+(?:="[^"]*")?)*)\s*\/?>([^<]*)/g)].map(
    ([, name = '', attributes = '', text = '']) => ({
      name,
      attributes: Object.fromEntries(
        [...attributes.matchAll(/([\w:-]+)(?:="([^"]*)")?/g)].map(([, key = '', value = '']) => [
          key,
          unescaped(value),
        ]),
      ),
      text: unescaped(text),
    }),
  );
}

/** All text of the page, white space as one blank, attributes that are spoken included. */
export function wordsOf(markup: string): string {
  const body = markup.replace(/<(style|script)>[^]*?<\/\1>/g, '');
  const spoken = [...body.matchAll(/(?:aria-label|data-to-dark|data-to-light)="([^"]*)"/g)].map(
    ([, text = '']) => text,
  );
  return squeezed(unescaped(`${body.replace(/<[^>]*>/g, '')} ${spoken.join(' ')}`));
}

export function squeezed(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

export function unescaped(text: string): string {
  return text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ENTITIES[name] ?? '');
}
