/** The program in one file, with what the engine made of it when it was compiled: both lie in `dist/program/`. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';
import type * as Program from './program.ts';

const FILE = fileURLToPath(new URL('../program/whole/loadleaf.cjs', import.meta.url));
const MADE = `${FILE}.cache`;

export interface Whole {
  readonly load: () => typeof Program;
  /** What the engine has made of the code so far; of use to the same version of Node with the same flags alone. */
  readonly made: () => Buffer;
  /** Where to keep that. */
  readonly place: string;
}

/** Null where there is no such file, as before it is bundled. */
export function wholeProgram(): Whole | null {
  if (!existsSync(FILE)) return null;
  const cachedData = existsSync(MADE) ? { cachedData: readFileSync(MADE) } : {};
  // As Node itself wraps a CommonJS file, with a way to import packages; of code that another engine made nothing is taken.
  const script = new Script(
    `(function (exports, require, module, __filename, __dirname, importOnDemand) {${readFileSync(FILE, 'utf8')}\n})`,
    { filename: FILE, ...cachedData },
  );
  return {
    load: () => {
      const module = { exports: {} as typeof Program };
      const importOnDemand = (name: string): Promise<unknown> => import(name);
      script.runInThisContext()(
        module.exports,
        createRequire(FILE),
        module,
        FILE,
        dirname(FILE),
        importOnDemand,
      );
      return module.exports;
    },
    made: () => script.createCachedData(),
    place: MADE,
  };
}
