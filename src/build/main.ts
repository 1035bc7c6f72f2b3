#!/usr/bin/env node
/** The command line. Heavy rooms are imported only by the command that needs them. */
import { mannerOf, readCommandLine } from './commandLine.ts';
import { COMMANDS } from './commands.ts';
import { EXIT } from './exit.ts';
import { reportFor } from './report.ts';

const written = process.argv.slice(2);
const report = reportFor(mannerOf(written));

// A reader that has seen enough (`| head`) is no fault; a full disk behind `>` is.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code !== 'EPIPE') process.exitCode = EXIT.cannotWrite;
});
process.stderr.on('error', () => undefined);
// What a library throws outside our calls would otherwise end with Node's own code.
process.on('uncaughtException', (error) => process.exit(report.fault(error)));

process.exitCode = await run();

async function run(): Promise<number> {
  try {
    const line = readCommandLine(written);
    if (line.asks === 'work') return await COMMANDS[line.of].run(line.flags, line.words, report);
    if (line.asks === 'help') report.text('help', (await import('./help.ts')).helpOf(line.of));
    else report.text('version', (await import('./shelf.ts')).version());
    return EXIT.good;
  } catch (error) {
    return report.fault(error);
  }
}
