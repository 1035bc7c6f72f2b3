/** Estimates of one card as the public pages show them: angles, peaks, weights, and squeeze along the movement. */
import { marginOf } from '../mechanics/cap.ts';
import { closePose } from '../mechanics/closure.ts';
import { loadingAt } from '../mechanics/loading.ts';
import type { LoadPoint } from '../mechanics/movement.ts';
import { type Peaks, type Sweep, samplesOf } from '../mechanics/sweep.ts';
import { poseAt } from '../mechanics/trajectory.ts';
import { roundTo } from '../units/round.ts';
import { isPosed, type Model, type PosedCard } from '../decisions/person/model.ts';
import type { Table } from '../messages/shapes.ts';
import {
  ANGLES,
  bodySentence,
  CANNOT_REST,
  capWord,
  CURVE,
  curveAlt,
  dragSentence,
  FAST,
  KNEE_LED_SENTENCE,
  LOADS,
  marginSentence,
  NO_POSE,
  PEAKS,
  STRAIGHT_HIP,
} from '../messages/en/catalogue/estimates.ts';
import { bwText, degText } from '../messages/en/catalogue/library.ts';
import { kgText } from '../messages/en/plain.ts';
import { isFast, peakWith, type Measured } from './measured.ts';
import { KNEE_LED, type Scale } from './scale.ts';
import type { Use } from './uses.ts';
import type { CurveView, EstimateView } from './view.ts';

/** `uses`: where protocols name the card; the first of them gives the chart its cap. */
export function estimateView(
  measured: Measured,
  uses: readonly Use[],
  model: Model,
  scale: Scale,
): EstimateView {
  const { card, swept } = measured;
  if (!isPosed(card)) return { sentences: [isFast(card) ? FAST : NO_POSE], tables: [], curve: null };
  const angles = anglesTable(card, model);
  if (swept === null)
    return {
      sentences: [isFast(card) ? FAST : CANNOT_REST],
      tables: angles === null ? [] : [angles],
      curve: null,
    };
  const curve = curveOf(card, uses, model, scale);
  return {
    sentences: sentencesOf(measured, swept, curve !== null, model, scale),
    tables: [...(angles === null ? [] : [angles]), peaksTable(card, swept), ...loadsTable(card, model)],
    curve,
  };
}

// Dust of the solver and of a hip that is bent by a degree are no squeeze to speak of.
const LEAST_CURVE_BW = 0.02;

function sentencesOf(
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
    bodySentence(model.body),
    ...(margin > 1 ? [marginSentence(margin)] : []),
    ...(verticalOnlyBw > peak.compressionBw + 0.05 ? [dragSentence(bwText(verticalOnlyBw))] : []),
    ...(card.positions.some((position) => KNEE_LED.includes(position)) ? [KNEE_LED_SENTENCE] : []),
    ...(moves && !hasCurve && (squeezeBw ?? 0) < LEAST_CURVE_BW ? [STRAIGHT_HIP] : []),
  ];
}

function anglesTable({ movement }: PosedCard, { body }: Model): Table | null {
  const ends = movement.end === undefined ? [0] : [0, 1];
  const poses = ends.map((t) => closePose(movement, poseAt(movement, t), body, 0)?.pose);
  if (!poses.every((pose) => pose !== undefined)) return null;
  const row = (label: string, degs: readonly number[]) => [label, ...degs.map((deg) => degText(deg))];
  const { rows } = ANGLES;
  const others = poses.flatMap(({ other }) => other ?? []);
  return {
    caption: ANGLES.caption,
    columns: [ANGLES.angle, ...(ends.length === 1 ? [ANGLES.hold] : [ANGLES.start, ANGLES.end])],
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

function peaksTable(card: PosedCard, swept: Sweep): Table {
  const { peak, otherPeak } = swept;
  const { rows } = PEAKS;
  const row = (label: string, value: (peaks: Peaks) => string) => [
    label,
    value(peak),
    ...(otherPeak === null ? [] : [value(otherPeak)]),
  ];
  const blank = otherPeak === null ? [] : ['–'];
  return {
    caption: PEAKS.caption,
    columns: [
      PEAKS.estimate,
      ...(otherPeak === null
        ? [card.legs === 'together' ? PEAKS.one : PEAKS.work]
        : [PEAKS.work, PEAKS.other]),
    ],
    rows: [
      row(rows.compressionBw, ({ compressionBw }) => bwText(compressionBw)),
      row(rows.tensionBw, ({ tensionBw }) => bwText(tensionBw)),
      row(rows.hipMomentNm, ({ hipMomentNm }) => wholeText(hipMomentNm)),
      row(rows.kneeMomentNm, ({ kneeMomentNm }) => wholeText(kneeMomentNm)),
      row(rows.demand, ({ demand }) => bwText(demand)),
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

function loadsTable(card: PosedCard, model: Model): readonly Table[] {
  const { loadAt } = card.movement;
  if (loadAt === undefined) return [];
  const rows = WEIGHTS_KG[loadAt].flatMap((loadKg) => {
    const peak = peakWith(card, loadKg, model);
    if (peak === null) return [];
    return [[kgText(loadKg), bwText(peak.compressionBw), bwText(peak.tensionBw), bwText(peak.demand)]];
  });
  return [{ caption: LOADS.caption, columns: LOADS.columns, rows }];
}

function curveOf(card: PosedCard, uses: readonly Use[], { body }: Model, scale: Scale): CurveView | null {
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
    across: CURVE.across,
    up: CURVE.up,
    cap: capped === undefined ? '' : capWord(capped.index + 1),
    alt: curveAlt(Math.min(...degs), Math.max(...degs), bwText(peak.compressionBw), peak.hipFlexionDeg),
  };
}
