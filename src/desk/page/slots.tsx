/** The slots of the stage: what stands in each, what could, and what could not with its limit. */
import { useState } from 'preact/hooks';
import { addedSlotName } from '../../decisions/person/ownStage.ts';
import { byDecisionText, SLOT_WORDS } from '../../messages/en/desk/slots.ts';
import type { Offer, SlotOffer } from '../talk.ts';
import { listAt, set, setAll } from './state.ts';
import { focusSoon } from './control.ts';

export function Slots({ slots }: { slots: readonly SlotOffer[] }) {
  return (
    <ol class="slots">
      {slots.map((one) => (
        <SlotOf key={one.slot} offer={one} />
      ))}
    </ol>
  );
}

function SlotOf({ offer: { slot, card, title, isOwn, fits, others } }: { offer: SlotOffer }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <li>
      <p class="slotline">
        <span>
          {title === null ? <i class="quiet">{SLOT_WORDS.none}</i> : <b>{title}</b>}{' '}
          <span class="quiet">
            {slot}
            {isOwn ? SLOT_WORDS.chosenHere : ''}
          </span>
        </span>
        <span class="presses">
          <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {SLOT_WORDS.another}
          </button>
          {isOwn ? (
            <button type="button" onClick={() => giveBack(slot, card)}>
              {SLOT_WORDS.asProposed}
            </button>
          ) : null}
          {card === null || isOwn ? null : (
            <button type="button" onClick={() => leaveOut(card)}>
              {SLOT_WORDS.leaveOut}
            </button>
          )}
        </span>
      </p>
      {isOpen ? <Offers slot={slot} fits={fits} others={others} close={() => setOpen(false)} /> : null}
    </li>
  );
}

function Offers({
  slot,
  fits,
  others,
  close,
}: Pick<SlotOffer, 'slot' | 'fits' | 'others'> & { close: () => void }) {
  const take = (offer: Offer) => {
    choose(slot, offer);
    close();
  };
  return (
    <div class="offers">
      <h4>{SLOT_WORDS.fits}</h4>
      {fits.length === 0 ? <p class="quiet">{SLOT_WORDS.nothingElse}</p> : null}
      <ul>
        {fits.map((offer) => (
          <li key={offer.card}>
            <button type="button" data-choose={offer.card} onClick={() => take(offer)}>
              {offer.title}
            </button>
          </li>
        ))}
      </ul>
      <h4>{SLOT_WORDS.doesNotFit}</h4>
      <ul>
        {others.map((offer) => (
          <li key={offer.card}>
            {offer.may === 'beyond' ? (
              <button type="button" data-choose={offer.card} onClick={() => take(offer)}>
                {byDecisionText(offer.title)}
              </button>
            ) : (
              <b>{offer.title}</b>
            )}{' '}
            <span class="quiet">{offer.because}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

type Entry = Readonly<Record<string, unknown>>;

/** The reason is asked for at once: without one nothing is built. */
function choose(slot: string, { card, may }: Offer): void {
  const list = listAt('chosen') as readonly Entry[];
  const there = list.findIndex((one) => one['slot'] === slot);
  const index = there === -1 ? list.length : there;
  const kept = (listAt('leftOut') as readonly Entry[]).filter((one) => one['card'] !== card);
  setAll([
    [`chosen.${index}`, { slot, card, ...(may === 'beyond' ? { beyondCap: {} } : {}) }],
    ['leftOut', kept.length === 0 ? undefined : kept],
  ]);
  focusSoon(`chosen.${index}.reason`);
}

function leaveOut(card: string): void {
  const index = listAt('leftOut').length;
  set(`leftOut.${index}`, { card });
  focusSoon(`leftOut.${index}.reason`);
}

/** One step back to what the tests propose. */
function giveBack(slot: string, card: string | null): void {
  const chosen = (listAt('chosen') as readonly Entry[]).filter((one) => one['slot'] !== slot);
  const added = (listAt('added') as readonly Entry[]).filter(
    (one) => addedSlotName(String(one['card'])) !== slot || one['card'] !== card,
  );
  setAll([
    ['chosen', chosen.length === 0 ? undefined : chosen],
    ['added', added.length === 0 ? undefined : added],
  ]);
}
