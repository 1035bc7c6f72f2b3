/** Asks whether a folder that reads like a few changes to the shipped library was meant to lie over it. */
import { FOLDERS, CLINIC_FILE } from './kind.ts';
import { keyOf } from './layers.ts';
import { SAYS_WHETHER_OVER } from './over.ts';
import { topOf } from './sourceText.ts';
import { warningAt, type Problem } from './problem.ts';
import type { SourceFile } from './source.ts';

/**
 * A warning at `clinic.md` when the folder holds a file of the name of a shipped one, but fewer than half as many cards,
 * and does not say `over`. A copy of the whole library is nobody's slip.
 */
export function overAsked(own: readonly SourceFile[], shipped: readonly SourceFile[]): Problem[] {
  const clinic = own.find(({ file }) => file === CLINIC_FILE);
  if (
    clinic === undefined ||
    SAYS_WHETHER_OVER.test(new TextDecoder().decode(clinic.bytes).replaceAll('\r', ''))
  )
    return [];
  const names = new Set(shipped.map(({ file }) => keyOf(file)).filter(isOfLibrary));
  const same = own.map(({ file }) => keyOf(file)).find((key) => names.has(key));
  if (same === undefined || 2 * cardsOf(own) >= cardsOf(shipped)) return [];
  return [
    warningAt(topOf(clinic.file), 'over-shipped', {
      path: 'over',
      found: 'missing',
      expected: `said where a file has the name of a shipped one, as ${same}.md has`,
      fix: 'did you mean over: shipped? Write it to lay this folder over the shipped library, or over: nothing for a library of its own',
    }),
  ];
}

function isOfLibrary(key: string): boolean {
  return key.includes('/') && !key.startsWith('pages/');
}

function cardsOf(files: readonly SourceFile[]): number {
  return files.filter(({ file }) => file.startsWith(`${FOLDERS.exercise}/`) && file.endsWith('.md')).length;
}
