/** Estimates of one card as the public pages show them: angles, peaks, weights, and squeeze along the movement. */
import type { Messages } from '../messages/messages.ts';
import { marginOf } from '../mechanics/cap.ts';
import { closePose } from '../mechanics/closure.ts';
import { loadingAt } from '../mechanics/loading.ts';
import type { LoadPoint } from '../mechanics/movement.ts';
import { type Peaks, type Sweep, samplesOf } from '../mechanics/sweep.ts';
import { poseAt } from '../mechanics/trajectory.ts';
import { roundTo } from '../units/round.ts';
import { isPosed, type Model, type PosedCard } from '../decisions/person/model.ts';
import type { Table } from '../messages/shapes.ts';

import { isFast, peakWith, type Measured } from './measured.ts';
import { KNEE_LED, type Scale } from './scale.ts';
import type { Use } from './uses.ts';
import type { CurveView, EstimateView } from './view.ts';

/** `uses`: where protocols name the card; the first of them gives the chart its cap. */
export function estimateView(
  say: Messages,
  measured: Measured,
  uses: readonly Use[],
  model: Model,
  scale: Scale,
): EstimateView {
  const { card, swept } = measured;
  if (!isPosed(card)) return { sentences: [isFast(card) ? say.FAST : say.NO_POSE], tables: [], curve: null };
  const angles = anglesTable(say, card, model);
  if (swept === null)
    return {
      sentences: [isFast(card) ? say.FAST : say.CANNOT_REST],
      tables: angles === null ? [] : [angles],
      curve: null,
    };
  const curve = curveOf(say, card, uses, model, scale);
  return {
    sentences: sentencesOf(say, measured, swept, curve !== null, model, scale),
    tables: [
      ...(angles === null ? [] : [angles]),
      peaksTable(say, card, swept),
      ...loadsTable(say, card, model),
    ],
    curve,
  };
}

// Dust of the solver and of a hip that is bent by a degree are no squeeze to speak of.
const LEAST_CURVE_BW = 0.02;

function sentencesOf(
  say: Messages,
  { card, squeezeBw }: Measured,
  { peak }: Sweep,
  hasCurve: boolean,
  model: Model,
  scale: Scale,
): string[] {
  const margin = card.movement === null ? 1 : marginOf(card.movement, scale);
  const moves = card.movement?.end !== undefined;
  const verticalOnlyBw = isPosed(card) ? (model.verticalOnlyTo(card, null, 0) ?? 0) : 0;
  return [
    say.bodySentence(model.body),
    ...(margin > 1 ? [say.marginSentence(margin)] : []),
    ...(verticalOnlyBw > peak.compressionBw + 0.05 ? [say.dragSentence(say.bwText(verticalOnlyBw))] : []),
    ...(card.positions.some((position) => KNEE_LED.includes(position)) ? [say.KNEE_LED_SENTENCE] : []),
    ...(moves && !hasCurve && (squeezeBw ?? 0) < LEAST_CURVE_BW ? [say.STRAIGHT_HIP] : []),
  ];
}

function anglesTable(say: Messages, { movement }: PosedCard, { body }: Model): Table | null {
  const ends = movement.end === undefined ? [0] : [0, 1];
  const poses = ends.map((t) => closePose(movement, poseAt(movement, t), body, 0)?.pose);
  if (!poses.every((pose) => pose !== undefined)) return null;
  const row = (label: string, degs: readonly number[]) => [label, ...degs.map((deg) => say.degText(deg))];
  const { rows } = say.ANGLES;
  const others = poses.flatMap(({ other }) => other ?? []);
  return {
    caption: say.ANGLES.caption,
    columns: [
      say.ANGLES.angle,
      ...(ends.length === 1 ? [say.ANGLES.hold] : [say.ANGLES.start, say.ANGLES.end]),
    ],
    rows: [
      row(
        rows.hip,
        poses.map(({ work }) => work.hip),
      ),
      row(
        rows.knee,
        poses.map(({ work }) => work.knee),
      ),
      ...(others.length < poses.length
        ? []
        : [
            row(
              rows.otherHip,
              others.map(({ hip }) => hip),
            ),
            row(
              rows.otherKnee,
              others.map(({ knee }) => knee),
            ),
          ]),
      row(
        rows.trunk,
        poses.map(({ trunk }) => trunk),
      ),
    ],
  };
}

