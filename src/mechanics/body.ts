/** One person's body as the planar model sees it. */

/** `massKg` 30-250, `heightM` 1.2-2.2; both feet and hands of ordinary proportion. */
export interface Body {
  readonly massKg: number;
  readonly heightM: number;
  /** What the house sets about its muscles; left out, they are those of the published model: one strength for everybody, no floor. */
  readonly muscles?: MuscleSettings;
}

/** How greatest muscle force follows body mass, and what the hamstrings do at the least. */
export interface MuscleSettings {
  /** Body mass whose muscles have the published greatest forces, kg. */
  readonly baseMassKg: number;
  /** Lighter and heavier bodies count as of these masses, kg. */
  readonly massFromKg: number;
  readonly massToKg: number;
  /** Share of the hip's extension moment that the hamstrings take at least in active work, 0 to 1; 0: least effort alone. */
  readonly leastHamstringShare: number;
}

/** Used when a consult leaves out height or mass; the record then says so. Model figures in the rules are for this body [choice]. */
export const REFERENCE_BODY: Body = { massKg: 70, heightM: 1.75 };

/** Bodies the segment fractions may be stretched to, metres and kilograms [choice]. */
export const BODY_LIMITS = { heightM: [1.2, 2.2], massKg: [30, 250] } as const;

/** Which figure lies outside which limits, in its own unit. */
export interface BodyProblem {
  readonly figure: 'heightM' | 'massKg';
  readonly found: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The first figure of a body that the model must not be asked about, height before mass; null when it may.
 * @example bodyProblem({ massKg: 25, heightM: 1.4 }) // => { figure: 'massKg', found: 25, from: 30, to: 250 }
 */
export function bodyProblem(body: Body): BodyProblem | null {
  for (const figure of ['heightM', 'massKg'] as const) {
    const [from, to] = BODY_LIMITS[figure];
    const found = body[figure];
    // Written so that a number that is none is outside as well.
    if (!(found >= from && found <= to)) return { figure, found, from, to };
  }
  return null;
}
