/**
 * What a room right of `content` returns instead of a value when an author's input cannot be carried out.
 * `content/place.ts` turns id and path into file, line and column, so that it prints like any other Problem.
 */
export interface Refusal {
  readonly code: string;
  /** The content file's kind and id, for example `consult otter` or `protocol proximal-hamstring`. */
  readonly kind: 'consult' | 'exercise' | 'protocol' | 'advice' | 'clinic' | 'page';
  readonly id: string;
  /** Keys and indices into the front matter, outermost first. */
  readonly path: readonly (string | number)[];
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}
