/** Reads a protocol that extends another: holds every change against the protocol below, and the outcome against the schema. */
import { errorAt, sortProblems, type Problem } from '../problem.ts';
import { splitFile, type FrontMatter } from '../frontMatter.ts';
import { issueWords, problemsOf } from '../issue.ts';
import { listed } from '../inWords.ts';
import { placeOfValue, writtenAt } from '../locate.ts';
import { nearest } from '../nearest.ts';
import { pathText, valueAt, type Path } from '../path.ts';
import { type FileReading, bodyOf } from '../readFile.ts';
import { HEADINGS } from '../prose/headings.ts';
import { extensionSchema, type ExtensionFrontMatter, type Single } from '../schema/extension.ts';
import { protocolSchema, type ProtocolFrontMatter } from '../schema/protocol.ts';
import { schemaAt } from '../schema/schemaAt.ts';
import { decode, type SourceFile } from '../source.ts';
import { isSetting, isSingle, toldPath, withValue, type Extending, type OwnValue } from './extension.ts';
import { withSources } from './ownSources.ts';
import { slotCardsOf, withCard, withoutCard, withoutEmptied, withSlotCards } from './slotCards.ts';
import { withDefaults } from './withDefaults.ts';
import { valuePathTo } from './valuePath.ts';

type Reading = FileReading<'protocol'>;
/** The reading of a changed protocol, and what was changed; null where something is wrong. */
export type ExtendedReading = Reading & { readonly extending: Extending | null };

// Without a text of its own the protocol keeps the one below.
const OWN_BODY = { ...HEADINGS.protocol, required: false, mayBePlain: true };

/** `below`: the reading of the protocol of an id, null where there is none. `known`: the ids there are. */
export function readExtension(
  id: string,
  file: SourceFile,
  below: (id: string) => Reading | null,
  known: readonly string[],
): ExtendedReading {
  const { source, problems } = decode(file);
  const nothing = { file: file.file, value: null, body: [], front: null, links: [], extending: null };
  if (source === null) return { ...nothing, problems };
  const split = splitFile(source);
  if (split.front === null) return { ...nothing, problems: split.problems };
  const { front } = split;
  const parsed = extensionSchema.safeParse(front.value, { error: issueWords });
  const own = bodyOf(source, front.bodyOffset, OWN_BODY);
  const wrong = (more: readonly Problem[]) => ({
    ...nothing,
    front,
    problems: sortProblems([...split.problems, ...own.problems, ...more]),
  });
  if (front.value === undefined) return wrong([]);
  if (!parsed.success) return wrong(problemsOf(front, extensionSchema, parsed.error.issues));
  const base = below(parsed.data.extends);
  if (base === null) return wrong([noSuchProtocol(front, parsed.data.extends, known)]);
  // What is wrong with the protocol below is told of there.
  if (base.value === null || base.front === null) return wrong([]);
  const changed = changedBy(front, parsed.data, base.front, base.value);
  const all = [...split.problems, ...own.problems, ...changed.problems];
  return {
    file: file.file,
    value: all.length === 0 ? changed.value : null,
    body: own.sections.length === 0 ? base.body : own.sections,
    front: own.sections.length === 0 ? changed.front : withBody(changed.front, front),
    problems: sortProblems(all),
    links: own.links,
    extending: all.length === 0 ? { ...changed.extension, id, front, of: parsed.data.extends } : null,
  };
}

function withBody(changed: FrontMatter, own: FrontMatter): FrontMatter {
  return {
    ...changed,
    elsewhere: [...(changed.elsewhere ?? []), { path: ['body'], front: own, at: ['body'] }],
  };
}

interface Changed {
  readonly value: ProtocolFrontMatter | null;
  readonly front: FrontMatter;
  readonly problems: readonly Problem[];
  readonly extension: Omit<Extending, 'id' | 'of' | 'front'>;
}

