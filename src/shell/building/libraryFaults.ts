/** Errors of a library that show only when it is used: poses no body takes, letters that cannot be printed, a logo that is no picture. */
import type { Clinic, Library } from '../../content/library.ts';
import type { Path } from '../../content/path.ts';
import type { Problem } from '../../content/problem.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { Logo } from '../io/logo.ts';
import type { Workspace } from '../io/workspace.ts';
import { layoutFaults } from './layoutFaults.ts';

/** All of them, for a build that must not begin. */
export async function libraryFaults(
  library: Library,
  logo: Logo,
  paper: PaperAssets,
  workspace: Workspace,
): Promise<Problem[]> {
  const { impossiblePoses } = await import('../../lint/poses.ts');
  return [
    ...impossiblePoses(library, workspace.placeOf),
    ...(await printFaults(library, logo, paper, workspace)),
  ];
}

/** Those of print alone, for `check`: its own rules know the poses. */
export async function printFaults(
  library: Library,
  logo: Logo,
  paper: PaperAssets,
  { placeOf, asProblem }: Workspace,
): Promise<Problem[]> {
  const [{ lettersMissing }, { sheetsOf }, { refuse }] = await Promise.all([
    import('../../outputs/pdf/letters.ts'),
    import('../../lint/text.ts'),
    import('../../lint/fieldPlace.ts'),
  ]);
  const printed = [
    ...sheetsOf({ ...library, pages: [] }).flatMap(({ kind, id, texts }) =>
      texts
        .filter(({ on }) => on === 'leaflet')
        .map(({ path, text }) => ({ field: { kind, id, path }, text })),
    ),
    ...clinicTexts(library.clinic).map(({ path, text }) => ({
      field: { kind: 'clinic' as const, id: 'clinic', path },
      text,
    })),
  ];
  const letters = printed.flatMap(({ field, text }) => {
    const missing = lettersMissing([text], paper.fonts);
    if (missing.length === 0) return [];
    const offset = text.indexOf(missing[0] ?? '');
    // Of a letter that is put together from two the whole text is the place.
    const at = offset < 0 ? field : { ...field, offset };
    return [refuse(placeOf, at, 'letter-not-in-font', wordsOf(missing, text))];
  });
  const layout = await layoutFaults(library);
  return [...('refusal' in logo ? [asProblem(logo.refusal)] : []), ...letters, ...layout];
}

// Every text of the emergency wording: which country a leaflet shows, the next consult decides.
function clinicTexts({ name, contact, emergency }: Clinic): { readonly path: Path; readonly text: string }[] {
  return [
    { path: ['name'], text: name },
    ...contact.map((text, index) => ({ path: ['contact', index], text })),
    ...Object.entries(emergency).flatMap(([country, wording]) =>
      // Foreign words stand in the texts too.
      Object.entries(wording).flatMap(([key, text]) =>
        typeof text === 'string' ? [{ path: ['emergency', country, key], text }] : [],
      ),
    ),
  ];
}

function wordsOf(missing: readonly string[], text: string) {
  const names = missing.map(
    (letter) => `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`,
  );
  return {
    found: `${names.join(', ')} in "${text}"`,
    expected: 'letters of the Latin alphabets, which the printed typeface has',
    fix: 'write the text with Latin letters and plain signs',
  };
}
