/** The record lists the next dozen steps; of the rest it tells where each exercise ends, so that no number is lost. */
import { describe, expect, it } from 'vitest';
import { sectionLines } from './leafletText.ts';
import { person, testedSet } from './person.ts';
import { programmeOf } from './shipped.ts';

const ahead = (different: Parameters<typeof person>[0]) =>
  sectionLines(programmeOf(person(different)).record.stepsAhead);

describe('a long ladder', () => {
  const lines = ahead({
    stage: 3,
    testedSets: [testedSet('hip-hinge', 8, 10, 3, { rangeDeg: 45 })],
    minutesPerDay: 60,
  });
  const rows = lines.filter((line) => /^\d+ \| /.test(line));

  it('is listed for twelve steps', () => {
    expect(rows).toHaveLength(12);
  });

  it('is told to its end', () => {
    const [rest] = lines.flatMap(
      (line) => /more can follow, by small steps up to: (.+)\.$/.exec(line)?.[1] ?? [],
    );
    expect(rest?.split('; ').length).toBeGreaterThan(0);
    expect(rest).toMatch(/^\S.* \d+(?:\.\d+)?(?:°| kg| repetitions| s| sets)/);
  });
});

describe('a short ladder', () => {
  it('is listed in full, and no rest is told', () => {
    expect(ahead({ stage: 1, minutesPerDay: 15 }).join('\n')).not.toContain('more can follow');
  });
});
