export interface MutantRoom {
  readonly name: string;
  /** Folders and files. */
  readonly files: readonly string[];
  /** Patterns of what its mutants are put to. */
  readonly tests: readonly string[];
}
export const ROOMS: readonly MutantRoom[];
/** The first room that names the file. */
export function roomOf(file: string): MutantRoom | null;
