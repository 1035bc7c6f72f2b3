/** The sample library made good: `check` has nothing to say of it, so that what a test spoils stands alone. */
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { checkLibrary } from '../../src/lint/library.ts';
import { isoDate, type IsoDate } from '../../src/units/date.ts';
import { filesWith, SAMPLE } from '../content/sample.ts';

type Name = Exclude<keyof typeof SAMPLE, `consults/${string}`>;

const CARD_BODY = `## Set up

Lie on your back on a mat. Rest both feet flat, as wide as your hips. Let your arms lie beside you.

## Move

Lift your hips slowly until your body makes one line. Lower slowly to the height on your plan, and
turn there at once. Breathe all the way.

## Look out for

- Push the floor away with your feet
  1. do not drag your heels
  2. keep your hips level
- Stop when the back begins to work more than the buttocks.
`;

const STEP_BODY = `## Set up

Stand with your feet as wide as your hips. Put the band round both ankles.

## Move

Step to the side with one foot, slowly. Let the other foot follow just as slowly. Go as far as the
room allows, then come back the same way. Keep the band tight all the time.

## Look out for

Keep your toes facing forward and your hips level. Do not lean. Take smaller steps when you get
tired.
`;

/** Replaced in every file, so that sources are more than choice, words plain, and every slot fills for everybody. */
const MENDED: readonly (readonly [RegExp, string])[] = [
  [/mark: choice \}\n(?=reviewedOn|---)/g, 'mark: common-practice }\n'],
  [/Keep the pelvis level/g, 'Keep your hips level'],
  [/needs: \[get-to-the-floor, lie-supine\]/g, 'needs: []'],
  [/cards: \[single-leg-bridge, bridge\]/g, 'cards: [single-leg-bridge, bridge, band-walk]'],
  [/(?<=nextReviewOn: 2027-01-05\n---\n\n)[^]*Lift the pelvis[^]*/g, CARD_BODY],
  [/(?<=nextReviewOn: 2027-01-05\n---\n\n)[^]*Put the band[^]*/g, STEP_BODY],
];

export const GOOD = Object.fromEntries(
  Object.entries(SAMPLE).map(([file, text]) => [
    file,
    MENDED.reduce((mended, [what, by]) => mended.replace(what, () => by), text),
  ]),
) as typeof SAMPLE;

/** What `check` prints of the good library on a day, with one passage of one file replaced. */
export function checked(file: Name, passage: string, by: string, day = '2026-11-25'): string {
  if (!GOOD[file].includes(passage)) throw new Error(`${file} must hold ${JSON.stringify(passage)}`);
  return checkedWith({ [file]: GOOD[file].replace(passage, () => by) }, day);
}

/** What it prints with some texts changed, added, or taken out (null). */
export function checkedWith(changes: Readonly<Record<string, string | null>>, day = '2026-11-25'): string {
  const files = filesWith({ ...GOOD, ...changes });
  const { library, problems, placeOf } = readLibrary(files);
  if (library === null) throw new Error(problems.map((one) => problemText(one, null)).join('\n'));
  const lineOf = lineFinder(files);
  return checkLibrary(library, isoDate(day) as IsoDate, placeOf)
    .map((problem) => problemText(problem, lineOf(problem.file, problem.line)))
    .join('\n\n');
}
