// Two clocks. Work within this process: the median of its processor time. What a compiler, a browser or another process
// does beside it: the clock on the wall, the quickest round, since other work on the machine only ever adds to it.

/** The middle of some numbers. */
export function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

/** Milliseconds of processor time this process spends on some work, done in one go or awaited. */
export async function processorMs(work) {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Milliseconds that pass until some work is done. */
export async function wallMs(work) {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** Median processor time of the rounds; `work` is told the round, from 0. */
export async function medianMs(rounds, work) {
  return median(await timesOf(rounds, work, processorMs));
}

/** Quickest round by the clock on the wall. */
export async function quickestMs(rounds, work) {
  return Math.min(...(await timesOf(rounds, work, wallMs)));
}

async function timesOf(rounds, work, clock) {
  const times = [];
  for (let round = 0; round < rounds; round += 1) times.push(await clock(() => work(round)));
  return times;
}
