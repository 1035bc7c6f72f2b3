/** An answer that is no number: a dose is either decided or refused with its reason, never guessed. */
export interface DoseRefusal<Why> {
  readonly none: true;
  readonly why: Why;
}

/** The refusal for a reason. @example none('pain') // => { none: true, why: 'pain' } */
export function refuseDose<Why>(why: Why): DoseRefusal<Why> {
  return { none: true, why };
}
