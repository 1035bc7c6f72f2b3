/**
 * What no stage may let through, on the exercise cards of the specification under the caps of the house rules. The
 * programme bars by position words besides; here the model alone must already say no.
 */
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY, type Body } from '../../src/mechanics/body.ts';
import { admits, largestRange } from '../../src/mechanics/range.ts';
import { cards, cardNamed, type CardFixture } from '../published/exercise-cards.ts';
import { STAGE_CAPS } from '../published/stage-caps.ts';

const BODIES: readonly Body[] = [
  REFERENCE_BODY,
  { massKg: 45, heightM: 1.5 },
  { massKg: 110, heightM: 1.7 },
  { massKg: 90, heightM: 2.0 },
];

const named = (pattern: RegExp) => cards.filter(({ name }) => pattern.test(name));
const loadedHinges = named(/RDL|deadlift|Good-morning|arabesque/);
const notInStage1 = [...loadedHinges, ...named(/Nordic|[Ss]quat|lunge|Step-up/)];
const bridges = named(/bridge/i);

describe('stage 1', () => {
  it.each(notInStage1.map(({ name }) => name))('never admits: %s', (name) => {
    const { movement, loadKg } = cardNamed(name);
    for (const body of BODIES)
      expect(admits(movement, body, loadKg, STAGE_CAPS['1 hold'])).toMatchObject({ admitted: false });
  });

  it('never admits a Nordic that leans further than 15 degrees', () => {
    const { movement } = cardNamed('Nordic curl, 30 deg lean (strap)');
    for (const body of BODIES)
      for (let lean = 15.5; lean <= 60; lean += 0.5) {
        // The shank lies on the floor: knee and trunk share the right angle.
        const leaning = { ...movement, start: { trunk: lean, work: { hip: 0, knee: 90 - lean, ankle: 0 } } };
        expect(admits(leaning, body, 0, STAGE_CAPS['1 hold'])).toMatchObject({ admitted: false });
      }
  });

  it('admits lying work and low bridges', () => {
    for (const name of [
      'Prone hip extension (straight leg)',
      'Prone leg-curl hold 30 deg, 5 kg',
      'Long-lever bridge hold (hip 5)',
      'Double-leg bridge, top range 20-0',
    ])
      for (const body of BODIES) {
        const { movement, loadKg } = cardNamed(name);
        expect(admits(movement, body, loadKg, STAGE_CAPS['1 hold'])).toMatchObject({ admitted: true });
      }
  });
});

describe('no bridge is passed over in a stage that admits a loaded hinge', () => {
  const useful = ({ movement, loadKg }: CardFixture, body: Body, stage: keyof typeof STAGE_CAPS) => {
    const range = largestRange(movement, body, loadKg, STAGE_CAPS[stage]);
    return range.admitted && range.fraction >= 0.5;
  };

  // Stage 1 admits no hinge by its position words.
  const hingeStages = (Object.keys(STAGE_CAPS) as (keyof typeof STAGE_CAPS)[]).slice(1);

  it.each(hingeStages)('stage %s', (stage) => {
    for (const body of BODIES) {
      const hinges = loadedHinges
        .filter(({ loadKg }) => loadKg > 0)
        .filter((hinge) => useful(hinge, body, stage));
      if (hinges.length === 0) continue;
      const passedOver = bridges.filter((bridge) => !useful(bridge, body, stage)).map(({ name }) => name);
      expect(passedOver).toEqual([]);
    }
  });

  it('and some stage does admit loaded hinges', () => {
    expect(loadedHinges.some((hinge) => hinge.loadKg > 0 && useful(hinge, REFERENCE_BODY, '2 slow'))).toBe(
      true,
    );
  });
});
