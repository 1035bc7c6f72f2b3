/** The slots of the stage: what stands in each, and what could. */
import type { SlotOffer } from '../talk.ts';

export function Slots({ slots }: { slots: readonly SlotOffer[] }) {
  return (
    <ol class="slots">
      {slots.map(({ slot, card }) => (
        <li key={slot}>
          {slot}: {card}
        </li>
      ))}
    </ol>
  );
}
