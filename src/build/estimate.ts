/** What the body model says of one card for one body: an estimate, for ordering and for limiting early stages. */
import { bodyProblem, type Body } from '../mechanics/body.ts';
import { HEAVIEST_KG } from '../mechanics/load.ts';
import type { Caps } from '../mechanics/cap.ts';
import { gentleEndOf } from '../mechanics/gentle.ts';
import { largestRange } from '../mechanics/range.ts';
import { stretchFrom, sweep } from '../mechanics/sweep.ts';
import { roundTo } from '../units/round.ts';
import { readLibrary } from '../content/readLibrary.ts';
import { resolve } from 'node:path';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';
import type { Flags } from './flags.ts';
import { isFolder, readFolder } from './folder.ts';
import { nearestOf } from './nearest.ts';
import { reportFor } from './report.ts';

/** Works on any content folder; consults and clinic are not asked for. */
export async function estimate(flags: Flags, id: string): Promise<number> {
  const report = reportFor(flags);
  const body = bodyFrom(flags);
  const loadKg = flags.load ?? 0;
  const content = resolve(flags.content);
  if (!isFolder(content))
    throw new Stop(
      EXIT.noSuchFile,
      `there is no folder ${flags.content}; name the library folder with --content`,
    );
  const files = readFolder(content, (file) => !file.startsWith('consults/'));
  const { library, problems } = readLibrary(files);
  if (library === null) {
    report.problems(problems, files);
    return EXIT.content;
  }
  const card = library.exercises.get(id);
  if (card === undefined) {
    const near = nearestOf(id, [...library.exercises.keys()]);
    throw new Stop(
      EXIT.noSuchFile,
      `there is no exercise card ${id}${near === null ? '' : `; did you mean ${near}?`}`,
    );
  }
  const { movement } = card;
  if (movement === null)
    throw new Stop(EXIT.usage, `the card ${id} has no pose: the model says nothing of it`);
  if (loadKg < 0 || loadKg > HEAVIEST_KG)
    throw new Stop(EXIT.usage, `--load ${loadKg}: 0 to ${HEAVIEST_KG} kg`);
  if (loadKg > 0 && movement.loadAt === undefined)
    throw new Stop(EXIT.usage, `the card ${id} carries no weight; leave out --load`);
  const caps = capsFrom(flags);
  const range = largestRange(movement, body, loadKg, caps);
  const stretch = range.admitted ? range.stretch : stretchFrom(gentleEndOf(movement, body, loadKg), 0);
  const swept = sweep(movement, body, loadKg, stretch, card.tempo);
  if (swept === null)
    throw new Stop(
      EXIT.usage,
      `a body of ${body.heightM} m and ${body.massKg} kg cannot take this pose with ${loadKg} kg`,
    );
  const { peak, verticalOnly } = swept;
  const answer = {
    hipFlexionMaxDeg: roundTo(peak.hipFlexionDeg, 0.001),
    trunkLeanMaxDeg: roundTo(peak.trunkLeanDeg, 0.001),
    tensionBw: roundTo(peak.tensionBw, 1e-6),
    compressionBw: roundTo(peak.compressionBw, 1e-6),
    compressionVerticalOnlyBw: roundTo(verticalOnly.compressionBw, 1e-6),
    hipMomentNm: roundTo(peak.hipMomentNm, 0.001),
    kneeMomentNm: roundTo(peak.kneeMomentNm, 0.001),
    demand: roundTo(peak.demand, 1e-6),
    tensionTimeBwS: roundTo(swept.tensionTimeBwS, 1e-6),
    compressionTimeBwS: roundTo(swept.compressionTimeBwS, 1e-6),
    rangeFraction: range.admitted ? roundTo(range.fraction, 1e-6) : 0,
    loadKg,
    decidedBy: range.admitted
      ? range.decidedBy === 'full' || range.decidedBy === 'pose'
        ? 'dose'
        : range.decidedBy
      : range.barredBy === 'pose'
        ? 'dose'
        : range.barredBy,
  };
  report.answer(answer);
  if (flags.json !== true) {
    report.say(
      `${card.title}, ${body.massKg} kg, ${body.heightM} m, ${loadKg} kg in place. Model estimates, for ordering only.`,
    );
    if (!range.admitted)
      report.say(
        `Not admitted even at its gentle end (${range.barredBy}); the figures are those of the gentle end.`,
      );
    for (const [name, value] of Object.entries(answer))
      report.say(`  ${name.padEnd(26)} ${typeof value === 'number' ? roundTo(value, 0.01) : value}`);
  }
  return EXIT.good;
}

function bodyFrom({ height, mass }: Flags): Body {
  if (height === undefined || mass === undefined)
    throw new Stop(EXIT.usage, 'name the body: --height in metres and --mass in kilograms');
  const body = { heightM: height, massKg: mass };
  const problem = bodyProblem(body);
  if (problem !== null)
    throw new Stop(
      EXIT.usage,
      `--${problem.figure === 'heightM' ? 'height' : 'mass'} ${problem.found}: from ${problem.from} to ${problem.to}`,
    );
  return body;
}

function capsFrom({ hipCap, compressionCap, tensionCap, demandCap }: Flags): Caps {
  const given = { hipCap, compressionCap, tensionCap, demandCap };
  for (const [name, value] of Object.entries(given)) {
    if (value !== undefined && value < 0)
      throw new Stop(EXIT.usage, `--${name.replace('Cap', '-cap')} ${value}: a cap is 0 or more`);
  }
  // The margin for two supports is a stage's matter; asked here, caps are taken as they are.
  return {
    hipFlexionDeg: hipCap ?? null,
    compressionBw: compressionCap ?? null,
    tensionBw: tensionCap ?? null,
    demand: demandCap ?? null,
    supportMargin: 1,
  };
}
