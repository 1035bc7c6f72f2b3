/** What was worked out for a text, kept for each style and width it came in. */

/** Cases by text. The texts are a leaflet's own words: they are kept until `forgetWords`. */
export type Memory<Case = unknown> = Map<string, Case[]>;

/** Texts kept before starting afresh; a leaflet has about a thousand. */
const MEMORY_TEXTS = 3_000;

/** The case of this text that fits; the first time it is made. */
export function recall<Case>(
  memory: Memory<Case>,
  text: string,
  fits: (known: Case) => boolean,
  make: () => Case,
): Case {
  const cases = memory.get(text);
  const known = cases?.find(fits);
  if (known !== undefined) return known;
  const made = make();
  if (cases) cases.push(made);
  else {
    if (memory.size >= MEMORY_TEXTS) memory.clear();
    memory.set(text, [made]);
  }
  return made;
}
