// Programs as whole processes.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../dist/shell/main.js', import.meta.url));

/** Runs the command line with these words; throws what it printed when it ends badly. */
export function command(words) {
  return program(MAIN, words);
}

/** Runs a program of ours in a process of its own; what it wrote to its output. */
export function program(file, words) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...words], { maxBuffer: 2 ** 26 });
  if (status !== 0) throw new Error(String(stderr).slice(-2000));
  return String(stdout);
}
