/** Exercises of the clinician's own choice (house choice): what holds, what is refused, and what stands on the record. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { make, type Made } from './shipped.ts';

const otter = readFileSync('content/consults/otter-r1.md', 'utf8');
// Nothing hurt by an angle, so that only caps of the house stand against a card.
const painless = otter
  .replace(/ {4}painFreeHipFlexionDeg: 60\n/g, '')
  .replace(/pain: [45]\n/g, 'pain: 2\n')
  .replace('stage: auto', 'stage: 2');

function madeWith(entries: string, text = otter): Made {
  const bytes = new TextEncoder().encode(text.replace('overrides:', `${entries}\noverrides:`));
  return make([{ file: 'otter-r1.md', bytes, link: 'no' }]);
}

function programmeWith(entries: string, text = otter) {
  const made = madeWith(entries, text);
  if ('printed' in made) throw new Error(made.printed);
  return made.programme;
}

function refusalOf(entries: string, text = otter): string {
  const made = madeWith(entries, text);
  return 'printed' in made ? made.printed : 'a programme';
}

const chosen = (slot: string, card: string, more = '') =>
  `chosen:\n  - slot: ${slot}\n    card: ${card}\n    reason: she knows it${more}`;
const BEYOND = '\n    beyondCap:\n      decidedBy: R. Sample\n      reason: seen safe on the video';

const cardIn = (programme: ReturnType<typeof programmeWith>, slot: string) =>
  programme.exercises.find((exercise) => exercise.slot === slot)?.card;

describe('what is chosen', () => {
  it('stands in its slot, and says on the record who chose it and what made way', () => {
    const programme = programmeWith(chosen('Slow curl', 'slow-standing-curl'));
    expect(cardIn(programme, 'Slow curl')).toBe('slow-standing-curl');
    expect(programme.record.remarks).toContain(
      'Slow standing leg curl: chosen by the clinician for "Slow curl": she knows it.',
    );
    const over = programme.record.passedOver.find(({ card }) => card === 'slow-prone-curl');
    expect(over).toMatchObject({
      limit: 'clinician',
      because: 'the clinician chose another card for this slot',
    });
  });

  it.each([
    [
      'a position the stage has not',
      'Bow',
      'kettlebell-swing',
      /position \(ballistic\).*no reason lifts this/s,
    ],
    [
      'a thing that is not in the house',
      'Slow curl',
      'slow-ball-curl',
      /there is no ball in the house.*no reason lifts/s,
    ],
    [
      'a hold where repetitions are',
      'Slow curl',
      'prone-curl-hold',
      /a hold does not go into a slot of repetitions/,
    ],
    ['a slot of another stage', 'Main hold', 'prone-curl-hold', /must be for a slot of the present stage/],
    ['a slot nobody knows', 'Slow curls', 'slow-prone-curl', /must be a slot of proximal-hamstring/],
  ])('is refused for %s', (_, slot, card, expected) => {
    expect(refusalOf(chosen(slot, card))).toMatch(expected);
  });

  it('is refused for what this person cannot do', () => {
    const text = otter.replace('cannotDo: []', 'cannotDo: [lie-prone]');
    expect(refusalOf(chosen('Slow curl', 'machine-prone-curl'), text)).toMatch(/Problem|must be/);
    expect(refusalOf(chosen('Slow curl', 'slow-prone-curl'), text)).toMatch(/cannot be done \(lie-prone\)/);
  });

  it('may be chosen once, and not left out as well', () => {
    const both = `${chosen('Slow curl', 'slow-standing-curl')}\nleftOut:\n  - card: slow-standing-curl\n    reason: no`;
    expect(refusalOf(both)).toMatch(/named once among chosen, leftOut and added/);
  });
});

describe('what is left out', () => {
  it('is used nowhere, and what comes next in its slot takes its place', () => {
    const programme = programmeWith('leftOut:\n  - card: slow-prone-curl\n    reason: hurts the knee');
    expect(cardIn(programme, 'Slow curl')).toBe('slow-standing-curl');
    expect(JSON.stringify(programme.steps)).not.toContain('"slow-prone-curl"');
    expect(programme.record.remarks).toContain(
      'Slow face-down leg curl: left out by the clinician: hurts the knee.',
    );
  });
});

describe('what is added', () => {
  it('is done after its slot, with the dose of the slot that has it', () => {
    const text = otter
      .replace('minutesPerDay: 45', 'minutesPerDay: 60')
      .replace(/overrides:[\s\S]*?(?=---)/, 'overrides: []\n');
    const programme = programmeWith(
      'added:\n  - card: side-step\n    afterSlot: Bow\n    reason: weak side\nleftOut:\n  - card: side-lying-leg-lift\n    reason: not now\n  - card: single-leg-calf-raise\n    reason: not now\n  - card: calf-raise\n    reason: not now',
      text,
    );
    const slots = programme.exercises.map(({ slot, card }) => `${slot}: ${card}`);
    expect(slots[slots.indexOf('Bow: hip-hinge') + 1]).toBe('Added: side-step: side-step');
  });
});

describe('above a cap of the house', () => {
  const deep = chosen('Bow', 'romanian-deadlift');

  it('a card is refused, with the decision that would lift it', () => {
    expect(refusalOf(deep, painless)).toMatch(/beyondCap, with decidedBy and reason/);
  });

  it('it begins with a decision, in its gentlest version, does not grow, and is marked', () => {
    const programme = programmeWith(deep + BEYOND, painless);
    expect(cardIn(programme, 'Bow')).toBe('romanian-deadlift');
    const own = programme.steps.map(({ prescriptions }) =>
      prescriptions.find(({ slot }) => slot === 'Bow')?.cells.map(({ cell, value }) => [cell, value]),
    );
    // A later step lists what changes.
    expect(own.slice(1).filter((cells) => cells !== undefined)).toEqual([]);
    expect(programme.record.remarks.join(' ')).toContain('ABOVE A CAP OF THE HOUSE, decided by R. Sample');
  });

  it('never for an irritable tendon in stage 1', () => {
    const text = painless
      .replace('irritability: moderate', 'irritability: high')
      .replace('stage: 2', 'stage: 1');
    expect(refusalOf(chosen('Calf', 'calf-raise') + BEYOND, text)).toMatch(
      /in stage 1 of an irritable tendon none is gone above/,
    );
  });

  it('no decision is taken that is not needed', () => {
    expect(refusalOf(chosen('Slow curl', 'slow-standing-curl') + BEYOND)).toMatch(/without beyondCap/);
  });

  it('never above what hurt', () => {
    const text = otter.replaceAll('painFreeHipFlexionDeg: 60', 'painFreeHipFlexionDeg: 12');
    expect(refusalOf(chosen('Bow', 'romanian-deadlift') + BEYOND, text)).not.toBe('a programme');
  });
});
