/** What a starter takes from the library it is written into: cards that are there, its dates, and what there is to choose from. */
import { CLINIC_FILE, FOLDERS } from '../../content/kind.ts';
import { readFile } from '../../content/readFile.ts';
import { readFolder as readKind } from '../../content/readFolder.ts';
import type { SourceFile } from '../../content/source.ts';
import { addDays, type IsoDate } from '../../units/date.ts';
import { EXIT } from '../exit.ts';
import { starterText } from '../io/assets.ts';
import type { Filling, StarterKind, StarterName } from '../../drafting/starter.ts';
import { Stop } from '../io/stop.ts';

const REVIEW_AFTER_DAYS = 365;
const FIRST_PROGRAMME_DAYS = 21;

/** `files`: those of the library it is written into. Stops with 66 where a protocol is wanted without a card, or a consult without a protocol. */
export function fillingFor(
  kind: StarterKind,
  files: readonly SourceFile[],
  name: StarterName,
  today: IsoDate,
): readonly Filling[] {
  if (kind === 'exercise')
    return [
      { path: ['reviewedOn'], value: today },
      { path: ['nextReviewOn'], value: addDays(today, REVIEW_AFTER_DAYS) },
    ];
  if (kind === 'advice') return [];
  return kind === 'protocol' ? protocolFilling(files) : consultFilling(files, name, today);
}

// Of the shipped starter's cards those that are there; where none is, the first card of the library stands in.
function protocolFilling(files: readonly SourceFile[]): Filling[] {
  const known = [...readKind(files, 'exercise').files.keys()];
  const [first] = known;
  if (first === undefined)
    throw new Stop(
      EXIT.noSuchFile,
      'a protocol names cards, and there is none yet: loadleaf new exercise <id>',
    );
  const shipped = readFile(shippedFile(), 'protocol').value;
  if (shipped === null) throw new Error('the shipped starter of a protocol must be right');
  const thereOf = (cards: readonly string[]) => {
    const there = cards.filter((card) => known.includes(card));
    return there.length > 0 ? there : [first];
  };
  const slots = shipped.stages.flatMap(({ slots: own }, stage) =>
    own.map(({ cards }, slot) => ({
      path: ['stages', stage, 'slots', slot, 'cards'],
      value: thereOf(cards),
    })),
  );
  return [
    ...slots,
    { path: ['morningCheck', 'card'], value: thereOf([shipped.morningCheck.card])[0] ?? first },
  ];
}

function shippedFile(): SourceFile {
  const bytes = new TextEncoder().encode(starterText('protocol'));
  return { file: `${FOLDERS.protocol}/starter.md`, bytes, link: 'no' };
}

function consultFilling(
  files: readonly SourceFile[],
  { alias, revision }: StarterName,
  today: IsoDate,
): Filling[] {
  if (readKind(files, 'protocol').cards.length === 0)
    throw new Stop(
      EXIT.noSuchFile,
      'a consult names a protocol, and there is none that is right yet: loadleaf new protocol <id>',
    );
  const startOn = addDays(today, 1);
  return [
    { path: ['alias'], value: alias },
    { path: ['revision'], value: revision },
    { path: ['seenOn'], value: today },
    { path: ['startOn'], value: startOn },
    { path: ['reviewOn'], value: addDays(startOn, FIRST_PROGRAMME_DAYS) },
  ];
}

/** Said before a key of a consult: what there is to choose from. Nothing is chosen for anybody. */
export function hintsFor(kind: StarterKind, files: readonly SourceFile[]): ReadonlyMap<string, string> {
  if (kind !== 'consult') return new Map();
  const { cards } = readKind(files, 'protocol');
  const countries = countriesIn(files);
  const tests = cards.map(({ id, value }) => `${id}: ${value.tests.map((test) => test.id).join(', ')}`);
  return new Map([
    ['protocol', `There are: ${cards.map(({ id }) => id).join(', ')}.`],
    ...(countries.length === 0 ? [] : [['country', `There are: ${countries.join(', ')}.`] as const]),
    ['screen', 'Nobody was asked yet: ask every item, and write no or yes.'],
    ...['heightM', 'massKg', 'symptomWeeks', 'painArea'].map((key) => [key, NOT_KNOWN] as const),
    ...['cannotDo', 'kit', 'changedBefore'].map((key) => [key, NOTHING] as const),
    ['tests', `Tests there are: ${tests.join('; ')}.`],
  ]);
}

const NOT_KNOWN = 'Take the line out where it is not known.';
const NOTHING = 'Of a list write [] where there is nothing.';

function countriesIn(files: readonly SourceFile[]): readonly string[] {
  const clinic = files.find(({ file }) => file === CLINIC_FILE);
  const value = clinic === undefined ? null : readFile(clinic, 'clinic').value;
  return value === null ? [] : Object.keys(value.emergency);
}
