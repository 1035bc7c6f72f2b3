/** The scales that cards are set on when no person is known: the caps of the library's own protocols. */
import type { Library, Stage } from '../content/library.ts';
import type { POSITIONS } from '../content/schema/words.ts';
import type { Marks, Word } from '../decisions/terms/scale.ts';

export interface Scale {
  /** Hip bends at which a stage of any protocol begins or ends, degrees, ascending. */
  readonly bendsDeg: readonly number[];
  /** Null when no protocol caps it. */
  readonly squeezeBw: Marks | null;
  readonly pullBw: Marks | null;
  /** Factor on squeeze and pull for cards with two supports: the largest that a stage with a squeeze cap uses. */
  readonly supportMargin: number;
}

/** Of two protocols with caps the smaller counts, so that a word never sounds milder than on a leaflet. */
export function scaleOf({ protocols }: Library): Scale {
  const staged = [...protocols.values()].map(({ stages }) => stages);
  return {
    bendsDeg: ascending(staged.flat().flatMap(bendsOf)),
    squeezeBw: marksOf(staged, 'compressionBw'),
    pullBw: marksOf(staged, 'tensionBw'),
    supportMargin: Math.max(
      1,
      ...staged.flat().flatMap((stage) => (stage.caps.compressionBw === null ? [] : stage.supportMargin)),
    ),
  };
}

/** Null stands for no estimate. */
export function wordOf(valueBw: number | null, marks: Marks | null): Word {
  if (valueBw === null || marks === null) return 'unknown';
  return valueBw <= marks.low ? 'low' : valueBw <= marks.middle ? 'middle' : 'high';
}

/** The words of a list in the order in which the schema names them. */
export function inOrder<T extends string>(words: Iterable<T>, order: readonly T[]): readonly T[] {
  const there = new Set(words);
  return order.filter((word) => there.has(word));
}

/** Positions that lead the work with the knee, where the model under-estimates the hamstrings. */
export const KNEE_LED: readonly (typeof POSITIONS)[number][] = ['squat', 'lunge', 'step'];

// Low up to the cap of a first stage, middling up to that of a second.
function marksOf(staged: readonly (readonly Stage[])[], cap: 'compressionBw' | 'tensionBw'): Marks | null {
  const ladders = staged
    .map((stages) => stages.flatMap(({ caps }) => caps[cap] ?? []))
    .filter((caps) => caps.length >= 2);
  const least = (index: number) => Math.min(...ladders.map((caps) => caps[index] ?? Infinity));
  return ladders.length === 0 ? null : { low: least(0), middle: least(1) };
}

function bendsOf({ caps, opensToDeg }: Stage): readonly number[] {
  if (caps.angle !== 'hipFlexion') return [];
  return [caps.angleDeg, opensToDeg].flatMap((deg) => deg ?? []);
}

function ascending(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}
