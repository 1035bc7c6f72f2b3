/** An answer that is no number: a dose is either decided or refused with its reason, never guessed. */
export interface None<Why> {
  readonly none: true;
  readonly why: Why;
}

/** The refusal for a reason. @example none('pain') // => { none: true, why: 'pain' } */
export function none<Why>(why: Why): None<Why> {
  return { none: true, why };
}
