// Programs as whole processes.
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
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

const LOOK_EVERY_MS = 25;

/** Runs the command line; the seconds it took, and the most memory it had: null where the system does not tell. */
export async function measured(words) {
  const start = performance.now();
  const child = spawn(process.execPath, [MAIN, ...words], { stdio: ['ignore', 'ignore', 'inherit'] });
  let memoryMb = null;
  const look = setInterval(() => (memoryMb = peakMb(child.pid) ?? memoryMb), LOOK_EVERY_MS);
  const status = await new Promise((done) => child.once('exit', done));
  clearInterval(look);
  if (status !== 0) throw new Error(`${words[0]} ended with ${status}`);
  return { seconds: (performance.now() - start) / 1000, memoryMb };
}

// The peak only rises, so that the last look has it but for what came within the last moment.
function peakMb(pid) {
  try {
    const [, kb] = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return kb === undefined ? null : Number(kb) / 1024;
  } catch {
    return null;
  }
}
