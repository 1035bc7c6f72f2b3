/** Laws of what is prescribed that hold for whoever gets a programme; each throws where it is broken. */
import { cellsFor } from '../../src/decisions/session/cells/angleCell.ts';
import assert from 'node:assert/strict';
import type { Consult, Stage } from '../../src/content/library.ts';
import { RESOLUTION } from '../../src/dosing/growth.ts';
import { bodyOf } from '../../src/decisions/person/body.ts';
import { isPosed, modelIn, type Models } from '../../src/decisions/person/model.ts';
import { type Prescription, type Programme } from '../../src/programme/programme.ts';
import { DECIDED_BY, type CellName } from '../../src/decisions/terms/cell.ts';
import { MARKS } from '../../src/units/source.ts';
import { shipped, workshop } from '../programme/shipped.ts';
import type { Law } from './planLaws.ts';

// Shown numbers are rounded; the model is asked again at what is shown.
const ROUNDING = 1.02;

const NO_VALUE = /\bundefined\b|\bNaN\b|\bInfinity\b/;

/** Whole numbers, known words and a reason for every cell. */
export const reasonedCells: Law = (programme, consult) => {
  for (const { cells } of programme.steps.flatMap(({ prescriptions }) => prescriptions)) {
    assert.deepEqual(
      cells.map(({ cell }) => cell),
      cellsFor('hipFlexion'),
    );
    for (const { value, rule, source, decidedBy } of cells) {
      if (typeof value === 'number') assert.ok(Number.isFinite(value), `${rule} gives ${value}`);
      assert.ok(DECIDED_BY.includes(decidedBy), `decided by ${decidedBy}`);
      assert.ok(rule !== '' && source.cite !== '' && MARKS.includes(source.mark), `${rule} has no source`);
    }
  }
  // An author may write such a word.
  if (!NO_VALUE.test(JSON.stringify(consult))) assert.doesNotMatch(JSON.stringify(programme), NO_VALUE);
};

/** Within the minutes of a day, each exercise once, nothing outside the dates. */
export const withinTheDay: Law = (programme, consult) => {
  const { minutesValue } = programme.nextSession;
  assert.ok(minutesValue <= consult.minutesPerDay, `${minutesValue} of ${consult.minutesPerDay} minutes`);
  assert.equal(new Set(programme.exercises.map(({ card }) => card)).size, programme.exercises.length);
  for (const { on, kind } of programme.calendar)
    assert.ok(on >= consult.startOn && (on < consult.reviewOn || kind === 'race'), `${kind} on ${on}`);
};

const models: Models = new Map();

interface Asked {
  readonly hipFlexionDeg: number | null;
  readonly loadKg: number | null;
  readonly compressionBw: number;
  readonly tensionBw: number;
  readonly demand: number;
}

/** What the model says of a prescription at the numbers that are shown; null without a pose, or where the clinician decided. */
function asked({ card, cells }: Prescription, { heightM, massKg }: Consult): Asked | null {
  const there = shipped.exercises.get(card);
  if (there === undefined || !isPosed(there)) return null;
  if (cells.some(({ decidedBy }) => decidedBy === 'clinician')) return null;
  const numberIn = (name: CellName) => {
    const value = cells.find(({ cell }) => cell === name)?.value;
    return typeof value === 'number' ? value : null;
  };
  const [hipFlexionDeg, loadKg] = [numberIn('hipFlexionDeg'), numberIn('loadKg')];
  const body = bodyOf({ heightM, massKg }, shipped.clinic);
  const sweep = modelIn(models, workshop.library.version, body).sweepTo(
    there,
    there.movement.range === 'fixed' ? null : hipFlexionDeg,
    loadKg ?? 0,
    there.tempo,
  );
  if (sweep === null) return null;
  const { compressionBw, tensionBw, demand } = sweep.peak;
  return { hipFlexionDeg, loadKg, compressionBw, tensionBw, demand };
}

/** Angle, squeeze, pull and demand of every step stay under the caps of the stage. */
export const underTheCaps: Law = (programme, consult) => {
  const stage = stageOf(programme, consult);
  if (stage === null) return;
  const cappedDeg = stage.caps.angle === 'hipFlexion' ? stage.caps.angleDeg : null;
  const mostDeg = Math.max(cappedDeg ?? 180, stage.opensToDeg ?? 0);
  for (const { step, prescriptions } of programme.steps)
    for (const one of prescriptions) {
      const at = asked(one, consult);
      if (at === null) continue;
      const where = `step ${step}, ${one.card}`;
      assert.ok((at.hipFlexionDeg ?? 0) <= mostDeg, `${where}: ${at.hipFlexionDeg} deg of ${mostDeg}`);
      // No model caps under 18 (house rules 2).
      if (consult.ageYears < 18) continue;
      for (const cap of ['compressionBw', 'tensionBw', 'demand'] as const) {
        const most = stage.caps[cap];
        if (most !== null)
          assert.ok(at[cap] <= most * ROUNDING, `${where}: ${cap} ${at[cap].toFixed(3)} of ${most}`);
      }
    }
};

/** No exercise grows by more than the protocol's factor in peak squeeze from one step to the next. */
export const growsSlowly: Law = (programme, consult) => {
  const protocol = shipped.protocols.get(consult.protocol);
  if (protocol === undefined) return;
  const most = protocol.limits.stepGrowth.value;
  programme.steps.slice(1).forEach(({ step, prescriptions }, index) => {
    for (const one of prescriptions) {
      const before = programme.steps[index]?.prescriptions.find(
        ({ card, slot }) => card === one.card && slot === one.slot,
      );
      if (before === undefined) continue;
      const [from, to] = [asked(before, consult), asked(one, consult)];
      if (from === null || to === null || from.loadKg === null || to.loadKg === null) continue;
      const small = consult.irritability === 'high' ? 0 : protocol.limits.smallSqueezeBw.value;
      const floor = Math.max(from.compressionBw, RESOLUTION.compressionBw, small);
      assert.ok(
        to.compressionBw <= most * floor * ROUNDING,
        `step ${step}, ${one.card}: squeeze ${from.compressionBw.toFixed(3)} to ${to.compressionBw.toFixed(3)}`,
      );
    }
  });
};

function stageOf({ stage: { chosen } }: Programme, { protocol }: Consult): Stage | null {
  const stages = shipped.protocols.get(protocol)?.stages ?? [];
  return (chosen === 'keepGoing' ? stages.at(-1) : stages[chosen - 1]) ?? null;
}

/** All of them by what they keep. */
export const DOSE_LAWS: Readonly<Record<string, Law>> = {
  'every cell has its reason': reasonedCells,
  'within the day': withinTheDay,
  'under the caps': underTheCaps,
  'grows slowly': growsSlowly,
};
