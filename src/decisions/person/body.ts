/** The body the model is asked about: a person's own, or the reference body, with the clinic's settings of its muscles. */
import type { Clinic, Consult } from '../../content/library.ts';
import { REFERENCE_BODY, type Body, type MuscleSettings } from '../../mechanics/body.ts';

/** A height or mass that was not recorded is that of the reference body. */
export function bodyOf({ heightM, massKg }: Pick<Consult, 'heightM' | 'massKg'>, clinic: Clinic): Body {
  return {
    heightM: heightM ?? REFERENCE_BODY.heightM,
    massKg: massKg ?? REFERENCE_BODY.massKg,
    muscles: muscleSettings(clinic.muscles),
  };
}

/** The body of the public pages and of what is asked of cards when no person is known. */
export function referenceBody(clinic: Clinic): Body {
  return { ...REFERENCE_BODY, muscles: muscleSettings(clinic.muscles) };
}

/** The clinic's settings as mechanics takes them, without their marks. */
export function muscleSettings({
  baseMassKg,
  massFromKg,
  massToKg,
  leastHamstringShare,
}: Clinic['muscles']): MuscleSettings {
  return {
    baseMassKg: baseMassKg.value,
    massFromKg: massFromKg.value,
    massToKg: massToKg.value,
    leastHamstringShare: leastHamstringShare.value,
  };
}
