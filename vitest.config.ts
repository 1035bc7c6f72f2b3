import { defineConfig } from 'vitest/config';

// Two projects: `quick` is everything that needs neither a browser, nor the compiled command line, nor seconds.
// Files share a worker's modules (`isolate: false`): rooms keep no state, so the library is read once a worker, and
// tests must hold in any order.
export default defineConfig({
  test: {
    isolate: false,
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'quick',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/**/*.slow.test.ts'],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'slow',
          include: ['tests/**/*.slow.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
