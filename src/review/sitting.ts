/** Sitting, by its own rules: whether the minutes were reached without more than the pain that is all right (house rules 8). */
import { painGate } from '../scheduling/morning.ts';
import { sourceOf } from './exercise.ts';
import type { Period } from './facts.ts';
import { gentler, type HabitReview, type Because, type Move } from './terms.ts';

/** Null where no minutes were given and none written down. */
export function sittingReview(period: Period, whole: Move): HabitReview | null {
  const { entries, consult, protocol } = period;
  const sat = entries.filter(({ kind, minutes }) => kind === 'sitting' && minutes !== null);
  if (isSittingUnwritten(period)) return notWritten(period, whole);
  if (sat.length === 0) return null;
  const { usualMorningPain: usualPain, irritability } = consult;
  const gates = sat.map((entry) =>
    entry.painDuring === null
      ? null
      : painGate(entry.painDuring, { usualPain, irritability }, protocol.painRule),
  );
  const need = protocol.goingOn.doneSessions.value;
  const { toleranceMinutes } = consult.sitting;
  const reached = sat.filter(
    ({ minutes }, index) => (minutes ?? 0) >= toleranceMinutes && gates[index]?.next === 'carry-on',
  );
  const last = gates.at(-1);
  const amount: Because = {
    rule: reached.length >= need ? 'sitting-reached' : 'sitting-short',
    move: reached.length >= need ? 'moveOn' : 'stay',
    inputs: { have: reached.length, need, toleranceMinutes },
    source: sourceOf(protocol.sittingRules.stepMinutes, 'house rules 8'),
    entries: reached,
  };
  const pain: Because[] =
    last === null || last === undefined || last.next === 'carry-on'
      ? []
      : [
          {
            rule: last.because.code,
            move: last.next === 'ease-back' ? 'easeBack' : 'stay',
            inputs: last.because.inputs,
            source: { cite: 'house rules 5', mark: last.because.mark },
            entries: sat.slice(-1),
          },
        ];
  const because = [...pain, amount];
  const own = because.reduce<Move>((worst, { move }) => gentler(worst, move), 'moveOn');
  return { decision: gentler(own, softened(whole)), because };
}

function notWritten({ protocol }: Period, whole: Move): HabitReview {
  const source = sourceOf(protocol.sittingRules.stepMinutes, 'house rules 8');
  const because: Because[] = [{ rule: 'sitting-none', move: 'stay', inputs: {}, source, entries: [] }];
  return { decision: gentler('stay', softened(whole)), because };
}

function softened(whole: Move): Move {
  return whole === 'startAgain' ? 'easeBack' : whole;
}

/** Minutes were given, and none written down. */
export function isSittingUnwritten({ entries, countsSitting }: Period): boolean {
  return countsSitting && !entries.some(({ kind, minutes }) => kind === 'sitting' && minutes !== null);
}
