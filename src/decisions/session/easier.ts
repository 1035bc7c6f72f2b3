/** The easier numbers of the present step, for after a flare, two bad mornings or missed days. */
import { easeBack } from '../../dosing/easeBack.ts';
import type { Dose } from '../../dosing/dose.ts';
import type { Made } from '../../dosing/kit.ts';
import type { IsoDate } from '../../units/date.ts';
import type { HowFar } from '../terms/howFar.ts';
import { countedAs, type Counted } from './counted.ts';
import type { CellName } from '../terms/cell.ts';
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
  return prescriptions.map((one) => {
    const {
      card,
      at,
      byFeel,
      beginsOn,
      howFar: [farNow],
    } = one;
    const easier = easedAt(one, person);
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

/** The cells that easing back changes, with their numbers. */
export interface EasedExercise {
  readonly card: string;
  readonly cells: Readonly<Partial<Record<CellName, number>>>;
}

/** The same as numbers, for a next revision that goes no step back. */
export function easedExercises(prescriptions: readonly Prescription[], person: Person): EasedExercise[] {
  return prescriptions.map((one) => {
    const { card, at, byFeel } = one;
    const { dose, loadKg, rangeDeg } = easedAt(one, person);
    return {
      card: card.id,
      cells: {
        ...(dose.sets === at.dose.sets ? {} : { sets: dose.sets }),
        ...(byFeel || loadKg === at.loadKg ? {} : { loadKg }),
        ...(rangeDeg === null || rangeDeg === at.rangeDeg
          ? {}
          : { [`${person.model.guardedBy}Deg`]: rangeDeg }),
      },
    };
  });
}

function easedAt({ exercise, card, at }: Prescription, { protocol }: Person): Prescription['at'] {
  const { setsFactor, loadFactor, rangeLessDeg } = protocol.easeBack;
  const ladderCard = exercise.ladder.cards.find((one) => one.card === card.id);
  if (ladderCard === undefined) return at;
  return easeBack(at, ladderCard, {
    setsFactor: setsFactor.value,
    loadFactor: loadFactor.value,
    rangeLessDeg: rangeLessDeg.value,
  });
}