function changedBy(
  front: FrontMatter,
  { values, addCards, hideCards }: ExtensionFrontMatter,
  baseFront: FrontMatter,
  base: ProtocolFrontMatter,
): Changed {
  const below = withDefaults(baseFront.value, base);
  const problems: Problem[] =
    values.length + addCards.length + hideCards.length > 0 ? [] : [changesNothing(front)];
  const own: OwnValue[] = [];
  const elsewhere: Elsewhere[] = [];
  let raw = below;
  values.forEach((entry, index) => {
    const read = ownValue(front, ['values', index], entry, below, own);
    if ('problem' in read) problems.push(read.problem);
    else {
      own.push(read.own);
      elsewhere.push({ path: read.own.path, front, at: ['values', index, 'value'] });
      raw = withValue(raw, read.isSetting ? [...read.own.path, 'value'] : read.own.path, entry.value);
    }
  });
  let lists = slotCardsOf(raw, (path) => elsewhere.find(isAt(path)) ?? { path, front: baseFront, at: path });
  hideCards.forEach((id, index) => {
    const at: Path = ['hideCards', index];
    const ids = [...new Set(lists.flatMap(({ cards }) => cards.map(({ card }) => card)))];
    if (!ids.includes(id)) problems.push(refused(front, at, notInSlots(id, ids)));
    lists = withoutCard(lists, id);
    const emptied = lists.find(({ isNeeded, cards }) => isNeeded && cards.length === 0);
    if (emptied !== undefined && ids.includes(id))
      problems.push(refused(front, at, lastOf(emptied.path, below)));
  });
  const added = addCards.flatMap(({ slot, card, place }, index) => {
    const at: Path = ['addCards', index];
    const way = valuePathTo(slot, below, protocolSchema);
    const list = 'path' in way ? lists.find(isAt(way.path)) : undefined;
    if (list === undefined) {
      problems.push(refused(front, [...at, 'slot'], 'path' in way ? NO_SLOT : way));
      return [];
    }
    if (list.cards.some((one) => one.card === card))
      problems.push(
        refused(front, [...at, 'card'], { expected: 'a card the slot has not', fix: 'take it out' }),
      );
    lists = withCard(lists, list.path, { card, front, at: [...at, 'card'] }, place);
    return [{ slot: list.path, card }];
  });
  const done = withSlotCards(raw, lists);
  for (const { path, cards } of lists)
    cards.forEach(({ front: own, at }, n) => placedAt(elsewhere, [...path, 'cards', n], own, at));
  const moved: FrontMatter = {
    ...baseFront,
    value: withSources(done, own),
    elsewhere: [...elsewhere, ...(baseFront.elsewhere ?? [])],
  };
  const parsed = protocolSchema.safeParse(done, { error: issueWords });
  if (!parsed.success && problems.length === 0)
    problems.push(...atOurs(problemsOf(moved, protocolSchema, parsed.error.issues), front, own));
  return {
    value: parsed.success ? withoutEmptied(withSources(parsed.data, own), lists) : null,
    front: moved,
    problems,
    extension: { values: own, addedCards: added, hiddenCards: hideCards, below },
  };
}

type Elsewhere = NonNullable<FrontMatter['elsewhere']>[number];

const NO_SLOT = {
  expected: 'the way to a slot',
  fix: 'write it as in stages[0].slots[0], or stages[name].slots[name]',
};

function isAt(path: Path): (one: { readonly path: Path }) => boolean {
  return (one) => pathText(one.path) === pathText(path);
}

function placedAt(elsewhere: Elsewhere[], path: Path, front: FrontMatter, at: Path): void {
  const known = elsewhere.findIndex(isAt(path));
  if (known >= 0) elsewhere.splice(known, 1);
  elsewhere.push({ path, front, at });
}

function notInSlots(id: string, ids: readonly string[]) {
  const meant = nearest(id, ids);
  return {
    expected: 'a card that fills a slot of the protocol',
    fix: meant === null ? 'take it out' : `write ${meant}`,
  };
}

function lastOf(slot: Path, below: unknown) {
  return {
    expected: `another card: ${toldPath(below, slot)} must be filled, and this is its last`,
    fix: 'add another card to the slot with addCards, or take this one out of hideCards',
  };
}

type Entry = ExtensionFrontMatter['values'][number];

