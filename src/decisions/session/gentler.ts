/** Where a first dose is far below what was tested and tolerated, and why (house rules 11.2). */
import { ANGLE_CELLS } from './cells/angleCell.ts';
import type { Prescription } from './prescribe.ts';
import { isPosed, type PosedCard } from '../person/model.ts';
import type { Bounds, Person } from '../person/person.ts';
import type { DecidedCell, CellName } from '../terms/cell.ts';
import type { Gentler, GentlerReason } from '../candidates/gentlerReason.ts';
import { shownWith, type Shown } from '../candidates/shown.ts';
import { contradictions } from '../candidates/painfulSets.ts';
import { longestHoldSeconds } from '../candidates/firstDose.ts';

/** The first thing of an exercise that is under the share of what was tested with it, on the first rung; null when none is. */
export function gentlerThanTested(one: Prescription, person: Person, bounds: Bounds): Gentler | null {
  const { card } = one;
  if (!isPosed(card)) return null;
  const shown = shownWith(card.id, person, bounds);
  const share = person.protocol.limits.gentlerBelow.value;
  const found = comparisons(one, card, shown, person).find(
    ({ given, tested }) => tested > 0 && given < share * tested - 1e-9,
  );
  return found === undefined ? null : { ...found, reasons: reasonsFor(found.what, one, card, person) };
}

const CELLS_OF: Readonly<Record<Gentler['what'], readonly CellName[]>> = {
  load: ['loadKg'],
  hold: ['holdSeconds'],
  pull: ['loadKg', ...ANGLE_CELLS],
};

type Compared = Pick<Gentler, 'what' | 'given' | 'tested'>;

function comparisons(
  { at, byFeel }: Prescription,
  card: PosedCard,
  shown: readonly Shown[],
  person: Person,
): readonly Compared[] {
  const loads = shown.filter(({ by }) => by !== 'test').map(({ loadKg }) => loadKg);
  const holds = shown.flatMap(({ held, amount }) => (held && amount !== null ? [amount] : []));
  const pulls = shown
    .filter(({ by }) => by !== 'test')
    .map((one) => pullBw(card, one.rangeDeg, one.loadKg, one.tempo, person));
  return [
    ...(loads.length === 0 || byFeel
      ? []
      : [{ what: 'load', given: at.loadKg, tested: Math.max(...loads) } as const]),
    ...(holds.length === 0 || at.dose.holdSeconds === null
      ? []
      : [{ what: 'hold', given: at.dose.holdSeconds, tested: Math.min(...holds) } as const]),
    ...(pulls.length === 0 || byFeel
      ? []
      : [
          {
            what: 'pull',
            given: pullBw(card, at.rangeDeg, at.loadKg, at.dose.tempo, person),
            tested: Math.max(...pulls),
          } as const,
        ]),
  ];
}

function pullBw(
  card: PosedCard,
  rangeDeg: number | null,
  loadKg: number,
  tempo: Shown['tempo'],
  { model }: Person,
): number {
  return model.sweepTo(card, rangeDeg, loadKg, tempo)?.peak.tensionBw ?? 0;
}

function reasonsFor(
  what: Gentler['what'],
  { fit, cells, exercise }: Prescription,
  card: PosedCard,
  person: Person,
): readonly GentlerReason[] {
  const names = CELLS_OF[what];
  const byCell = cells
    .filter(({ cell }) => names.includes(cell))
    .flatMap((cell) => reasonOf(cell, what, fit.load.byTest));
  return [
    ...new Set([
      ...byCell,
      ...((fit.entry?.lowered.length ?? 0) > 0 ? (['growth'] as const) : []),
      ...(person.sudden === null ? [] : (['sudden'] as const)),
      ...(person.effects.under18 ? (['young'] as const) : []),
      ...(person.effects.lightHolds.length > 0 || person.effects.shortHolds.length > 0
        ? (['screen'] as const)
        : []),
      ...(contradictions(person).some((one) => one.card === card.id) ? (['pain'] as const) : []),
      ...(what === 'hold' && fit.first.dose.holdSeconds === longestHoldSeconds(card, person)
        ? (['longest'] as const)
        : []),
      ...(what !== 'hold' && exercise.slot.when === 'between' ? (['between'] as const) : []),
      ...(what === 'hold' && exercise.slot.doseSource.mark === 'read' ? (['published'] as const) : []),
    ]),
  ];
}

function reasonOf(
  { decidedBy, cell }: DecidedCell,
  what: Gentler['what'],
  byTest: boolean,
): readonly GentlerReason[] {
  switch (decidedBy) {
    case 'hipFlexion':
    case 'kneeFlexion':
    case 'ankleDorsiflexion':
    case 'compression':
    case 'tension':
    case 'demand':
      return ['cap'];
    case 'provokedAngle':
      return ['pain'];
    case 'kit':
      return ['kit'];
    case 'step':
      return ['growth'];
    case 'clinician':
      return ['clinician'];
    case 'minutes':
      return ['minutes'];
    case 'testedSet':
      if (what === 'hold' || cell !== 'loadKg') return [];
      return byTest ? ['effort'] : ['unusable'];
    case 'dose':
      return [];
  }
}
