/** A sudden pop, or a sudden start under 18, that a decision has cleared: the first programme after it stays light. */
import type { Consult, Protocol } from '../../content/library.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { SuddenStart } from '../terms/suddenStart.ts';
import type { Earlier } from '../terms/earlier.ts';

const SUDDEN: readonly ScreenItem[] = ['popBruise', 'suddenOnsetUnder18'];

/**
 * Whether it began in one moment, in this programme and every later one: the story of too much work is not told then. An
 * entry under 18 that names a gradual start has the item at `no`.
 */
export function beganSuddenly({ clearances, screen }: Pick<Consult, 'clearances' | 'screen'>): boolean {
  return clearances.some(
    ({ flag }) => flag === 'popBruise' || (SUDDEN.includes(flag) && screen[flag] !== 'no'),
  );
}

/**
 * The clearance of a sudden start that no programme has followed yet, the latest of several; null when there is none.
 * `earlier`: the revision before, null for the first.
 */
export function suddenStartOf(
  { clearances, screen, ageYears }: Consult,
  { limits }: Protocol,
  earlier: Earlier | null,
): SuddenStart | null {
  const fresh = clearances
    .filter(({ flag, on }) => SUDDEN.includes(flag) && (earlier === null || earlier.seenOn < on))
    .filter(({ flag }) => screen[flag] !== 'no' && (flag !== 'suddenOnsetUnder18' || ageYears < 18))
    .toSorted((a, b) => (a.on < b.on ? -1 : 1))
    .at(-1);
  if (fresh === undefined) return null;
  return {
    flag: fresh.flag,
    by: fresh.by,
    on: fresh.on,
    imaging: fresh.imaging ?? null,
    stageAtMost: limits.suddenStageAtMost.value,
    loadShare: limits.suddenLoadShare.value,
    runAtMost: limits.suddenRunAtMost.value,
  };
}
