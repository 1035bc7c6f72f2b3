/** Starts a thread of the crew, from the same one file as the program itself. */
import { wholeProgram } from './whole.ts';

const { workInCrew } = wholeProgram()?.load() ?? (await import('./program.ts'));
await workInCrew();
