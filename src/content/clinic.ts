import type { Clinic } from './library.ts';
import type { ProseSection } from './prose/block.ts';
import type { ClinicFrontMatter } from './schema/clinic.ts';

/** The clinic with what its file says about it. */
export function clinicOf(front: ClinicFrontMatter, body: readonly ProseSection[]): Clinic {
  return { ...front, body };
}
