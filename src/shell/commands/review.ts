/** The command that looks back on a revision by its log, and on request writes the next one as a draft. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { logFile } from '../../content/log/format.ts';
import type { Log } from '../../content/log/log.ts';
import { readLog } from '../../content/log/readLog.ts';
import type { Consult, Library } from '../../content/library.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import type { SourceFile } from '../../content/source.ts';
import { askText, groundText, decisionText, MOVE_WORDS } from '../../messages/en/clinician/review.ts';
import type { Because, Review } from '../../review/terms.ts';
import { assembled } from '../../programme/revisions.ts';
import { reviewDay, reviewLogged, type Logged } from '../../programme/reviewed.ts';
import { keepsMode, onDisk, PRIVATE_FILE_MODE } from '../io/disk.ts';
import { sourceFolders } from '../io/folders.ts';
import { shownPath } from '../io/shownPath.ts';
import { onDay } from '../io/today.ts';
import { version } from '../io/assets.ts';
import { Stop } from '../io/stop.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { nearestOf } from '../nearest.ts';
import type { Report } from '../report.ts';
import { writeRevision } from './new.ts';
import type { Reviewed } from '../../drafting/reviewedDraft.ts';

/** Exit 66 where there is no consult or log of that name, 65 where consult, library or log have a Problem; the log's leave an answer all the same. */
export async function review(flags: Flags, alias: string, report: Report): Promise<number> {
  const folders = sourceFolders(flags);
  const workspace = readWorkspace(folders);
  const { library } = workspace;
  const consult = lastOf(alias, workspace);
  const refuse = (problems: readonly Problem[]) =>
    report.refuse(`${alias} cannot be reviewed`, problems, workspace.files);
  if (library === null) return refuse(workspace.libraryProblems);
  if (consult === null) return refuse(problemsOf(alias, workspace));
  const workshop = { library, models: new Map(), loadleaf: version() };
  const made = assembled(consult, workspace.revisionsOf(alias), workshop);
  if ('refusals' in made) return refuse(made.refusals.map(workspace.asProblem));
  const given = logOf(consult, flags, workspace, library);
  const logged: Logged = { consult, programme: made.programme, log: given.log };
  const found = reviewLogged(logged, reviewDay(logged, onDay(flags), flags.on !== null), library);
  await report.problems(given.problems, [...workspace.files, ...given.files]);
  const written = flags.write
    ? writeNext({ review: found, eased: made.programme.eased }, given, folders.consults, flags, report)
    : [];
  tell(found, library, report);
  const isGood = given.problems.length === 0;
  report.answer({ ...answerOf(found, library), problems: given.problems, files: written, ok: isGood });
  return isGood ? EXIT.good : EXIT.content;
}

/** The newest revision that stands; null where a file of that alias has a Problem. */
function lastOf(alias: string, { revisionsOf, aliases, stopped, blocked }: Workspace): Consult | null {
  const last = revisionsOf(alias).consults.at(-1);
  if (last === undefined && ![...aliases.values()].includes(alias))
    throw new Stop(
      EXIT.noSuchFile,
      `there is no consult of ${alias}`,
      nearestOf(alias, [...new Set(aliases.values())]),
    );
  // An alarm stops the leaflet, and is what the review is for.
  return stopped.includes(alias) && !blocked.includes(alias) ? null : (last ?? null);
}

function problemsOf(alias: string, { consultProblems, draftProblems, aliases }: Workspace): Problem[] {
  return sortProblems(
    [...consultProblems, ...draftProblems].filter(({ file }) => aliases.get(file) === alias),
  );
}

interface GivenLog {
  readonly log: Log;
  readonly problems: readonly Problem[];
  readonly files: readonly SourceFile[];
  /** It lies beside the consult already, or there is none. */
  readonly isBeside: boolean;
}

/** The one that was named, else the one beside the consult, else one that says nothing. */
function logOf(
  consult: Consult,
  { log: path }: Flags,
  workspace: Workspace,
  { exercises }: Library,
): GivenLog {
  const { alias, revision, id } = consult;
  if (path === null) {
    const none = { alias, revision, file: '', entries: [], contradicted: [], unread: 0, alarms: [] };
    const log = workspace.revisionsOf(alias).logs.get(id) ?? none;
    const problems = workspace.logProblems.filter(({ file }) => file === log.file);
    return { log, problems, files: [], isBeside: true };
  }
  if (!existsSync(path)) throw new Stop(EXIT.noSuchFile, `there is no file ${shownPath(path)}`);
  const file: SourceFile = {
    file: basename(path),
    bytes: onDisk(path, () => readFileSync(path)),
    link: 'no',
  };
  return { ...readLog(file, { alias, revision }, exercises), files: [file], isBeside: false };
}

/** The draft, and beside the old revision the log by which it was decided, where none lies there. */
function writeNext(
  reviewed: Reviewed,
  { log, isBeside }: GivenLog,
  consults: string,
  flags: Flags,
  report: Report,
): string[] {
  const { alias, revision } = reviewed.review;
  const draft = writeRevision(flags, alias, report, reviewed);
  const place = join(consults, `${alias}-r${revision}.log.csv`);
  if (isBeside || log.entries.length === 0) return draft;
  if (existsSync(place)) {
    report.warn(`${shownPath(place)} is there already and is left; put the lines of both into it.`);
    return draft;
  }
  onDisk(place, () => {
    writeFileSync(place, logFile(log.entries), { flag: 'wx', mode: PRIVATE_FILE_MODE });
    keepsMode(place, PRIVATE_FILE_MODE);
  });
  return [...draft, place];
}

function tell(found: Review, library: Library, report: Report): void {
  const titleOf = (card: string) => library.exercises.get(card)?.title ?? card;
  report.say(`${found.alias}, revision ${found.revision}. ${decisionText(found)}`);
  for (const one of found.because) report.say(`  ${groundText(one)}`);
  for (const { card, decision } of found.exercises) report.say(`  ${titleOf(card)}: ${MOVE_WORDS[decision]}`);
  for (const one of found.asks) report.say(`  Ask: ${askText(one, titleOf)}`);
}

function answerOf(found: Review, library: Library) {
  const titleOf = (card: string) => library.exercises.get(card)?.title ?? card;
  const { alias, revision, decision, stage, step, exercises, running, sitting, goals, asks, counts } = found;
  const grounds = (because: readonly Because[]) =>
    because.map((one) => ({
      rule: one.rule,
      text: groundText(one),
      inputs: one.inputs,
      source: one.source,
      entries: one.entries,
    }));
  const habit = (one: Review['running']) =>
    one === null ? null : { decision: one.decision, because: grounds(one.because) };
  return {
    alias,
    revision,
    decision,
    stage,
    step,
    because: grounds(found.because),
    exercises: exercises.map((one) => ({ ...one, because: grounds(one.because) })),
    running: habit(running),
    sitting: habit(sitting),
    goals,
    asks: asks.map((one) => ({ ...one, text: askText(one, titleOf) })),
    counts,
  };
}
