/** Which stage the tests speak for. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { numberedStages } from '../../src/content/keepStage.ts';
import { stageNumber, stagesAfter, stageWord } from '../../src/programme/stageChoice.ts';
import { person, RUNNER } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

const stageOf = (different: Partial<Consult>) => programmeOf(person(different)).stage;
const done = (...tests: (readonly [string, number])[]): Consult['tests'] =>
  tests.map(([test, pain]) => ({ test, pain }));

describe('the proposal', () => {
  it.each<[string, Partial<Consult>, unknown]>([
    ['4 on the only low-flexion test: stage 1', { tests: done(['single-leg-bridge-raised', 4]) }, 1],
    ['3 on a low-flexion test: stage 2', { tests: done(['single-leg-bridge-raised', 3]) }, 2],
    [
      'the kindest of the low-flexion tests counts',
      { tests: done(['single-leg-bridge-raised', 6], ['prone-curl-hold', 2]) },
      2,
    ],
    [
      'the worse of one test done twice counts',
      { tests: done(['single-leg-bridge-raised', 1], ['single-leg-bridge-raised', 6]) },
      1,
    ],
    [
      'stirred up by the next day: stage 1',
      { tests: done(['single-leg-bridge-raised', 0]), response24h: 'up' },
      1,
    ],
    ['the bow at 3, settled: stage 3', { tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 3]) }, 3],
    [
      'the bow at 3, not known to be settled: stage 2',
      { tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 3]), response24h: 'unknown' },
      2,
    ],
    ['no stage is skipped: the bow without a low-flexion test', { tests: done(['hip-hinge', 0]) }, 1],
    [
      'sport for who does some: stage 4',
      {
        tests: done(['single-leg-bridge-raised', 0], ['hip-hinge', 0], ['single-leg-hinge', 1]),
        running: RUNNER,
      },
      4,
    ],
    [
      'no sport: stage 3',
      { tests: done(['single-leg-bridge-raised', 0], ['hip-hinge', 0], ['single-leg-hinge', 1]) },
      3,
    ],
  ])('%s', (_, different, expected) => {
    expect(stageOf(different)).toMatchObject({ chosen: expected, proposed: expected, chosenBy: 'proposal' });
  });

  it('names high irritability without overruling the tests', () => {
    const { chosen, because } = stageOf({ irritability: 'high' });
    expect(chosen).toBe(2);
    expect(because.join(' ')).toContain('stage 1 may be the kinder start');
  });
});

const SETTLED = [{ test: 'single-leg-hinge', pain: 1 }];

describe("the clinician's own", () => {
  it('stands and is marked, both ways', () => {
    expect(stageOf({ stage: 1 })).toMatchObject({ chosen: 1, proposed: 2, chosenBy: 'clinician' });
    expect(stageOf({ stage: 3 })).toMatchObject({ chosen: 3, proposed: 2, chosenBy: 'clinician' });
  });

  it('of ending treatment is told as that', () => {
    expect(stageOf({ stage: 'keepGoing', tests: SETTLED }).because.at(-1)).toBe(
      'The clinician ends the treatment: the keep-going stage.',
    );
  });
});

describe('names and numbers', () => {
  const protocol = shipped.protocols.get('proximal-hamstring');
  if (protocol === undefined) throw new Error('the shipped library has it');

  it('counts the keep stage after all others', () => {
    expect(stageNumber(protocol, 'keepGoing')).toBe(numberedStages(protocol.stages).length + 1);
    expect(stageNumber(protocol, 2)).toBe(2);
  });

  it('knows what comes after', () => {
    expect(stagesAfter(protocol, 3).map(([name]) => name)).toEqual([4, 'keepGoing']);
    expect(stagesAfter(protocol, 'keepGoing')).toEqual([]);
  });

  it('in words', () => {
    expect([stageWord(2), stageWord('keepGoing')]).toEqual(['stage 2', 'the keep-going stage']);
  });
});
