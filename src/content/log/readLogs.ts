/** The logs that lie beside the consults of a clinic. */
import { isHidden } from '../fileName.ts';
import { FOLDERS } from '../kind.ts';
import type { Nameable } from '../library.ts';
import { errorAt, sortProblems, type Problem } from '../problem.ts';
import type { SourceFile } from '../source.ts';
import { topOf } from '../sourceText.ts';
import { logHeadLine, type LogHead } from './format.ts';
import type { Log } from './log.ts';
import { logOfName, readLog } from './readLog.ts';

export interface LogsReading {
  /** By the id of the consult, `alias-r2`. */
  readonly logs: ReadonlyMap<string, Log>;
  /** Whose each file is: alias by file. */
  readonly aliases: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
}

/** `aliases`: those there are consults of, right or wrong. */
export function readLogs(
  files: readonly SourceFile[],
  { exercises }: Nameable,
  aliases: ReadonlySet<string>,
): LogsReading {
  const own = files.flatMap((file) => {
    const whose =
      file.file.startsWith(`${FOLDERS.consult}/`) && !isHidden(file.file) ? logOfName(file.file) : null;
    return whose === null ? [] : [{ file, whose, ...readLog(file, whose, exercises) }];
  });
  const twins = own.flatMap(({ file, whose }, index) => {
    const first = own.slice(0, index).find((one) => logHeadLine(one.whose) === logHeadLine(whose));
    return first === undefined ? [] : [twinProblem(file.file, whose, first.file.file)];
  });
  const strays = own.flatMap(({ file, whose }) =>
    aliases.has(whose.alias) ? [] : [strayProblem(file.file, whose)],
  );
  return {
    logs: new Map(
      own.map(({ log }) => [
        `${log.alias}-r${log.revision}`,
        joined(
          log,
          own.map((one) => one.log),
        ),
      ]),
    ),
    aliases: new Map(own.map(({ file, whose }) => [file.file, whose.alias])),
    problems: sortProblems([...own.flatMap(({ problems }) => problems), ...twins, ...strays]),
  };
}

// Which of two files is the right one nobody can tell: nothing of either is used but an alarm.
function joined(log: Log, all: readonly Log[]): Log {
  const same = all.filter((one) => one.alias === log.alias && one.revision === log.revision);
  if (same.length === 1) return log;
  return { ...log, entries: [], unread: 1, alarms: same.flatMap(({ alarms }) => alarms) };
}

function twinProblem(file: string, { alias, revision }: LogHead, first: string): Problem {
  return errorAt(topOf(file), 'duplicate-id', {
    found: `a second log of revision ${revision} of ${alias}, after ${first}`,
    expected: 'the only one',
    fix: 'put the lines of both into one file; the same line twice changes nothing',
  });
}

function strayProblem(file: string, { alias }: LogHead): Problem {
  return errorAt(topOf(file), 'wrong-file-name', {
    found: `a log of ${alias}, of whom there is no consult`,
    expected: 'called as the consult beside it, <alias>-r<revision>.log.csv',
    fix: 'mend the name, or put it beside its consult',
  });
}
