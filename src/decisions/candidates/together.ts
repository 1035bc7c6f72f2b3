/** What the least share of the hamstrings adds to an exercise beyond the model's own least effort. */
import type { Prescribed } from '../../dosing/rung.ts';
import { roundTo } from '../../units/round.ts';
import { isModelled } from './estimate.ts';
import type { PosedCard } from '../person/model.ts';
import type { Person } from '../person/person.ts';

/** Largest values along the movement, body weights to 0.01. */
export interface WorkedTogether {
  readonly compressionBw: number;
  readonly tensionBw: number;
  /** The same by least effort alone. */
  readonly leastEffort: { readonly compressionBw: number; readonly tensionBw: number };
}

/** Null where it adds nothing that is shown, and where there is no estimate. */
export function workedTogether(
  card: PosedCard,
  { rangeDeg, loadKg, dose }: Prescribed,
  person: Person,
): WorkedTogether | null {
  const { model } = person;
  const alone = model.leastEffort();
  if (!isModelled(person) || alone === model) return null;
  const [together, least] = [model, alone].map((one) => one.sweepTo(card, rangeDeg, loadKg, dose.tempo));
  if (!together || !least) return null;
  const shown = { ...peakOf(together.peak), leastEffort: peakOf(least.peak) };
  return shown.compressionBw === shown.leastEffort.compressionBw &&
    shown.tensionBw === shown.leastEffort.tensionBw
    ? null
    : shown;
}

function peakOf({ compressionBw, tensionBw }: WorkedTogether['leastEffort']) {
  return { compressionBw: roundTo(compressionBw, 0.01), tensionBw: roundTo(tensionBw, 0.01) };
}
