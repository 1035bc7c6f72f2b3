// The model of the body: a card, its inverse solves, and both done the plain way. Run after `npm run prepare`.
import { readFileSync } from 'node:fs';
import { beltForceN, wrapDeg } from '#dist/mechanics/belt.js';
import { brokenCap } from '#dist/mechanics/cap.js';
import { closePose, supportAt } from '#dist/mechanics/closure.js';
import { fitRangeAndLoad } from '#dist/mechanics/rangeAndLoad.js';
import { WHOLE } from '#dist/mechanics/gentle.js';
import { postureOf } from '#dist/mechanics/kinematics.js';
import { legOf } from '#dist/mechanics/leg.js';
import { largestLoad } from '#dist/mechanics/load.js';
import { legMoments } from '#dist/mechanics/moment.js';
import { STRENGTH_N, STRESS_N_PER_CM2 } from '#dist/mechanics/muscle.js';
import { bisect, largestRange } from '#dist/mechanics/range.js';
import { reactionsOf } from '#dist/mechanics/reaction.js';
import { SAMPLES, samplesOf, sweep, verticalOnlySqueezeBw } from '#dist/mechanics/sweep.js';
import { poseAt } from '#dist/mechanics/trajectory.js';
import { sumOf, weightsOf } from '#dist/mechanics/weight.js';
import { enumerateShares, goldenLow, scanRoot } from '../tests/mechanics/reference.mjs';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';

const CARD_LIMIT_MS = 8;
const INVERSE_LIMIT_MS = 25;
const ROUNDS = 100;
const PLAIN_ROUNDS = 3;
const PLAIN = 'the speed of plain search';

const body = { massKg: 70, heightM: 1.75 };
const bodyN = body.massKg * 9.81;
const tempo = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
const caps = { hipFlexionDeg: 60, compressionBw: 1, tensionBw: 2.5, demand: 0.9, supportMargin: 1.25 };
const loadCaps = { ...caps, hipFlexionDeg: null, compressionBw: 1.2, supportMargin: 1 };
const cards = JSON.parse(
  readFileSync(new URL('../tests/published/exercise-cards.json', import.meta.url), 'utf8'),
);
const named = (name) => cards.find((card) => card.name.startsWith(name));

const one = named('RDL 20 kg to 90');
const two = named('Single-leg bridge, from the floor');
const both = named('Hip thrust 40 kg');

agree(card(one).peak.tensionBw, plainCard(one));
agree(card(two).peak.tensionBw, plainCard(two));
agree(range(one).fraction, plainRange(one));

await time('card on one support', CARD_LIMIT_MS, () => card(one), () => plainCard(one)); // prettier-ignore
await time('card on two supports, both friction modes', CARD_LIMIT_MS, () => card(two), () => plainCard(two)); // prettier-ignore
await time('card on two supports with a load', CARD_LIMIT_MS, () => card(both));
await time('largest range, one support, 20 kg', INVERSE_LIMIT_MS, () => range(one), () => plainRange(one)); // prettier-ignore
await time('largest range, two supports', INVERSE_LIMIT_MS, () => range(two));
await time('largest range, two supports, 40 kg', INVERSE_LIMIT_MS, () => range(both));
await time('largest load, one support', INVERSE_LIMIT_MS, () => load(named('Good-morning')));
await time('largest load, two supports', INVERSE_LIMIT_MS, () => load(both));
await time('range and load over six weights, with the lift', 6 * INVERSE_LIMIT_MS, () => fit(one));

/** 41 poses: least-effort friction, and vertical reactions only. */
function card({ movement, loadKg }) {
  verticalOnlySqueezeBw(movement, body, loadKg, WHOLE);
  return sweep(movement, body, loadKg, WHOLE, tempo);
}

function range({ movement, loadKg }) {
  return largestRange(movement, body, loadKg, caps);
}

function load({ movement }) {
  return largestLoad(movement, body, loadCaps);
}

function fit({ movement }) {
  return fitRangeAndLoad({
    movement,
    body,
    loadsKgDescending: [40, 30, 20, 16, 12, 8],
    caps: { ...caps, compressionBw: 0.6 },
    leastFraction: 0.5,
    stepHeightsM: [],
    pickUpHeightM: 0.75,
  });
}

