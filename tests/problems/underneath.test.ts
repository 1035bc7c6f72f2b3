/** Printed texts of what a clinic's folder is told about the library below it. */
import { describe, expect, it } from 'vitest';
import { overAsked } from '../../src/content/overAsked.ts';
import { problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { fileOf, filesWith, SAMPLE } from '../content/sample.ts';

describe('shipped-changed', () => {
  it('names the value that is no longer what it was', () => {
    const own = `---
extends: hamstring
values:
  - { path: limits.stepGrowth, value: 1.2, was: 1.5, mark: choice, cite: house choice }
---
`;
    const { problems } = readLibrary(filesWith(), [fileOf('protocols/hamstring.md', own)]);
    expect(problems.map((one) => problemText(one, null)).join('\n')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:4:49: error shipped-changed values[0].was is 1.5; must be 1.3, what it is below.
      Fix: look whether your value still stands, then write was: 1.3."
    `);
  });
});

describe('over-shipped', () => {
  it('asks what was meant', () => {
    const own = ['clinic.md', 'exercises/bridge.md'] as const;
    const asked = overAsked(
      own.map((file) => fileOf(file, SAMPLE[file])),
      filesWith(),
    );
    expect(asked.map((one) => problemText(one, null)).join('\n')).toMatchInlineSnapshot(`
      "clinic.md:1:1: warning over-shipped over is missing; must be said where a file has the name of a shipped one, as exercises/bridge.md has.
      Fix: did you mean over: shipped? Write it to lay this folder over the shipped library, or over: nothing for a library of its own."
    `);
  });
});
