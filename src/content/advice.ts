import type { AdviceCard } from './library.ts';
import type { ProseSection } from './prose/block.ts';
import type { AdviceFrontMatter } from './schema/advice.ts';

/** The advice card with the id of its file. */
export function adviceCard(id: string, front: AdviceFrontMatter, body: readonly ProseSection[]): AdviceCard {
  return { ...front, id, body };
}