/** The same 41 poses and both friction modes by search alone; the largest pull, body weights. */
function plainCard({ movement, loadKg }) {
  const pulls = samplesOf(movement).map((t) => {
    plainShares(movement, loadKg, t, 'none');
    return plainShares(movement, loadKg, t, 'minEffort').forcesN[0] / bodyN;
  });
  return Math.max(...pulls);
}

/** The same range of a movement whose start is its gentler end, by the same looks at search's expense. */
function plainRange({ movement, loadKg }) {
  const holdsAt = (t) =>
    [0, 0.25, 0.5, 0.75, 1].every((share) => brokenCap(movement, plainStrain(movement, share * loadKg, t), caps) === null); // prettier-ignore
  const first = samplesOf(movement).findIndex((t) => !holdsAt(t));
  return first < 0 ? 1 : bisect(holdsAt, (first - 1) / (SAMPLES - 1), first / (SAMPLES - 1));
}

function plainStrain(movement, loadKg, t) {
  const { forcesN } = plainShares(movement, loadKg, t, 'minEffort');
  const hipFlexionDeg = poseAt(movement, t).work.hip;
  return {
    hipFlexionDeg,
    tensionBw: forcesN[0] / bodyN,
    compressionBw: beltForceN(forcesN[0], wrapDeg(hipFlexionDeg)) / bodyN,
    demand: Math.max(...forcesN.map((force, i) => force / STRENGTH_N[i])),
  };
}

function plainShares(movement, loadKg, t, friction) {
  const posture = plainPosture(movement, poseAt(movement, t), loadKg);
  const weights = weightsOf(posture, body, movement.loadAt, loadKg);
  const leg = legOf(posture.pose.work, body);
  const sharesAt = (frictionN) => {
    const reactions = reactionsOf(posture, movement.supports, weights, frictionN);
    return enumerated(leg, legMoments('work', posture.work, weights.work, reactions));
  };
  if (friction === 'none' || movement.supports.length < 2) return sharesAt(0);
  const upN = reactionsOf(posture, movement.supports, weights, 0).map((reaction) => reaction.upN);
  const mostN = 0.3 * Math.min(...upN);
  return sharesAt(goldenLow((frictionN) => sharesAt(frictionN).cost, -mostN, mostN));
}

function plainPosture(movement, pose, loadKg) {
  const { solve, supports } = movement;
  if (!solve) return closePose(movement, pose, body, loadKg);
  const turned = (deg) => postureOf({ ...pose, trunk: deg }, body);
  const gap = (deg) => {
    const posture = turned(deg);
    if (solve.kind === 'height')
      return supportAt(posture, supports[0]).y - supportAt(posture, supports[1]).y - (solve.dh ?? 0);
    const { downN, momentNm } = sumOf(weightsOf(posture, body, movement.loadAt, loadKg));
    return supportAt(posture, supports[0]).x * downN + momentNm;
  };
  return turned(scanRoot(gap, ...solve.range));
}

function enumerated({ arms, leastN, achillesArmM }, { hipNm, kneeNm, ankleNm }) {
  const weights = STRENGTH_N.map((strength) => (strength / STRESS_N_PER_CM2) ** 2);
  const mostN = weights.map((_, i) => (i === 6 ? Math.max(0, ankleNm) / achillesArmM : Infinity));
  return enumerateShares({ arms, hipNm, kneeNm, leastN, mostN, weights });
}

/** A comparison is one only between ways to the same answer. */
function agree(fast, plain) {
  if (Math.abs(fast - plain) > 1e-4) throw new Error(`plain search gives ${plain}, the model ${fast}`);
}

async function time(what, limit, work, plainWork) {
  const value = await medianMs(ROUNDS, work);
  const ratio =
    plainWork === undefined
      ? undefined
      : { times: (await medianMs(PLAIN_ROUNDS, plainWork)) / value, to: PLAIN };
  tell({ what, value, unit: 'ms', limit, ratio });
}
