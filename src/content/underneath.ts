/** What changed underneath a clinic's own files: the library below as it was once, and as it is. */
import {
  type Extending,
  type OwnValue,
  isSetting,
  isSingle,
  stageAndSlot,
  toldPath,
} from './extending/extension.ts';
import { saysExtends } from './extending/saysExtends.ts';
import { withDefaults } from './extending/withDefaults.ts';
import { splitFile, type FrontMatter } from './frontMatter.ts';
import { FOLDERS } from './kind.ts';
import { keyOf } from './layers.ts';
import { placeOfValue } from './locate.ts';
import { pathText, valueAt, type Path } from './path.ts';
import { errorAt, sortProblems, type Place, type Problem } from './problem.ts';
import { protocolSchema } from './schema/protocol.ts';
import { decode, type SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/** The folders as they are: the clinic's own, and the shipped one below it. */
export interface Standing {
  readonly own: readonly SourceFile[];
  readonly below: readonly SourceFile[];
  readonly extending: ReadonlyMap<string, Extending>;
}

/**
 * A Problem for every value of the clinic's own whose value below is another than in `before`, for every slot it adds to
 * whose cards are others, and for every file it replaces or hides that is another. `before`: the files of the library
 * below as they were; of a protocol that is not among them nothing is said.
 */
export function changedUnderneath(
  { own, below, extending }: Standing,
  before: readonly SourceFile[],
): Problem[] {
  const changed = [...extending.values()].flatMap((one) => {
    const then = frontOf(before, `${FOLDERS.protocol}/${one.of}`);
    return then === null ? [] : valueProblems(one, heldIn(then.value));
  });
  return sortProblems([...changed, ...own.flatMap((file) => replacedProblems(file, below, before))]);
}

/** Whether `before` has anything that the clinic's own files stand on. */
export function standsOn({ own, extending }: Standing, before: readonly SourceFile[]): boolean {
  const keys = new Set(before.map(({ file }) => keyOf(file)));
  const bases = [...extending.values()].map(({ of }) => `${FOLDERS.protocol}/${of}`);
  return [...own.map(({ file }) => keyOf(file)), ...bases].some((key) => keys.has(key));
}

function frontOf(files: readonly SourceFile[], key: string): FrontMatter | null {
  const file = files.find((one) => keyOf(one.file) === key);
  const source = file === undefined ? null : decode(file).source;
  return source === null ? null : splitFile(source).front;
}

// With the defaults of today where nothing was written; a protocol that is read no more is taken as it is written.
function heldIn(values: unknown): unknown {
  const read = protocolSchema.safeParse(values);
  return read.success ? withDefaults(values, read.data) : values;
}

function valueProblems(
  { front, below, values, addedCards, hiddenCards }: Extending,
  then: unknown,
): Problem[] {
  const ofValues = values.flatMap((own, index) =>
    compared(placeOfValue(front, ['values', index]), `values[${index}]`, own, below, then),
  );
  const ofSlots = addedCards.flatMap(({ slot }, index) =>
    cardProblems(placeOfValue(front, ['addCards', index]), `addCards[${index}]`, slot, below, then),
  );
  const ofHidden = hiddenCards.flatMap((card, index) => {
    const [was, is] = [slotsOf(then, card), slotsOf(below, card)];
    const place = placeOfValue(front, ['hideCards', index]);
    return was === is
      ? []
      : [moved(place, `hideCards[${index}]`, `${card} fills ${is || 'no slot'}`, was || 'no slot')];
  });
  return [...ofValues, ...ofSlots, ...ofHidden];
}

function compared(
  place: Place,
  at: string,
  { path, value }: OwnValue,
  now: unknown,
  then: unknown,
): Problem[] {
  const [was, is] = [singleAt(then, path), singleAt(now, path)];
  const [whereThen, whereNow] = [stageAndSlot(then, path), stageAndSlot(now, path)];
  if (whereThen !== whereNow) return [moved(place, at, `in "${whereNow}"`, `in "${whereThen}"`)];
  if (was === is) return [];
  return [
    moved(
      place,
      at,
      `${toldPath(now, path)}, ${value} here and ${is ?? 'left out'} below`,
      String(was ?? 'left out'),
    ),
  ];
}

function cardProblems(place: Place, at: string, slot: Path, now: unknown, then: unknown): Problem[] {
  const cards = (values: unknown) => String(valueAt(values, [...slot, 'cards']) ?? 'no such slot');
  if (cards(now) === cards(then) && stageAndSlot(now, slot) === stageAndSlot(then, slot)) return [];
  return [moved(place, at, `added to a slot of ${cards(now)}`, `a slot of ${cards(then)}`)];
}

function slotsOf(values: unknown, card: string): string {
  const stages = valueAt(values, ['stages']);
  if (!Array.isArray(stages)) return '';
  return stages
    .flatMap((stage, s) => {
      const slots = valueAt(stage, ['slots']);
      if (!Array.isArray(slots)) return [];
      return slots.flatMap((slot, n) => {
        const cards = valueAt(slot, ['cards']);
        return Array.isArray(cards) && cards.includes(card) ? [pathText(['stages', s, 'slots', n])] : [];
      });
    })
    .join(', ');
}

function singleAt(values: unknown, path: Path) {
  const found = valueAt(values, path);
  const single = isSetting(found) ? valueAt(found, ['value']) : found;
  return isSingle(single) ? single : null;
}

function replacedProblems(
  file: SourceFile,
  below: readonly SourceFile[],
  before: readonly SourceFile[],
): Problem[] {
  const key = keyOf(file.file);
  // What changes a protocol is compared value by value.
  if (key === file.file || (key.startsWith(FOLDERS.protocol) && saysExtends(file) !== null)) return [];
  const [then, now] = [before, below].map((files) => files.find((one) => keyOf(one.file) === key));
  if (then === undefined || now === undefined || textOf(then) === textOf(now)) return [];
  const keys = changedKeys(frontOf([then], key)?.value, frontOf([now], key)?.value);
  const what = keys.length === 0 ? 'its text' : keys.join(', ');
  return [
    errorAt(topOf(file.file), 'shipped-changed', {
      found: `over a file of which ${what} changed`,
      expected: 'looked at again when the file below changes',
      fix: `read the file below, and take over what you want of it`,
    }),
  ];
}

function textOf(file: SourceFile): string {
  return new TextDecoder().decode(file.bytes).replaceAll('\r\n', '\n');
}

function changedKeys(then: unknown, now: unknown): string[] {
  const keys = [then, now].flatMap((values) => Object.keys((values ?? {}) as object));
  return [...new Set(keys)].filter(
    (key) => JSON.stringify(valueAt(then, [key])) !== JSON.stringify(valueAt(now, [key])),
  );
}

function moved(place: Place, path: string, found: string, was: string): Problem {
  return errorAt(place, 'shipped-changed', {
    path,
    found,
    expected: `what it was when it was changed here: ${was}`,
    fix: 'look whether the change still stands; then hold it against the library as it is now',
  });
}
