/** What the public pages say of the model's estimates of a card. */
import type { Body } from '../../../mechanics/body.ts';
import { numberText } from '../plain.ts';
import { degText } from './library.ts';

/** @example 'For a body of 70 kg and 1.75 m, without a weight, over the whole movement. Model estimates, for ordering only.' */
export function bodySentence({ massKg, heightM }: Body): string {
  return `For a body of ${numberText(massKg)} kg and ${numberText(heightM)} m, without a weight, over the whole movement. Model estimates for ordering positions and limiting early stages; they are not measured forces.`;
}

export function marginSentence(margin: number): string {
  return `Two supports leave the push between them to the person, so caps are held against ${numberText(margin)} times the squeeze and pull.`;
}

export const NO_POSE =
  'The model does not know this movement: its picture is only drawn, and there is no squeeze or pull. Its position and its stated hip bend guard it.';
export const FAST =
  'This is fast work. The model is for slow movement and says nothing of it; it is dosed by contacts and by pain.';
export const CANNOT_REST =
  'The reference body cannot rest in this pose, so the model gives no squeeze or pull.';
export const KNEE_LED_SENTENCE =
  'The knee leads here. The model gives the hamstrings too little in such tasks, so the real squeeze is larger and the hip bend cap must guard it.';
export const STRAIGHT_HIP = 'No squeeze anywhere along the movement in this model: the hip stays straight.';

export function dragSentence(verticalOnlyBw: string): string {
  return `If the heels are dragged in, the squeeze may be ${verticalOnlyBw} body weights: push away, do not drag the heels in.`;
}

export const ANGLES = {
  caption: 'Angles',
  angle: 'Angle',
  start: 'Start',
  end: 'Furthest',
  hold: 'Hold',
  rows: {
    hip: 'Hip flexion, working leg',
    knee: 'Knee flexion, working leg',
    otherHip: 'Hip flexion, other leg',
    otherKnee: 'Knee flexion, other leg',
    trunk: 'Trunk from upright, forward positive',
  },
} as const;

export const PEAKS = {
  caption: 'Largest along the movement',
  estimate: 'Estimate',
  work: 'Working leg',
  other: 'Other leg',
  one: 'Each leg',
  rows: {
    compressionBw: 'Squeeze, body weights',
    tensionBw: 'Pull, body weights',
    hipMomentNm: 'Hip moment, N m',
    kneeMomentNm: 'Knee moment, N m',
    demand: 'Share of muscle strength',
    compressionTimeBwS: 'Squeeze over a repetition, body weights × seconds',
    tensionTimeBwS: 'Pull over a repetition, body weights × seconds',
  },
} as const;

export const LOADS = {
  caption: 'With a weight',
  columns: ['Weight', 'Squeeze, body weights', 'Pull, body weights', 'Share of muscle strength'],
} as const;

export const CURVE = {
  across: 'hip bend',
  up: 'squeeze, body weights',
} as const;

export function curveAlt(fromDeg: number, toDeg: number, peakBw: string, peakDeg: number): string {
  return `Squeeze against hip bend from ${degText(fromDeg)} to ${degText(toDeg)}: at most ${peakBw} body weights, at ${degText(peakDeg)}.`;
}

/** The stage's cap in the chart, before its number. */
export function capWord(stage: number): string {
  return `cap of stage ${stage}`;
}

export function rulerAlt(
  fromDeg: number,
  toDeg: number,
  ticks: readonly { readonly stage: string; readonly capDeg: number }[],
): string {
  const caps = ticks.map(({ stage, capDeg }) => `${stage} up to ${degText(capDeg)}`).join('; ');
  return `Hip bend from ${degText(fromDeg)} to ${degText(toDeg)}.${caps === '' ? '' : ` ${caps}.`}`;
}

export function stageTick(index: number): string {
  return `Stage ${index + 1}`;
}
