/** The easier numbers of the present step, for after a flare, two bad mornings or missed days. */
import { easeBack } from '../../dosing/easeBack.ts';
import type { Dose } from '../../dosing/dose.ts';
import type { Made } from '../../dosing/kit.ts';
import type { IsoDate } from '../../units/date.ts';
import type { HowFar } from '../terms/howFar.ts';
import { countedAs, type Counted } from './counted.ts';
import { howFar } from './howFar.ts';
import type { Person } from '../person/person.ts';
import { loadOf, type Prescription } from './prescribe.ts';

/** One exercise with its easier numbers. */
export interface Easier {
  readonly title: string;
  /** The first day of what has to wait for its turn: not done before it with easier numbers either. */
  readonly beginsOn: IsoDate | null;
  readonly dose: Dose;
  readonly counted: Counted;
  /** `felt`: lighter than last time, by feel. `made`: null where the kit does not make it. */
  readonly load: 'felt' | { readonly loadKg: number; readonly made: Made | null };
  readonly farNow: HowFar;
  /** Null where the way is no shorter. */
  readonly farEasier: HowFar | null;
}

/** In the order of the session. */
export function easierOf(prescriptions: readonly Prescription[], person: Person): Easier[] {
  const { setsFactor, loadFactor, rangeLessDeg } = person.protocol.easeBack;
  const rules = {
    setsFactor: setsFactor.value,
    loadFactor: loadFactor.value,
    rangeLessDeg: rangeLessDeg.value,
  };
  return prescriptions.map(({ exercise, card, at, byFeel, beginsOn, howFar: [farNow] }) => {
    const ladderCard = exercise.ladder.cards.find((one) => one.card === card.id);
    const easier = ladderCard === undefined ? at : easeBack(at, ladderCard, rules);
    const { loadKg, dose } = easier;
    return {
      title: card.title,
      beginsOn,
      dose,
      counted: countedAs(card),
      load: byFeel ? 'felt' : { loadKg, made: loadOf({ card, at: easier }, person)?.made ?? null },
      farNow,
      farEasier: easier.rangeDeg === at.rangeDeg ? null : howFar(card, easier, person)[0],
    };
  });
}
