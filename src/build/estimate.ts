/** The command that says what the body model makes of one card for one body: an estimate, for ordering positions and limiting early stages. */
import type { ExerciseCard } from '../content/library.ts';
import { bodyProblem, type Body } from '../mechanics/body.ts';
import type { Caps } from '../mechanics/cap.ts';
import { gentleEndOf } from '../mechanics/gentle.ts';
import { HEAVIEST_KG } from '../mechanics/load.ts';
import type { Movement } from '../mechanics/movement.ts';
import { largestRange, type AdmittedRange, type Barred } from '../mechanics/range.ts';
import { stretchFrom, sweep, verticalOnlySqueezeBw, type Sweep } from '../mechanics/sweep.ts';
import { roundTo } from '../units/round.ts';
import { readCard } from './card.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { contentFolder } from './folders.ts';
import { nearestOf } from './nearest.ts';
import type { OptionName } from './options.ts';
import type { Report } from './report.ts';
import { Stop } from './stop.ts';

/** Works on any content folder; of all files in it only the card itself must be right. */
export async function estimate(flags: Flags, id: string, report: Report): Promise<number> {
  const body = bodyFrom(flags);
  const caps = capsFrom(flags);
  const found = readCard(contentFolder(flags.content), id);
  if (found.card === null && found.problems.length > 0)
    return report.refuse(`The card ${id} has errors.`, found.problems, found.files);
  if (found.card === null)
    throw new Stop(EXIT.noSuchFile, `there is no exercise card ${id}`, nearestOf(id, found.known));
  const movement = movementOf(found.card, flags.loadKg);
  const range = largestRange(movement, body, flags.loadKg, caps);
  const stretch = range.admitted ? range.stretch : stretchFrom(gentleEndOf(movement, body, flags.loadKg), 0);
  const swept = sweep(movement, body, flags.loadKg, stretch, found.card.tempo);
  const verticalOnlyBw = verticalOnlySqueezeBw(movement, body, flags.loadKg, stretch);
  if (swept === null || verticalOnlyBw === null)
    throw new Stop(
      EXIT.content,
      `a body of ${body.heightM} m and ${body.massKg} kg cannot rest in the pose of ${id} with ${flags.loadKg} kg`,
    );
  const answer = answerOf(swept, verticalOnlyBw, range, flags.loadKg);
  report.answer(answer);
  if (!flags.json) report.say(textOf(found.card, body, range, answer));
  return EXIT.good;
}

type Range = AdmittedRange | Barred;

/** Fine enough to be compared with a calculation by hand; a leaflet prints none of these. */
function answerOf(
  { peak, tensionTimeBwS, compressionTimeBwS }: Sweep,
  verticalOnlyBw: number,
  range: Range,
  loadKg: number,
) {
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
    rangeFraction: range.admitted ? roundTo(range.fraction, 1e-6) : 0,
    loadKg,
    decidedBy: decidedBy(range),
  };
}

// Where no cap decides, the card as it is written does.
function decidedBy(range: Range) {
  const by = range.admitted ? range.decidedBy : range.barredBy;
  return by === 'full' || by === 'pose' ? 'dose' : by;
}

function textOf(
  { title }: ExerciseCard,
  { heightM, massKg }: Body,
  range: Range,
  answer: ReturnType<typeof answerOf>,
): string {
  return [
    `${title}, ${massKg} kg, ${heightM} m, with ${answer.loadKg} kg. Model estimates, for ordering only.`,
    ...(range.admitted
      ? []
      : [`Not admitted even at its gentle end (${range.barredBy}); the figures are those of that end.`]),
    ...Object.entries(answer).map(
      ([name, value]) => `  ${name.padEnd(26)} ${typeof value === 'number' ? roundTo(value, 0.01) : value}`,
    ),
  ].join('\n');
}

function movementOf({ id, movement }: ExerciseCard, loadKg: number): Movement {
  if (movement === null)
    throw new Stop(EXIT.usage, `the card ${id} has no pose: the model says nothing of it`);
  if (loadKg < 0 || loadKg > HEAVIEST_KG)
    throw new Stop(EXIT.usage, `--load ${loadKg}: from 0 to ${HEAVIEST_KG} kg`);
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
    hipFlexionDeg: ofHumanHips(notBelowNought('hip-cap', hipCapDeg)),
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