function ownValue(
  front: FrontMatter,
  at: Path,
  entry: Entry,
  below: unknown,
  before: readonly OwnValue[],
): { readonly own: OwnValue; readonly isSetting: boolean } | { readonly problem: Problem } {
  const way = valuePathTo(entry.path, below, protocolSchema);
  const wrongPath = (words: { expected: string; fix: string }) => ({
    problem: refused(front, [...at, 'path'], words),
  });
  if (!('path' in way)) return wrongPath(way);
  const isOfSetting = isSetting(valueAt(below, way.path.slice(0, -1)));
  if (SOURCE_KEYS.includes(String(way.path.at(-1))) || way.path.at(-2) === 'source')
    return wrongPath({
      expected: 'the way to a value, not to its source',
      fix: 'change the value; mark and cite beside it are its source',
    });
  const path = isOfSetting ? way.path.slice(0, -1) : way.path;
  const found = valueAt(below, path);
  const held = isSetting(found) ? valueAt(found, ['value']) : found;
  const isAbsent = held === undefined && isSingleKind(path);
  if (!isSingle(held) && !isAbsent)
    return wrongPath({
      expected: 'the way to a single value',
      fix: `change its values one by one${keysIn(held)}`,
    });
  if (before.some((one) => pathText(one.path) === pathText(path)))
    return wrongPath({ expected: 'changed once', fix: 'take one of the two entries out' });
  const shipped = isSingle(held) ? held : null;
  if (entry.was !== undefined && entry.was !== shipped)
    return { problem: noLonger(front, [...at, 'was'], entry.was, shipped) };
  const asksSource = isSetting(found) || [typeof shipped, typeof entry.value].includes('number');
  const missing = (['mark', 'cite'] as const).find((key) => entry[key] === undefined);
  if (asksSource && missing !== undefined) return { problem: noSource(front, at, missing, entry.value) };
  const { value, mark, cite } = entry;
  return { own: { path, shipped, value, mark, cite }, isSetting: isSetting(found) };
}

const SOURCE_KEYS: readonly string[] = ['mark', 'cite', 'source'];

/** Whether the schema takes one value at a path where nothing is written. */
function isSingleKind(path: Path): boolean {
  const schema = schemaAt(protocolSchema, path);
  return schema !== null && ['number', 'int', 'string', 'enum', 'union', 'boolean'].includes(schema.def.type);
}

function keysIn(held: unknown): string {
  if (typeof held !== 'object' || held === null || Array.isArray(held)) return '';
  return `: ${listed(Object.keys(held), 'or')}`;
}

function refused(front: FrontMatter, path: Path, words: { expected: string; fix: string }): Problem {
  return errorAt(placeOfValue(front, path), 'does-not-fit', {
    path: pathText(path),
    found: writtenAt(front, path),
    expected: words.expected,
    fix: words.fix,
  });
}

function changesNothing(front: FrontMatter): Problem {
  return errorAt(placeOfValue(front, ['extends']), 'does-not-fit', {
    path: 'extends',
    found: 'alone',
    expected: 'said together with values, addCards or hideCards',
    fix: 'say what is changed, or delete the file',
  });
}

function noLonger(front: FrontMatter, path: Path, was: Single, shipped: Single | null): Problem {
  return errorAt(placeOfValue(front, path), 'shipped-changed', {
    path: pathText(path),
    found: String(was),
    expected:
      shipped === null ? 'left out, for it is not there below' : `${String(shipped)}, what it is below`,
    fix: `look whether your value still stands, then write was: ${String(shipped)}`,
  });
}

function noSource(front: FrontMatter, at: Path, key: 'mark' | 'cite', value: Single): Problem {
  const path = [...at, key];
  return errorAt(placeOfValue(front, at), 'missing-key', {
    path: pathText(path),
    found: 'missing',
    expected: key === 'mark' ? 'how sure you are of a changed number' : 'the source of a changed number',
    fix:
      key === 'mark'
        ? 'add mark: read, secondary, memory, choice or common-practice'
        : `add cite: where ${String(value)} comes from, or the words house choice`,
  });
}

function noSuchProtocol(front: FrontMatter, id: string, known: readonly string[]): Problem {
  const meant = nearest(id, known);
  return errorAt(placeOfValue(front, ['extends']), 'no-such-card', {
    path: 'extends',
    found: id,
    expected: 'the id of another protocol of this library, or of this one in the library below',
    fix:
      meant === null
        ? `name one that is there${known.length === 0 ? '' : `: ${listed(known, 'or')}`}; the shipped ones are there with over: shipped in clinic.md`
        : `write ${meant}`,
  });
}

/** Errors that the changes brought about, at the change that is nearest: nobody can mend the protocol below. */
function atOurs(problems: readonly Problem[], front: FrontMatter, own: readonly OwnValue[]): Problem[] {
  return problems.map((problem) => {
    if (problem.file === front.source.file) return problem;
    const shared = own.map(({ path }) => sharedLength(pathText(path), problem.path));
    const nearestOwn = shared.indexOf(Math.max(...shared));
    const place = placeOfValue(front, own.length === 0 ? ['extends'] : ['values', nearestOwn, 'value']);
    return { ...problem, ...place, found: `${problem.found}, with this change` };
  });
}

function sharedLength(one: string, other: string): number {
  const at = [...one].findIndex((letter, index) => letter !== other[index]);
  return at < 0 ? one.length : at;
}
