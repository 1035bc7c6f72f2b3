/** Whether a clinic's folder lies over the shipped library: its clinic file says so. */
import { CLINIC_FILE } from './kind.ts';
import type { SourceFile } from './source.ts';

// By its line alone, so that a slip elsewhere in the file does not make every shipped card seem missing.
const SAYS_OVER = /^over:[ \t]*(["']?)shipped\1[ \t]*(?:#.*)?$/m;

/** Whether it says anything of it. */
export const SAYS_WHETHER_OVER = /^over:[ \t]*\S/m;

/** Of the files of one folder. */
export function liesOverShipped(files: readonly SourceFile[]): boolean {
  const clinic = files.find(({ file }) => file === CLINIC_FILE);
  return clinic !== undefined && SAYS_OVER.test(new TextDecoder().decode(clinic.bytes).replaceAll('\r', ''));
}
