#!/usr/bin/env node
/** Starts the program: from its one file where that was made, else from the seven hundred it is made of. */
import { setFlagsFromString } from 'node:v8';
import { wholeProgram } from './whole.ts';

// Of its own accord the engine lets garbage grow to four times what is alive before it looks, on a machine with much memory.
// Of 200 consults the peak is 373 MB at twice and 336 at 1.6 times, for 4 to 6 per cent of the time [choice]. Code kept by the
// engine is good only for an engine that was told the same, so it is told before any is loaded.
setFlagsFromString('--heap-growing-percent=60');

const written = process.argv.slice(2);
// Help needs a handful of the seven hundred.
const isForHelp = written.length === 0 || written.some((word) => /^(-h|--help|--version)$/.test(word));
const whole = isForHelp ? null : wholeProgram();
const { program } = whole?.load() ?? (await import('./program.ts'));
await program(written);
