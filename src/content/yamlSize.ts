/** How much YAML a head holds, told before it is parsed: what follows takes its time for each key with each other. */

// The fullest protocol has 2,500 such marks; a head with four times as many is a list of something else.
const MOST_MARKS = 10_000;

const MARK = /\n|,|[[{]|[:?-](?=[ \t])/g;

/** Offset from which the head holds more keys, entries and lines than are meant, or null. Marks in texts count too. */
export function tooMuchAt(head: string): number | null {
  let marks = 0;
  for (const { index } of head.matchAll(MARK)) if (++marks > MOST_MARKS) return index;
  return null;
}

export const TOO_MUCH = {
  found: `more than ${MOST_MARKS} keys, list entries and lines`,
  expected: 'the keys of one card, protocol or consult',
  fix: 'take out what was pasted in by mistake, or divide the file',
} as const;
