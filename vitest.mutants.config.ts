import { defineConfig } from 'vitest/config';
import { ROOMS } from './scripts/mutantRooms.mjs';

// What the mutation tester runs for one room; `npm run mutants` names it.
const name = process.env['MUTANTS_ROOM'] ?? '';
const room = ROOMS.find((one) => one.name === name);
if (room === undefined)
  throw new Error(`MUTANTS_ROOM is ${name}, expected ${ROOMS.map((one) => one.name).join(', ')}`);

export default defineConfig({
  test: {
    include: [...room.tests],
    exclude: ['**/*.slow.test.ts', '**/node_modules/**'],
    testTimeout: 20_000,
    // The modules of a room are read once for a mutant, not once for each of its test files.
    isolate: false,
  },
});
