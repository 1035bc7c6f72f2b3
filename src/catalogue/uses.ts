/** Where protocols use a card. */
import type { Library, Protocol, Stage } from '../content/library.ts';

export interface Use {
  readonly protocol: Protocol;
  readonly stage: Stage;
  /** Counted from 0. */
  readonly index: number;
  readonly slot: string;
}

/** Every slot that names the card, in the order of protocols and stages; empty for a card that none uses. */
export type Uses = ReadonlyMap<string, readonly Use[]>;

export function usesOf({ protocols }: Library): Uses {
  const uses = new Map<string, Use[]>();
  for (const protocol of protocols.values())
    for (const [index, stage] of protocol.stages.entries())
      for (const slot of stage.slots)
        for (const card of slot.cards) {
          const known = uses.get(card) ?? [];
          uses.set(card, [...known, { protocol, stage, index, slot: slot.name }]);
        }
  return uses;
}

/** The value of a stage in the index's filter and in addresses. @example stageFacet('proximal-hamstring', 0) // => 'proximal-hamstring-1' */
export function stageFacet(protocol: string, index: number): string {
  return `${protocol}-${index + 1}`;
}
