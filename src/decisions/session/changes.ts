/** What the ladder has changed of one exercise since its first rung: of each kind of change the whole way. */
import type { ChangeKind } from '../../dosing/dose.ts';
import type { Amount, Limit, Rung } from '../../dosing/rung.ts';

export interface ChangedSince {
  readonly change: ChangeKind;
  readonly from: Amount | null;
  readonly to: Amount | null;
  /** The last move took it down, so that another could go up. */
  readonly eased: boolean;
  /** What the last move wished, and what stood against the whole of it; null of what was taken down. */
  readonly wished: Amount | null;
  readonly stoppedBy: Limit | null;
}

/** One entry for each kind of change up to a rung; none on the first. `exercise`: the slot's name. */
export function changesSince(rungs: readonly Rung[], step: number, exercise: string): ChangedSince[] {
  const moves = rungs.slice(0, step).flatMap((rung) => movesOf(rung, exercise));
  const kinds = [...new Set(moves.map(({ change }) => change))];
  return kinds.map((kind) => {
    const steps = moves.filter(({ change }) => change === kind);
    const [first, last] = [steps[0], steps.at(-1)] as [ChangedSince, ChangedSince];
    return { ...last, from: first.from };
  });
}

function movesOf({ change, changed }: Rung, exercise: string): ChangedSince[] {
  return changed
    .filter((one) => one.exercise === exercise)
    .flatMap(({ from, to, wished, stoppedBy, eased }) => [
      ...(change === null ? [] : [{ change, from, to, wished, stoppedBy, eased: false }]),
      ...eased.map((one) => ({ ...one, wished: null, stoppedBy: null, eased: true })),
    ]);
}