function peaksTable(say: Messages, card: PosedCard, swept: Sweep): Table {
  const { peak, otherPeak } = swept;
  const { rows } = say.PEAKS;
  const row = (label: string, value: (peaks: Peaks) => string) => [
    label,
    value(peak),
    ...(otherPeak === null ? [] : [value(otherPeak)]),
  ];
  const blank = otherPeak === null ? [] : ['–'];
  return {
    caption: say.PEAKS.caption,
    columns: [
      say.PEAKS.estimate,
      ...(otherPeak === null
        ? [card.legs === 'together' ? say.PEAKS.one : say.PEAKS.work]
        : [say.PEAKS.work, say.PEAKS.other]),
    ],
    rows: [
      row(rows.compressionBw, ({ compressionBw }) => say.bwText(compressionBw)),
      row(rows.tensionBw, ({ tensionBw }) => say.bwText(tensionBw)),
      row(rows.hipMomentNm, ({ hipMomentNm }) => wholeText(hipMomentNm)),
      row(rows.kneeMomentNm, ({ kneeMomentNm }) => wholeText(kneeMomentNm)),
      row(rows.demand, ({ demand }) => say.bwText(demand)),
      [rows.compressionTimeBwS, swept.compressionTimeBwS.toFixed(1), ...blank],
      [rows.tensionTimeBwS, swept.tensionTimeBwS.toFixed(1), ...blank],
    ],
  };
}

function wholeText(value: number): string {
  const whole = Math.round(value);
  return `${whole < 0 ? '−' : ''}${Math.abs(whole)}`;
}

/** Weights that a card is shown with, kilograms, by where they sit: such as a home has [choice]. */
export const WEIGHTS_KG: Readonly<Record<LoadPoint, readonly number[]>> = {
  hands: [0, 10, 20],
  shoulder: [0, 10, 20],
  pelvisFront: [0, 10, 20],
  'work.knee': [0, 5, 10],
  'work.ankle': [0, 2, 4],
  'both.ankle': [0, 2, 4],
};

function loadsTable(say: Messages, card: PosedCard, model: Model): readonly Table[] {
  const { loadAt } = card.movement;
  if (loadAt === undefined) return [];
  const rows = WEIGHTS_KG[loadAt].flatMap((loadKg) => {
    const peak = peakWith(card, loadKg, model);
    if (peak === null) return [];
    return [
      [
        say.kgText(loadKg),
        say.bwText(peak.compressionBw),
        say.bwText(peak.tensionBw),
        say.bwText(peak.demand),
      ],
    ];
  });
  return [{ caption: say.LOADS.caption, columns: say.LOADS.columns, rows }];
}

function curveOf(
  say: Messages,
  card: PosedCard,
  uses: readonly Use[],
  { body }: Model,
  scale: Scale,
): CurveView | null {
  const { movement } = card;
  if (movement.end === undefined) return null;
  const margin = marginOf(movement, scale);
  const samples = samplesOf(movement).flatMap((t) => {
    const loading = loadingAt(movement, body, 0, t);
    if (loading === null) return [];
    const { hipFlexionDeg, compressionBw } = loading.work;
    return [
      { hipFlexionDeg: roundTo(hipFlexionDeg, 0.1), compressionBw: roundTo(margin * compressionBw, 0.001) },
    ];
  });
  const [first] = samples;
  if (first === undefined) return null;
  const peak = samples.reduce((most, one) => (one.compressionBw > most.compressionBw ? one : most), first);
  if (peak.compressionBw < LEAST_CURVE_BW) return null;
  const degs = samples.map(({ hipFlexionDeg }) => hipFlexionDeg);
  const capped = uses.find(({ stage }) => stage.caps.compressionBw !== null);
  return {
    samples,
    capBw: capped?.stage.caps.compressionBw ?? null,
    across: say.CURVE.across,
    up: say.CURVE.up,
    cap: capped === undefined ? '' : say.capWord(capped.index + 1),
    alt: say.curveAlt(
      Math.min(...degs),
      Math.max(...degs),
      say.bwText(peak.compressionBw),
      peak.hipFlexionDeg,
    ),
  };
}
