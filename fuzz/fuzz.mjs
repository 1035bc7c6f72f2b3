// npm run fuzz -- [--family name] [--seconds n] [--seed n] [--from n] [--cases n] [--show]
import { register } from 'node:module';

register('./typescript.mjs', import.meta.url);
const { flagsOf } = await import('./flags.ts');
const { runAll } = await import('./run.ts');

const flags = flagsOf(process.argv.slice(2));
if (typeof flags === 'string') {
  console.error(flags);
  process.exitCode = 64;
} else process.exitCode = await runAll(flags);
