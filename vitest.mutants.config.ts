import { defineConfig } from 'vitest/config';

// What the mutation tester runs for each room: its tables, and the laws that need no programme. Nothing that takes seconds
// a test, for each mutant asks them all. `npm run mutants` names the room.
const TESTS: Readonly<Record<string, readonly string[]>> = {
  dosing: ['tests/dosing/*.test.ts', 'tests/published/{doses,strength}.test.ts'],
  scheduling: ['tests/scheduling/*.test.ts', 'tests/published/{running,painRules}.test.ts'],
  mechanics: ['tests/mechanics/*.test.ts', 'tests/published/*.test.ts'],
  decisions: ['tests/decisions/*.test.ts', 'tests/programme/*.test.ts'],
  review: ['tests/review/*.test.ts'],
};

const room = process.env['MUTANTS_ROOM'] ?? '';
const include = TESTS[room];
if (include === undefined)
  throw new Error(`MUTANTS_ROOM is ${room}, expected ${Object.keys(TESTS).join(', ')}`);

export default defineConfig({
  test: {
    include: [...include],
    exclude: ['**/*.slow.test.ts', '**/node_modules/**'],
    testTimeout: 20_000,
  },
});
