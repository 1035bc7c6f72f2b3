/** The program: this process's words, streams and exit code. */
import { mannerOf } from './commandLine.ts';
import { EXIT } from './exit.ts';
import { reportFor } from './report.ts';
import { run } from './run.ts';

/** `written`: the words after the name of the program. */
export async function program(written: readonly string[]): Promise<void> {
  // A reader that has seen enough (`| head`) is no fault; a full disk behind `>` is.
  process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
    if (code !== 'EPIPE') process.exitCode = EXIT.cannotWrite;
  });
  process.stderr.on('error', () => undefined);
  // What a library throws outside our calls would otherwise end with Node's own code.
  process.on('uncaughtException', (error) =>
    process.exit(reportFor(mannerOf(written), process).fault(error)),
  );
  process.exitCode = await run(written, process);
}

/** As a thread of the crew: the rooms a set is made in are asked for here alone, and help does without them. */
export async function workInCrew(): Promise<void> {
  await (await import('./building/crewHand.ts')).workInCrew();
}
