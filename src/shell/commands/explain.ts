/** The command that says of one person's programme where every number comes from. Writes nothing. */
import type { Programme } from '../../programme/programme.ts';
import { EXIT } from '../exit.ts';
import { explanationText } from './explanationText.ts';
import type { Flags } from '../flags.ts';
import { sourceFolders } from '../io/folders.ts';
import { libraryFaults } from '../building/libraryFaults.ts';
import { logoOf } from '../io/logo.ts';
import { nearestOf } from '../nearest.ts';
import { oneProgramme, orderOf, problemsOf } from '../building/oneSet.ts';
import type { Report } from '../report.ts';
import { readPaperAssets, version } from '../io/assets.ts';
import { Stop } from '../io/stop.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';

/** Exit 65 when the library or this person's consult has a Problem, 66 when there is no consult of the alias. */
export async function explain(flags: Flags, alias: string, report: Report): Promise<number> {
  const folders = sourceFolders(flags);
  const workspace = readWorkspace(folders);
  const { library, libraryProblems, files } = workspace;
  if (library === null) return report.refuse('The library has errors.', libraryProblems, files);
  const logo = await logoOf(library.clinic, folders.content);
  const paper = await readPaperAssets(null);
  const faults = await libraryFaults(library, logo, paper, workspace);
  if (faults.length > 0) return report.refuse('The library has errors.', faults, files);
  const inUse = workspace.current.find((one) => one.alias === alias);
  if (inUse === undefined) return noConsult(alias, workspace, report);
  const workshop = { library, models: new Map(), loadleaf: version() };
  const made = await oneProgramme(orderOf(inUse, workspace), {
    workshop,
    paper,
    pages: { photos: new Map() },
  });
  if (!('programme' in made))
    return report.refuse(`${alias} has no programme.`, problemsOf(made, workspace), files);
  const { programme } = made;
  report.answer(explanationOf(programme));
  if (!flags.json) report.say(explanationText(programme));
  return EXIT.good;
}

function noConsult(alias: string, workspace: Workspace, report: Report): Promise<number> {
  const { current, stopped, aliases, consultProblems, files } = workspace;
  const known = [...current.map((one) => one.alias), ...stopped];
  if (!stopped.includes(alias))
    throw new Stop(EXIT.noSuchFile, `there is no consult of ${alias}`, nearestOf(alias, known));
  const own = consultProblems.filter(({ file }) => aliases.get(file) === alias);
  return report.refuse(`${alias} has no programme.`, own, files);
}

function explanationOf({ alias, revision, stage, step, steps, record }: Programme) {
  return {
    alias,
    revision,
    stage: stage.chosen,
    step,
    cells: steps.flatMap(({ prescriptions }) =>
      prescriptions.flatMap(({ cells }) => cells.map((one) => cellOf(one))),
    ),
    passedOver: record.passedOver.map(({ card, slot, stage: of, because, limit, value }) => ({
      card,
      slot,
      stage: of,
      because,
      limit,
      value,
    })),
    week: { days: record.week.days, gaveUp: record.week.gaveUp },
    running: record.running,
    sitting: record.sitting,
  };
}

type Cell = Programme['steps'][number]['prescriptions'][number]['cells'][number];

function cellOf({ step, slot, card, cell, value, text, rule, inputs, source, decidedBy }: Cell): Cell {
  const { cite, mark } = source;
  return { step, slot, card, cell, value, text, rule, inputs, source: { cite, mark }, decidedBy };
}
