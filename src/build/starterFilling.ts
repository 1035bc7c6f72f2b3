/** What a starter takes from the library it is written into: cards, tests and countries that are there, and its dates. */
import { CLINIC_FILE, FOLDERS } from '../content/kind.ts';
import { readFile } from '../content/readFile.ts';
import { readFolder as readKind } from '../content/readFolder.ts';
import type { SourceFile } from '../content/source.ts';
import { addDays, type IsoDate } from '../units/date.ts';
import { EXIT } from './exit.ts';
import { starterText } from './shelf.ts';
import type { Filling, StarterKind, StarterName } from './starter.ts';
import { Stop } from './stop.ts';

const REVIEW_AFTER_DAYS = 365;
const FIRST_PROGRAMME_DAYS = 21;
const HOUSE_PROTOCOL = 'proximal-hamstring';

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
  const { cards: protocols } = readKind(files, 'protocol');
  // The shipped consult is of the hamstring tendon; where that protocol is gone, any for a tendon at the hip, or any.
  const protocol =
    protocols.find(({ id }) => id === HOUSE_PROTOCOL) ??
    protocols.find(({ value }) => value.angle === 'hipFlexion') ??
    protocols[0];
  if (protocol === undefined)
    throw new Stop(
      EXIT.noSuchFile,
      'a consult names a protocol, and there is none that is right yet: loadleaf new protocol <id>',
    );
  const test = protocol.value.tests.find(({ lowFlexion }) => lowFlexion) ?? protocol.value.tests[0];
  const country = countryIn(files);
  const startOn = addDays(today, 1);
  return [
    { path: ['alias'], value: alias },
    { path: ['revision'], value: revision },
    { path: ['seenOn'], value: today },
    { path: ['startOn'], value: startOn },
    { path: ['reviewOn'], value: addDays(startOn, FIRST_PROGRAMME_DAYS) },
    { path: ['protocol'], value: protocol.id },
    ...(country === null ? [] : [{ path: ['country'], value: country }]),
    { path: ['tests', 0, 'test'], value: test?.id ?? protocol.value.morningCheck.card },
  ];
}

function countryIn(files: readonly SourceFile[]): string | null {
  const clinic = files.find(({ file }) => file === CLINIC_FILE);
  const value = clinic === undefined ? null : readFile(clinic, 'clinic').value;
  return value === null ? null : (Object.keys(value.emergency)[0] ?? null);
}
