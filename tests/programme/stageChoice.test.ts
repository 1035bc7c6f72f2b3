/** Which stage the tests speak for. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { numberedStages } from '../../src/content/keepStage.ts';
import { stageNumber, stagesAfter } from '../../src/decisions/stage/stageChoice.ts';
import { stageWord } from '../../src/messages/en/clinician/stage.ts';
import { person, RUNNER, testedSet } from './person.ts';
import { programmeOf, refusalsOf, shipped } from './shipped.ts';

const stageOf = (different: Partial<Consult>) => programmeOf(person(different)).stage;
const done = (...tests: (readonly [string, number])[]): Consult['tests'] =>
  tests.map(([test, pain]) => ({ test, pain }));

describe('the proposal', () => {
  it.each<[string, Partial<Consult>, unknown]>([
    ['4 on the only low-flexion test: stage 1', { tests: done(['single-leg-bridge-raised', 4]) }, 1],
    ['3 on a low-flexion test: stage 2', { tests: done(['single-leg-bridge-raised', 3]) }, 2],
    [
      'the worst of the low-flexion tests counts, one mild one does not outweigh it',
      { tests: done(['single-leg-bridge-raised', 6], ['prone-curl-hold', 2]) },
      1,
    ],
    [
      'a hold of the first stage that was tried counts as one',
      { tests: done(['single-leg-bridge-raised', 1], ['standing-heel-push-hold', 4]) },
      1,
    ],
    [
      'the bow at 1 does not outweigh the arabesque at 5',
      { tests: done(['single-leg-bridge-raised', 1], ['hip-hinge', 1], ['arabesque', 5]) },
      2,
    ],
    [
      'high irritability with every low-flexion test mild and settled: as the tests say',
      { tests: done(['single-leg-bridge-raised', 3], ['prone-curl-hold', 2]), irritability: 'high' },
      2,
    ],
    [
      'high irritability, mild, but not known to be settled: stage 1',
      { tests: done(['single-leg-bridge-raised', 1]), irritability: 'high', response24h: 'unknown' },
      1,
    ],
    [
      'a sport that sprints opens fast work to somebody who does not run',
      {
        tests: done(['single-leg-bridge-raised', 0], ['hip-hinge', 0], ['single-leg-hinge', 1]),
        testedSets: [testedSet('romanian-deadlift', 20, 8, 3)],
        doesNow: [{ what: 'football', times: 1 }],
      },
      4,
    ],
    [
      'a sport that does not sprint leaves it shut',
      {
        tests: done(['single-leg-bridge-raised', 0], ['hip-hinge', 0], ['single-leg-hinge', 1]),
        testedSets: [testedSet('romanian-deadlift', 20, 8, 3)],
        doesNow: [{ what: 'rowing', times: 1 }],
      },
      3,
    ],
    [
      'high irritability keeps fast work shut',
      {
        tests: done(['single-leg-bridge-raised', 0], ['hip-hinge', 0], ['single-leg-hinge', 1]),
        running: RUNNER,
        irritability: 'high',
      },
      3,
    ],
    [
      'a test over 3 that is none of stage 4 keeps fast work shut',
      {
        tests: done(
          ['single-leg-bridge-raised', 0],
          ['hip-hinge', 0],
          ['single-leg-hinge', 1],
          ['slow-towel-curl', 4],
        ),
        running: RUNNER,
      },
      3,
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
        testedSets: [testedSet('romanian-deadlift', 20, 10, 3)],
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
});

const SETTLED = [{ test: 'single-leg-hinge', pain: 1 }];

describe("the clinician's own", () => {
  it('stands and is marked, both ways', () => {
    expect(stageOf({ stage: 1 })).toMatchObject({ chosen: 1, proposed: 2, chosenBy: 'clinician' });
    expect(stageOf({ stage: 3 })).toMatchObject({ chosen: 3, proposed: 2, chosenBy: 'clinician' });
  });

  it('above the proposal needs a reason, which the record tells', () => {
    expect(refusalsOf(person({ stage: 3, stageBecause: undefined } as Partial<Consult>))).toEqual([
      'does-not-fit stage',
    ]);
    expect(stageOf({ stage: 3, stageBecause: 'lifts at work every day' }).because.at(-1)).toBe(
      'The clinician chose stage 3; the proposal was stage 2. Reason: lifts at work every day.',
    );
    expect(refusalsOf(person({ stage: 1, stageBecause: undefined } as Partial<Consult>))).toEqual([]);
  });

  it.each<[string, Partial<Consult>]>([
    ['a test over 3', { tests: done(['single-leg-bridge-raised', 1], ['slow-towel-curl', 4]) }],
    ['high irritability', { irritability: 'high' }],
  ])('stage 4 is refused with %s, whatever the reason', (_, different) => {
    expect(refusalsOf(person({ stage: 4, ...different }))).toEqual(['does-not-fit stage']);
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
