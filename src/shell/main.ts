#!/usr/bin/env node
/** The program: this process's words, streams and exit code. */
import { setFlagsFromString } from 'node:v8';
import { mannerOf } from './commandLine.ts';
import { EXIT } from './exit.ts';
import { reportFor } from './report.ts';
import { run } from './run.ts';

// Of its own accord the engine lets garbage grow to four times what is alive before it looks, on a machine with much memory.
// Twice keeps a build of any number of people well below 400 MB [choice].
setFlagsFromString('--heap-growing-percent=100');

const written = process.argv.slice(2);

// A reader that has seen enough (`| head`) is no fault; a full disk behind `>` is.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code !== 'EPIPE') process.exitCode = EXIT.cannotWrite;
});
process.stderr.on('error', () => undefined);
// What a library throws outside our calls would otherwise end with Node's own code.
process.on('uncaughtException', (error) => process.exit(reportFor(mannerOf(written), process).fault(error)));

process.exitCode = await run(written, process);
