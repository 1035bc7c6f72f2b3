/** The command that says what the body model makes of one card for one body: an estimate, for ordering positions and limiting early stages. */
import type { ExerciseCard } from '../../content/library.ts';
import { bodyProblem, type Body } from '../../mechanics/body.ts';
import type { Caps } from '../../mechanics/cap.ts';
import type { Movement } from '../../mechanics/movement.ts';
import { largestRange, type AdmittedRange, type Barred } from '../../mechanics/range.ts';
import { sweep, verticalOnlySqueezeBw } from '../../mechanics/sweep.ts';
import { muscleSettings } from '../../decisions/person/body.ts';
import { HEAVIEST_WRITTEN_KG } from '../../units/load.ts';
import { roundTo } from '../../units/round.ts';
import { readCard } from './card.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { contentFolder } from '../io/folders.ts';
import { nearestOf } from '../nearest.ts';
import type { OptionName } from '../options.ts';
import type { Report } from '../report.ts';
import { Stop } from '../io/stop.ts';

/** Works on any content folder; of all files in it only the card itself must be right. */
export async function estimate(flags: Flags, id: string, report: Report): Promise<number> {
  const size = bodyFrom(flags);
  const caps = capsFrom(flags);
  const { card, muscles, problems, files, known } = readCard(contentFolder(flags.content), id);
  if (!known.includes(id))
    throw new Stop(EXIT.noSuchFile, `there is no exercise card ${id}`, nearestOf(id, known));
  if (card === null || muscles === null)
    return report.refuse(`The card ${id} or the clinic file has errors.`, problems, files);
  const body = { ...size, muscles: muscleSettings(muscles) };
  const movement = movementOf(card, flags.loadKg);
  const range = largestRange(movement, body, flags.loadKg, caps);
  const answer = range.admitted
    ? admittedAnswer(figuresFor(card, movement, body, flags.loadKg, range), range, flags.loadKg)
    : barredAnswer(card, body, range, flags.loadKg);
  report.answer(answer);
  if (!flags.json) report.say(textOf(card, body, range, answer));
  return EXIT.good;
}

/** Of the admitted part; fine enough to be compared with a calculation by hand, a leaflet prints none of these. */
function figuresFor(
  card: ExerciseCard,
  movement: Movement,
  body: Body,
  loadKg: number,
  range: AdmittedRange,
) {
  const swept = sweep(movement, body, loadKg, range.interval, card.tempo);
  const verticalOnlyBw = verticalOnlySqueezeBw(movement, body, loadKg, range.interval);
  if (swept === null || verticalOnlyBw === null) throw cannotRest(card, body, loadKg);
  const { peak, tensionTimeBwS, compressionTimeBwS } = swept;
  return {
    hipFlexionMaxDeg: roundTo(peak.hipFlexionDeg, 0.001),
    trunkLeanMaxDeg: roundTo(peak.trunkLeanDeg, 0.001),
    tensionBw: roundTo(peak.tensionBw, 1e-6),
    compressionBw: roundTo(peak.compressionBw, 1e-6),
    compressionVerticalOnlyBw: roundTo(verticalOnlyBw, 1e-6),
    hipMomentNm: roundTo(peak.hipMomentNm, 0.001),
    kneeMomentNm: roundTo(peak.kneeMomentNm, 0.001),
    demand: roundTo(peak.demand, 1e-6),
    tensionTimeBwS: roundTo(tensionTimeBwS, 1e-6),
    compressionTimeBwS: roundTo(compressionTimeBwS, 1e-6),
  };
}
type Figures = ReturnType<typeof figuresFor>;

function admittedAnswer(figures: Figures, range: AdmittedRange, loadKg: number) {
  return {
    admitted: true,
    ...figures,
    rangeFraction: roundTo(range.fraction, 1e-6),
    loadKg,
    decidedBy: decidedBy(range),
  };
}

const NO_FIGURES = {
  hipFlexionMaxDeg: null,
  trunkLeanMaxDeg: null,
  tensionBw: null,
  compressionBw: null,
  compressionVerticalOnlyBw: null,
  hipMomentNm: null,
  kneeMomentNm: null,
  demand: null,
  tensionTimeBwS: null,
  compressionTimeBwS: null,
} as const satisfies Record<keyof Figures, null>;

