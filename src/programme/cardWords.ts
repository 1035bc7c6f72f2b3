/** A card's words as far as they fit the dose: what is said of a weight only where there is one. */
import type { Messages } from '../messages/messages.ts';
import type { ExerciseCard } from '../content/library.ts';
import type { Block, Inline, ProseSection } from '../content/prose/block.ts';

import { plainText } from '../content/prose/plainText.ts';

export type CardWords = Pick<ExerciseCard, 'body' | 'cautions'>;

/** `weighted`: the dose carries a weight, or one is felt for. */
export function cardWords(
  say: Messages,
  { body: written, cautions, withWeight }: ExerciseCard,
  weighted: boolean,
): CardWords {
  const body = shownBody(say, written);
  if (weighted || withWeight.length === 0) return { body, cautions };
  return {
    body: body.map((section) => sectionWithout(section, withWeight)),
    cautions: cautions.map((caution) => without(caution, withWeight)).filter((caution) => caution !== ''),
  };
}

/** A card's text under the headings a reader sees. */
export function shownBody(say: Messages, body: ExerciseCard['body']): ExerciseCard['body'] {
  return body.map((section) => ({ ...section, heading: say.headingText(section.heading) }));
}

function sectionWithout(section: ProseSection, sentences: readonly string[]): ProseSection {
  return { ...section, blocks: section.blocks.flatMap((block) => blockWithout(block, sentences)) };
}

function blockWithout(block: Block, sentences: readonly string[]): Block[] {
  if (block.kind === 'paragraph') {
    const text = inlinesWithout(block.text, sentences);
    return plainText(text) === '' ? [] : [{ ...block, text }];
  }
  const entries = block.entries.flatMap((entry) => {
    const text = inlinesWithout(entry.text, sentences);
    return plainText(text) === '' ? [] : [{ ...entry, text }];
  });
  return entries.length === 0 ? [] : [{ ...block, entries }];
}

function inlinesWithout(inlines: readonly Inline[], sentences: readonly string[]): Inline[] {
  return inlines.map((inline) =>
    inline.kind === 'text'
      ? { ...inline, text: without(inline.text, sentences) }
      : { ...inline, children: inlinesWithout(inline.children, sentences) },
  );
}

function without(text: string, sentences: readonly string[]): string {
  const left = sentences.reduce((now, sentence) => now.replace(sentence, ''), text);
  return left === text ? text : left.replace(/ {2,}/g, ' ').trim();
}
