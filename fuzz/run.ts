/** Runs families for their time and tells what came of it. */
import { chanceOf } from './chance.ts';
import { FAMILIES } from './families.ts';
import type { Family, Verdict } from './family.ts';
import type { FuzzFlags } from './flags.ts';
import { tableOf, type Figures } from './figures.ts';

/** What each case ended with, beside its number. */
export type Heard = (number: number, verdict: Verdict) => void;

// More of one fault tell nothing new.
const MOST_TOLD = 20;

/** Exit code: 0 where no case failed, else 1. */
export async function runAll(flags: FuzzFlags): Promise<number> {
  console.log(`seed ${flags.seed}, from case ${flags.from}, ${flags.seconds} seconds for each family`);
  const rows: Figures[] = [];
  for (const family of FAMILIES.filter(({ name }) => flags.families.includes(name))) {
    let told = 0;
    rows.push(
      await runFamily(family, flags, (number, verdict) => {
        if (flags.show) console.log(verdict.tried);
        if (verdict.faults.length > 0 && (told += 1) <= MOST_TOLD)
          console.log(failureText(family.name, flags.seed, number, verdict));
      }),
    );
  }
  console.log(tableOf(rows));
  return rows.every(({ failed }) => failed === 0) ? 0 : 1;
}

/** Ends at the time or the number of cases, whichever comes first. */
export async function runFamily(
  family: Family,
  { seconds, seed, from, cases }: Pick<FuzzFlags, 'seconds' | 'seed' | 'from' | 'cases'>,
  heard: Heard,
): Promise<Figures> {
  const counts = { cases: 0, refused: 0, built: 0, failed: 0 };
  const begun = performance.now();
  const trial = await family.open();
  try {
    while (counts.cases < cases && performance.now() - begun < 1000 * seconds) {
      const number = from + counts.cases;
      const verdict = await timed(() => tried(trial.attempt(chanceOf(seed, family.name, number))));
      counts.cases += 1;
      counts[verdict.end] += 1;
      if (verdict.faults.length > 0) counts.failed += 1;
      heard(number, verdict);
    }
  } finally {
    trial.close();
  }
  return {
    family: family.name,
    ...counts,
    seconds: (performance.now() - begun) / 1000,
    next: from + counts.cases,
  };
}

// Of a processor, so that a busy machine fails nobody. An ordinary case takes a tenth of a second.
const MOST_CPU_SECONDS = 20;

async function timed(work: () => Promise<Verdict>): Promise<Verdict> {
  const before = process.cpuUsage();
  const verdict = await work();
  const { user, system } = process.cpuUsage(before);
  const seconds = (user + system) / 1e6;
  if (seconds <= MOST_CPU_SECONDS) return verdict;
  return { ...verdict, faults: [...verdict.faults, `took ${Math.round(seconds)} seconds of a processor`] };
}

// Nothing may be thrown: whatever comes out is a fault of ours.
async function tried(attempt: Promise<Verdict>): Promise<Verdict> {
  try {
    return await attempt;
  } catch (error) {
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { end: 'refused', tried: '', faults: [`thrown: ${trace}`] };
  }
}

function failureText(family: string, seed: number, number: number, { faults }: Verdict): string {
  return [
    `FAILED: case ${number} of ${family}`,
    ...faults.slice(0, 3).map((fault) => `  ${fault.slice(0, 1200)}`),
    `  again: npm run fuzz -- --family ${family} --seed ${seed} --from ${number} --cases 1 --show`,
  ].join('\n');
}
