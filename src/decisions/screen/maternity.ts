/** Pregnancy and the time after birth: what it allows just now (house rules 11.14). Not recorded acts like the cautious side. */
import type { Consult, Protocol } from '../../content/library.ts';
import type { CannotDo } from '../../content/schema/words.ts';
import { daysBetween } from '../../units/date.ts';
import type { RunKind } from '../../scheduling/run.ts';

export interface Maternity {
  readonly kind: 'pregnant' | 'after-birth' | 'not-recorded';
  /** Pregnant: the week on the day before the review, which this programme reaches. After birth: full weeks on its first day. */
  readonly weeks: number | null;
  /** May lie flat on the back, and face down. */
  readonly liesFlat: boolean;
  /** Jumping, hopping and fast drills. */
  readonly jumps: boolean;
  /** The hardest run there may be; null where it is not held back. */
  readonly runMost: RunKind | null;
  /** Who cleared jumping and running early; null when nobody did, or nobody had to. */
  readonly clearedBy: string | null;
}

const WORD: CannotDo = 'pregnant-or-postpartum';

/** Null where neither a key of the consult nor its cannot-do list speaks of it. */
export function maternityOf(
  consult: Consult,
  { maternity: rules }: Pick<Protocol, 'maternity'>,
): Maternity | null {
  const { pregnancy, afterBirth, cannotDo, seenOn, startOn, reviewOn } = consult;
  if (pregnancy !== undefined) {
    const weeks = pregnancy.weeks + fullWeeks(daysBetween(seenOn, reviewOn) - 1);
    return {
      kind: 'pregnant',
      weeks,
      liesFlat: weeks < rules.notFlatFromWeek.value,
      jumps: false,
      runMost: rules.runMostPregnant.value,
      clearedBy: null,
    };
  }
  if (afterBirth !== undefined) {
    const weeks = afterBirth.weeks + fullWeeks(daysBetween(seenOn, startOn));
    const early = weeks < rules.impactFromWeekAfterBirth.value;
    const clearance = early ? afterBirth.clearance : undefined;
    const allowed = !early || clearance !== undefined;
    return {
      kind: 'after-birth',
      weeks,
      liesFlat: true,
      jumps: allowed,
      runMost: allowed ? null : 'none',
      clearedBy: clearance === undefined ? null : clearance.by,
    };
  }
  if (!cannotDo.includes(WORD)) return null;
  return {
    kind: 'not-recorded',
    weeks: null,
    liesFlat: false,
    jumps: false,
    runMost: 'none',
    clearedBy: null,
  };
}

/** The cannot-do list with what follows from pregnancy or birth. */
export function cannotDoOf({ cannotDo }: Consult, maternity: Maternity | null): readonly CannotDo[] {
  if (maternity === null) return cannotDo;
  const more: CannotDo[] = [
    ...(maternity.jumps ? [] : [WORD]),
    ...(maternity.liesFlat ? [] : (['lie-supine', 'lie-prone'] as const)),
  ];
  return [...new Set([...cannotDo, ...more])];
}

function fullWeeks(days: number): number {
  return Math.floor(days / 7);
}
