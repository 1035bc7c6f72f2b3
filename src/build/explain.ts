/** Says of one person's programme where every number comes from. Writes nothing. */
import type { Programme } from '../programme/programme.ts';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';
import type { Flags } from './flags.ts';
import { foldersOf } from './folders.ts';
import { makeProgrammes } from './make.ts';
import { nearestOf } from './nearest.ts';
import { reportFor, type Report } from './report.ts';
import { version } from './shelf.ts';
import { readWorkspace, type Workspace } from './workspace.ts';

export async function explain(flags: Flags, alias: string): Promise<number> {
  const report = reportFor(flags);
  const workspace = readWorkspace(foldersOf(flags));
  const { library } = workspace;
  if (library === null) {
    report.problems(workspace.libraryProblems, workspace.files);
    return EXIT.content;
  }
  const consult = workspace.current.find((one) => one.alias === alias);
  if (consult === undefined) return noConsult(alias, workspace, report);
  const { programmes, problems } = makeProgrammes([consult], workspace, {
    library,
    models: new Map(),
    loadleaf: version(),
  });
  report.problems(problems, workspace.files);
  const [programme] = programmes;
  if (programme === undefined) return EXIT.content;
  report.answer(explanation(programme));
  if (flags.json !== true) sayAll(programme, report);
  return EXIT.good;
}

/** The whole of it as one object. */
function explanation({ alias, revision, stage, step, steps, record }: Programme) {
  return {
    alias,
    revision,
    stage: stage.chosen,
    step,
    cells: steps.flatMap(({ prescriptions }) => prescriptions.flatMap(({ cells }) => cells)),
    passedOver: record.passedOver.map(({ card, slot, stage: of, because, limit, value }) => ({
      card,
      slot,
      stage: of,
      because,
      limit,
      value,
    })),
    week: record.week,
    running: record.running,
    sitting: record.sitting,
  };
}

function noConsult(
  alias: string,
  { current, stopped, consultProblems, files }: Workspace,
  report: Report,
): number {
  if (stopped.includes(alias)) {
    report.problems(consultProblems, files);
    return EXIT.content;
  }
  const near = nearestOf(
    alias,
    current.map((one) => one.alias),
  );
  throw new Stop(
    EXIT.noSuchFile,
    `there is no consult of ${alias}${near === null ? '' : `; did you mean ${near}?`}`,
  );
}

function sayAll({ alias, revision, stage, step, steps, record }: Programme, report: Report): void {
  report.say(
    `${alias}, revision ${revision}: ${stage.chosen === 'keep' ? 'keep-going stage' : `stage ${stage.chosen}`} (${stage.name}), step ${step}`,
  );
  for (const because of stage.because) report.say(`  ${because}`);
  for (const table of steps) {
    report.say(`\n${table.heading}${table.change === '' ? '' : `. ${table.change}`}`);
    for (const { title, slot, cells } of table.prescriptions) {
      report.say(`\n  ${title} (${slot})`);
      for (const { cell, value, text, rule, decidedBy, source } of cells) {
        if (text === '' && value === null) continue;
        report.say(`    ${cell.padEnd(14)} ${String(value ?? '-').padEnd(12)} ${text}`);
        report.say(`    ${''.padEnd(14)} by ${decidedBy}: ${rule} [${source.mark}: ${source.cite}]`);
      }
    }
  }
  report.say('\nPassed over');
  for (const { card, slot, stage: of, because } of record.passedOver)
    report.say(`  ${String(of)}  ${card} for ${slot}: ${because}`);
  report.say('\nWeek');
  for (const { weekday, entries } of record.week.days)
    report.say(`  ${weekday}  ${entries.join('; ') || '-'}`);
  for (const gave of record.week.gaveUp) report.say(`  gave up: ${gave}`);
  report.say('\nRemarks');
  for (const remark of record.remarks) report.say(`  ${remark}`);
}
