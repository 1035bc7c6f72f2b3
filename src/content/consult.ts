import type { Consult } from './library.ts';
import type { ProseSection } from './prose/block.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';

/** The consult; its id comes from its keys, whatever its file is called. */
export function consultOf(front: ConsultFrontMatter, notes: readonly ProseSection[]): Consult {
  return { ...front, id: consultId(front.alias, front.revision), notes };
}

/** @example consultId('otter', 2) // => 'otter-r2' */
export function consultId(alias: string, revision: number): string {
  return `${alias}-r${revision}`;
}
