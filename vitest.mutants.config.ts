import { defineConfig } from 'vitest/config';

// What the mutation tester runs: rules, tables and laws that need neither browser nor command line. One project, for
// mutants are told apart by test.
export default defineConfig({
  test: {
    include: [
      'tests/{mechanics,dosing,scheduling,published}/**/*.test.ts',
      'tests/programme/*.test.ts',
      'tests/laws/{dose,week,inverse,loading,entry,plan,runDays,sport,stages}.slow.test.ts',
    ],
    testTimeout: 60_000,
  },
});
