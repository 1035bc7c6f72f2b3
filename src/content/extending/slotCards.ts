/** The cards of every slot while they are changed, each with the place where somebody wrote it. */
import type { FrontMatter } from '../frontMatter.ts';
import { pathText, valueAt, type Path } from '../path.ts';
import type { ProtocolFrontMatter } from '../schema/protocol.ts';
import { withValue } from './extension.ts';

export interface PlacedCard {
  readonly card: string;
  readonly front: FrontMatter;
  readonly at: Path;
}

export interface SlotCards {
  /** Of the slot. */
  readonly path: Path;
  readonly isNeeded: boolean;
  readonly cards: readonly PlacedCard[];
}

/** `placeOf`: where the value at a path was written. */
export function slotCardsOf(values: unknown, placeOf: (path: Path) => Omit<PlacedCard, 'card'>): SlotCards[] {
  return entriesOf(values, ['stages']).flatMap((stage) =>
    entriesOf(values, [...stage, 'slots']).map((path) => ({
      path,
      isNeeded: [true, 'yes'].includes(valueAt(values, [...path, 'needed']) as boolean | string),
      cards: entriesOf(values, [...path, 'cards']).map((at) => {
        const place = placeOf(at);
        return { card: String(valueAt(values, at)), front: place.front, at: place.at };
      }),
    })),
  );
}

function entriesOf(values: unknown, path: Path): Path[] {
  const list = valueAt(values, path);
  return Array.isArray(list) ? list.map((_, index) => [...path, index]) : [];
}

export function withoutCard(lists: readonly SlotCards[], id: string): SlotCards[] {
  return lists.map((list) => ({ ...list, cards: list.cards.filter(({ card }) => card !== id) }));
}

export function withCard(
  lists: readonly SlotCards[],
  slot: Path,
  card: PlacedCard,
  place: 'first' | 'last',
): SlotCards[] {
  return lists.map((list) => {
    if (pathText(list.path) !== pathText(slot)) return list;
    return { ...list, cards: place === 'first' ? [card, ...list.cards] : [...list.cards, card] };
  });
}

/** The values with these cards. A slot without any keeps what it had, so that the others keep their places. */
export function withSlotCards(values: unknown, lists: readonly SlotCards[]): unknown {
  return lists.reduce(
    (done, { path, cards }) =>
      cards.length === 0
        ? done
        : withValue(
            done,
            [...path, 'cards'],
            cards.map(({ card }) => card),
          ),
    values,
  );
}

/** A slot that need not be filled goes with its last card. */
export function withoutEmptied(
  protocol: ProtocolFrontMatter,
  lists: readonly SlotCards[],
): ProtocolFrontMatter {
  const emptied = lists.filter(({ cards }) => cards.length === 0).map(({ path }) => pathText(path));
  const stages = protocol.stages.map((stage, s) => ({
    ...stage,
    slots: stage.slots.filter((_, n) => !emptied.includes(pathText(['stages', s, 'slots', n]))),
  }));
  return { ...protocol, stages };
}