/** No part of it may be done, so there is nothing to estimate: a figure here would be one above a cap. */
function barredAnswer(card: ExerciseCard, body: Body, range: Barred, loadKg: number) {
  if (range.barredBy === 'pose') throw cannotRest(card, body, loadKg);
  return { admitted: false, ...NO_FIGURES, rangeFraction: 0, loadKg, decidedBy: decidedBy(range) };
}

function cannotRest({ id }: ExerciseCard, { heightM, massKg }: Body, loadKg: number): Stop {
  return new Stop(
    EXIT.content,
    `a body of ${heightM} m and ${massKg} kg cannot rest in the pose of ${id} with ${loadKg} kg`,
  );
}

type Range = AdmittedRange | Barred;

// Where no cap decides, the card as it is written does.
function decidedBy(range: Range) {
  const by = range.admitted ? range.decidedBy : range.barredBy;
  return by === 'full' || by === 'pose' ? 'dose' : by;
}

function textOf(
  { title }: ExerciseCard,
  { heightM, massKg }: Body,
  range: Range,
  answer: ReturnType<typeof admittedAnswer> | ReturnType<typeof barredAnswer>,
): string {
  return [
    `${title}, ${massKg} kg, ${heightM} m, with ${answer.loadKg} kg. Model estimates, for ordering only.`,
    ...(range.admitted
      ? Object.entries(answer).flatMap(([name, value]) =>
          name === 'admitted'
            ? []
            : [`  ${name.padEnd(26)} ${typeof value === 'number' ? roundTo(value, 0.01) : value}`],
        )
      : [`Not admitted even at its gentle end (${range.barredBy}): no figures.`]),
  ].join('\n');
}

function movementOf({ id, movement }: ExerciseCard, loadKg: number): Movement {
  if (movement === null)
    throw new Stop(EXIT.usage, `the card ${id} has no pose: the model says nothing of it`);
  if (loadKg < 0 || loadKg > HEAVIEST_WRITTEN_KG)
    throw new Stop(EXIT.usage, `--load ${loadKg}: from 0 to ${HEAVIEST_WRITTEN_KG} kg`);
  if (loadKg > 0 && movement.loadAt === undefined)
    throw new Stop(EXIT.usage, `the card ${id} carries no weight; leave out --load`);
  return movement;
}

function bodyFrom({ heightM, massKg }: Flags): Body {
  if (heightM === null || massKg === null)
    throw new Stop(EXIT.usage, 'name the body: --height in metres and --mass in kilograms');
  const body = { heightM, massKg };
  const problem = bodyProblem(body);
  if (problem === null) return body;
  const { figure, found, from, to } = problem;
  throw new Stop(EXIT.usage, `--${figure === 'heightM' ? 'height' : 'mass'} ${found}: from ${from} to ${to}`);
}

function capsFrom({ hipCapDeg, compressionCapBw, tensionCapBw, demandCap }: Flags): Caps {
  return {
    angle: 'hipFlexion',
    angleDeg: ofHumanHips(notBelowNought('hip-cap', hipCapDeg)),
    compressionBw: notBelowNought('compression-cap', compressionCapBw),
    tensionBw: notBelowNought('tension-cap', tensionCapBw),
    demand: notBelowNought('demand-cap', demandCap),
    // The margin for two supports is a stage's matter; asked here, caps are taken as they are.
    supportMargin: 1,
  };
}

function notBelowNought(name: OptionName, cap: number | null): number | null {
  if (cap !== null && cap < 0) throw new Stop(EXIT.usage, `--${name} ${cap}: a cap is 0 or more`);
  return cap;
}

// As far as a cap of a protocol may go; more is a slip of the pen.
const WIDEST_HIP_CAP_DEG = 140;

function ofHumanHips(capDeg: number | null): number | null {
  if (capDeg !== null && capDeg > WIDEST_HIP_CAP_DEG)
    throw new Stop(EXIT.usage, `--hip-cap ${capDeg}: from 0 to ${WIDEST_HIP_CAP_DEG}`);
  return capDeg;
}
