/** One person's body as the planar model sees it. */

/** `massKg` 30-250, `heightM` 1.2-2.2; both feet and hands of ordinary proportion. */
export interface Body {
  readonly massKg: number;
  readonly heightM: number;
}

/** Used when a consult leaves out height or mass; the record then says so. Model figures in the rules are for this body [choice]. */
export const REFERENCE_BODY: Body = { massKg: 70, heightM: 1.75 };
