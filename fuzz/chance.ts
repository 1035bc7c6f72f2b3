/** Chance that can be had again: the same seed, family and number give the same case, whatever ran before it. */

export interface Chance {
  /** A whole number from 0 to below `end`. */
  below(end: number): number;
  /** One of a list; throws where it is empty. */
  of<T>(list: readonly T[]): T;
  /** Whether something happens that does so once in `times`. */
  onceIn(times: number): boolean;
}

export function chanceOf(seed: number, family: string, number: number): Chance {
  let state = hashOf(`${seed} ${family} ${number}`);
  const below = (end: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    return Math.floor((mixed(state) / 2 ** 32) * end);
  };
  return {
    below,
    of: (list) => {
      if (list.length === 0) throw new Error('nothing to choose from');
      return list[below(list.length)] as (typeof list)[number];
    },
    onceIn: (times) => below(times) === 0,
  };
}

// FNV-1a, 32 bits.
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const character of text) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return hash;
}

// The output step of mulberry32.
function mixed(state: number): number {
  let bits = Math.imul(state ^ (state >>> 15), state | 1);
  bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
  return (bits ^ (bits >>> 14)) >>> 0;
}
