/** `message.txt`: what the message says, to paste where a draft cannot be opened. */
import { labelsOf } from '../../messages/en/labels.ts';
import type { Posted } from '../../programme/programme.ts';
import { oneLineText } from '../../units/oneLineText.ts';
import type { AttachedKind } from './attachment.ts';

/** Where the sealed page lies, and whether it asks for words. */
export interface Link {
  readonly address: string;
  readonly hasWords: boolean;
}

/**
 * Paragraphs with an empty line between them; `attached` and `link` as they really are. A line feed after each line. The
 * last one is the mark of the set it belongs to, where the programme has one.
 */
export function messageText(
  { post: { message }, language, mark }: Pick<Posted, 'post' | 'language' | 'mark'>,
  attached: readonly AttachedKind[],
  link: Link | null,
): string {
  const paragraphs = [
    [message.greeting],
    ...(link === null ? [] : [linkLines(link, message.link)]),
    ...(attached.length === 0
      ? []
      : [[message.attached.intro, ...attached.map((kind) => `- ${message.attached[kind]}`)]]),
    ...(attached.length === 0 && link === null ? [[message.bare]] : []),
    message.contact,
    [message.emergency],
    message.closing,
    ...(mark === undefined ? [] : [[`${labelsOf(language).leaflet.mark} ${mark}`]]),
  ];
  return `${paragraphs.map((lines) => lines.map(oneLineText).join('\n')).join('\n\n')}\n`;
}

function linkLines({ address, hasWords }: Link, words: Posted['post']['message']['link']): string[] {
  return [words.intro, address, ...(hasWords ? [words.words] : []), words.after];
}
