/** What the command line loads before it knows what it is asked for, and for help: little, or every start is slow. */
import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, it } from 'vitest';

it('help loads the shell itself, what is seen of a text and dates, and no room where work is done', () => {
  const loaded = [...reached(['src/shell/main.ts', 'src/shell/program.ts', 'src/shell/help.ts'])];
  expect(loaded).toContain('src/shell/commands/commands.ts');
  expect(
    loaded.filter((file) => !/^src\/(shell\/[^/]+|shell\/io\/stop|units\/[^/]+)\.ts$/.test(file)).sort(),
  ).toEqual(['src/content/badCharacter.ts', 'src/content/visible.ts', 'src/shell/commands/commands.ts']);
  expect([...packagesOf(loaded)]).toEqual(['fastest-levenshtein']);
});

/** The files that are loaded with these: what they import at once, and what that imports. */
function reached(files: readonly string[], found = new Set<string>()): Set<string> {
  for (const file of files)
    if (!found.has(file)) {
      found.add(file);
      const own = targetsOf(file).filter((target) => target.startsWith('.'));
      reached(
        own.map((target) => normalize(join(dirname(file), target))),
        found,
      );
    }
  return found;
}

function packagesOf(files: readonly string[]): Set<string> {
  return new Set(files.flatMap(targetsOf).filter((target) => !/^(\.|node:)/.test(target)));
}

// Types are gone when it runs, and what is imported within a call is loaded when that is called.
function targetsOf(file: string): string[] {
  const source = readFileSync(file, 'utf8');
  const found = source.matchAll(/^(?:import|export)\s+(?!type\b)(?:[^;'()]*?\bfrom\s+)?'([^']+)'/gm);
  return [...found].map(([, target]) => target ?? '');
}
