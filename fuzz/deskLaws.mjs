// npm run laws:desk -- [--count n] [--seed n]
import { register } from 'node:module';
import { parseArgs } from 'node:util';

register('./typescript.mjs', import.meta.url);
const { runDeskLaws } = await import('./deskLaws.ts');

const { values } = parseArgs({ options: { count: { type: 'string' }, seed: { type: 'string' } } });
// Another place to begin in every run; it is printed, so that the run can be repeated.
const { count = '200', seed = `${Date.now() % 1_000_000}` } = values;
if ([count, seed].every((number) => /^\d+$/.test(number)))
  process.exitCode = await runDeskLaws(Number(count), Number(seed));
else {
  console.error('--count and --seed need whole numbers.');
  process.exitCode = 64;
}
