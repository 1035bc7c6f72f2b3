import { defineConfig } from 'vitest/config';

// Two projects: `quick` is everything that needs neither a browser nor the compiled command line.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'quick',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/**/*.slow.test.ts'],
          testTimeout: 20_000,
        },
      },
      {
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
