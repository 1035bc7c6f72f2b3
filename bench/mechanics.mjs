// The model of the body: a card, its inverse solves, and the same card done the plain way. Run after `npm run prepare`.
// Processor time, so that a busy machine does not make the model look slow.
import { readFileSync } from 'node:fs';
import { closePose, supportAt } from '#dist/mechanics/closure.js';
import { legOf } from '#dist/mechanics/leg.js';
import { fitRangeAndLoad } from '#dist/mechanics/fit.js';
import { WHOLE } from '#dist/mechanics/gentle.js';
import { postureOf } from '#dist/mechanics/kinematics.js';
import { largestLoad } from '#dist/mechanics/load.js';
import { legMoments } from '#dist/mechanics/moment.js';
import { STRENGTH_N, STRESS_N_PER_CM2 } from '#dist/mechanics/muscle.js';
import { largestRange } from '#dist/mechanics/range.js';
import { reactionsOf } from '#dist/mechanics/reaction.js';
import { samplesOf, sweep } from '#dist/mechanics/sweep.js';
import { poseAt } from '#dist/mechanics/trajectory.js';
import { sumOf, weightsOf } from '#dist/mechanics/weight.js';
import { enumerateShares, goldenLow, scanRoot } from '../tests/mechanics/reference.mjs';

const CARD_LIMIT_MS = 8;
const INVERSE_LIMIT_MS = 25;
const ROUNDS = 25;

const body = { massKg: 70, heightM: 1.75 };
const tempo = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
const loadCaps = { hipFlexionDeg: null, compressionBw: 1.2, tensionBw: 2.5, demand: 0.9, supportMargin: 1 };
const caps = { hipFlexionDeg: 60, compressionBw: 1, tensionBw: 2.5, demand: 0.9, supportMargin: 1.25 };
const cards = JSON.parse(
  readFileSync(new URL('../tests/published/exercise-cards.json', import.meta.url), 'utf8'),
);
const named = (name) => cards.find((card) => card.name.startsWith(name));

const one = named('RDL 20 kg to 90');
const two = named('Single-leg bridge, from the floor');
const both = named('Hip thrust 40 kg');

time('card on one support', CARD_LIMIT_MS, ROUNDS, () => card(one));
time('card on two supports, both friction modes', CARD_LIMIT_MS, ROUNDS, () => card(two));
time('card on two supports with a load', CARD_LIMIT_MS, ROUNDS, () => card(both));
time('largest range, one support, 20 kg', INVERSE_LIMIT_MS, ROUNDS, () => range(one));
time('largest range, two supports', INVERSE_LIMIT_MS, ROUNDS, () => range(two));
time('largest range, two supports, 40 kg', INVERSE_LIMIT_MS, ROUNDS, () => range(both));
time('largest load, one support', INVERSE_LIMIT_MS, ROUNDS, () => load(named('Good-morning')));
time('largest load, two supports', INVERSE_LIMIT_MS, ROUNDS, () => load(both));
time('range and load over six weights, with the lift', 6 * INVERSE_LIMIT_MS, ROUNDS, () => fit(one));
for (const subject of [one, two]) {
  const fast = median(ROUNDS, () => card(subject));
  const slow = median(3, () => plainCard(subject));
  console.log(
    `${subject.name}: plain scan, golden section and enumeration ${slow.toFixed(0)} ms, ${(slow / fast).toFixed(0)} times as long`,
  );
}

function card({ movement, loadKg }) {
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

/** The same 41 poses and both friction modes by search alone. */
function plainCard({ movement, loadKg }) {
  return samplesOf(movement).map((t) => {
    const posture = plainPosture(movement, poseAt(movement, t), loadKg);
    const weights = weightsOf(posture, body, movement.loadAt, loadKg);
    const leg = legOf(posture.pose.work, body);
    const sharesAt = (frictionN) => {
      const reactions = reactionsOf(posture, movement.supports, weights, frictionN);
      return plainShares(leg, legMoments('work', posture.work, weights.work, reactions));
    };
    const none = sharesAt(0);
    if (movement.supports.length < 2) return [none, none];
    const upN = reactionsOf(posture, movement.supports, weights, 0).map((reaction) => reaction.upN);
    const mostN = 0.3 * Math.min(...upN);
    return [sharesAt(goldenLow((frictionN) => sharesAt(frictionN).cost, -mostN, mostN)), none];
  });
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

function plainShares({ arms, leastN, achillesArmM }, { hipNm, kneeNm, ankleNm }) {
  const weights = STRENGTH_N.map((strength) => (strength / STRESS_N_PER_CM2) ** 2);
  const mostN = weights.map((_, i) => (i === 6 ? Math.max(0, ankleNm) / achillesArmM : Infinity));
  return enumerateShares({ arms, hipNm, kneeNm, leastN, mostN, weights });
}

function time(what, limitMs, rounds, work) {
  const firstMs = elapsed(work);
  const ms = median(rounds, work);
  const verdict = ms < limitMs ? 'within' : 'OVER';
  console.log(
    `${what}: median ${ms.toFixed(2)} ms (first ${firstMs.toFixed(1)} ms), ${verdict} ${limitMs} ms`,
  );
  if (ms >= limitMs) process.exitCode = 1;
}

function median(rounds, work) {
  const times = Array.from({ length: rounds }, () => elapsed(work)).sort((a, b) => a - b);
  return times[Math.floor(rounds / 2)];
}

function elapsed(work) {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
