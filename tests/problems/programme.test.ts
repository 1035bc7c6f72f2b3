/** Every refusal of a programme, as its author sees it: the shipped library, a consult of the demo with something spoilt. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { worded } from '../../src/programme/worded.ts';
import { problemOf } from '../../src/content/place.ts';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { noSession, noWeek } from '../../src/decisions/session/refusals.ts';
import { make, shipped } from '../programme/shipped.ts';

const OTTER = readFileSync('content/consults/otter-r1.md', 'utf8');

function fileWith(changes: Readonly<Record<string, string>>): SourceFile {
  const text = Object.entries(changes).reduce((now, [passage, by]) => {
    if (!now.includes(passage)) throw new Error(`otter must hold ${JSON.stringify(passage)}`);
    return now.replace(passage, () => by);
  }, OTTER);
  return { file: 'otter-r1.md', bytes: new TextEncoder().encode(text), link: 'no' };
}

function printedWith(changes: Readonly<Record<string, string>>): string {
  const made = make([fileWith(changes)]);
  return 'printed' in made ? made.printed : `written: stage ${made.programme.stage.chosen}`;
}

const own = (path: string, value: string) => ({
  '  - path: single-leg-calf-raise.restSeconds\n    value: 45\n': `  - path: ${path}\n    value: ${value}\n`,
});

it('the demo as it stands becomes a programme', () => {
  expect(printedWith({})).toBe('written: stage 2');
});

describe('screen-block', () => {
  it('an emergency', () => {
    expect(printedWith({ 'footDrop: no': 'footDrop: yes' })).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:13: error screen-block screen.footDrop is yes; must be no: with foot drop no exercise programme is written.
            footDrop: yes
                      ^
      Fix: Send the person for emergency assessment now: call 999 or go to A&E (the emergency department). No entry in the file lifts this."
    `);
  });

  it('an emergency that was not asked', () => {
    expect(printedWith({ 'clotSigns: no': 'clotSigns: notAsked', 'country: GB': 'country: FR' }))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:30:14: error screen-block screen.clotSigns is notAsked; must be no: with signs of a clot in leg or lung no exercise programme is written.
            clotSigns: notAsked
                       ^
      Fix: Not asked acts like yes: ask, and record the answer. If it is yes: emergency assessment now, call 15 or go to the urgences (emergency department)."
    `);
  });

  it('a block that somebody may clear', () => {
    expect(printedWith({ 'popBruise: no': 'popBruise: yes', 'country: GB': 'country: DE' }))
      .toMatchInlineSnapshot(`
        "consults/otter-r1.md:31:14: error screen-block screen.popBruise is yes; must be no: with sudden pop with a bruise, or not able to walk no exercise programme is written.
              popBruise: yes
                         ^
        Fix: Have it assessed first: call the doctors on duty on 116117 or your family doctor; in an emergency call 112 or go to the Notaufnahme (emergency department). Then record who cleared it, when and on what ground under clearances, with the picture under imaging (kind, on, result)."
      `);
  });

  it('a block that was not asked', () => {
    expect(printedWith({ 'weightLoss: no': 'weightLoss: notAsked', 'country: GB': 'country: SE' }))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:28:15: error screen-block screen.weightLoss is notAsked; must be no: with weight loss without a reason no exercise programme is written.
            weightLoss: notAsked
                        ^
      Fix: Not asked acts like yes: ask, and record the answer. If it is yes: have it assessed first, call 1177 or your health centre; in an emergency call 112 or go to the akutmottagning (emergency department)."
    `);
  });

  it('tablets without a recorded decision, asked or not', () => {
    expect(
      printedWith({
        'fluoroquinolone: no': 'fluoroquinolone: yes',
        'oralSteroid: no': 'oralSteroid: notAsked',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:38:20: error screen-block screen.fluoroquinolone is yes; must be no, or a recorded decision: with fluoroquinolone antibiotic in the last six months light holds at most.
            fluoroquinolone: yes
                             ^
      Fix: Contact the prescriber, then record the decision on light holds under clearances (flag: fluoroquinolone).

      consults/otter-r1.md:39:16: error screen-block screen.oralSteroid is notAsked; must be no, or a recorded decision: with steroid tablets light holds at most.
            oralSteroid: notAsked
                         ^
      Fix: Not asked acts like yes: ask, and record the answer."
    `);
  });

  it('under 18, gradual', () => {
    expect(printedWith({ 'ageYears: 38': 'ageYears: 16', 'trainingYears: 12': 'trainingYears: 6' }))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:43:23: error screen-block screen.suddenOnsetUnder18 is no; must be a clearance for someone under 18.
            suddenOnsetUnder18: no
                                ^
      Fix: Record under clearances (flag: suddenOnsetUnder18) who considered a growth-plate cause, when and with what result."
    `);
  });

  it('under 18, sudden', () => {
    expect(
      printedWith({
        'ageYears: 38': 'ageYears: 16',
        'trainingYears: 12': 'trainingYears: 6',
        'suddenOnsetUnder18: no': 'suddenOnsetUnder18: yes',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:43:23: error screen-block screen.suddenOnsetUnder18 is yes; must be a clearance for someone under 18.
            suddenOnsetUnder18: yes
                                ^
      Fix: A sudden start under 18 needs imaging before any loading: record it under clearances (flag: suddenOnsetUnder18) with imaging: kind, on and result."
    `);
  });
});

describe('no-card-for-slot', () => {
  it('a needed slot of the present stage that nothing fills, with what stood against each card', () => {
    expect(
      printedWith({
        'cannotDo: []': 'cannotDo: [grip]',
        'painFreeHipFlexionDeg: 60\ntestedSets': 'painFreeHipFlexionDeg: 20\ntestedSets',
        'rucksack: yes': 'rucksack: no',
        'stage: auto': 'stage: 2',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error no-card-for-slot stage is stage 2, in which no card can fill the slot Bow (hip-hinge: too little of it is admitted (hip bend at most 10°, below what hurt); rucksack-hinge: there is no rucksack in the house); must be a stage in which every needed slot has a card for this person.
          stage: 2
                 ^
      Fix: Write an earlier stage, add what is missing to kit or minutesPerDay, or add a card to Bow in the protocol."
    `);
  });

  it('a proposed stage goes back to the last one that is whole instead', () => {
    expect(
      printedWith({
        'painFreeHipFlexionDeg: 60\ntestedSets': 'painFreeHipFlexionDeg: 20\ntestedSets',
        'rucksack: yes': 'rucksack: no',
        'single-leg-calf-raise.restSeconds': 'calf-raise.restSeconds',
      }),
    ).toBe('written: stage 1');
  });
});

describe('no-free-day', () => {
  it('a protocol that spaces its sessions over a week', () => {
    const files = [{ ...fileWith({}), file: 'consults/otter-r1.md' }];
    const { current, placeOf } = readConsults(files, shipped);
    const [otter] = current;
    if (otter === undefined) throw new Error('otter must be read');
    const because = [{ code: 'spacing-over-a-week', inputs: { hoursBetween: 168 }, mark: 'choice' }] as const;
    const problem = problemOf(
      worded(noWeek(otter, { fits: false, because }), shipped, otter.protocol),
      placeOf,
    );
    expect(problemText(problem, lineFinder(files)(problem.file, problem.line))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:120:3: error no-free-day days is mon, tue, wed, thu, fri, sat, sun; must be days on which at least one session fits: 168 hours between sessions are more than a week.
            - mon
            ^
      Fix: Write a day with time under days; where the protocol spaces its sessions over a week, mend the protocol."
    `);
  });
});

describe('nothing-fits', () => {
  it('too few minutes for what is needed', () => {
    expect(
      printedWith({
        'minutesPerDay: 45':
          'minutesPerDay: 5\nconfirmed:\n  - path: minutesPerDay\n    value: 5\n    reason: no more time',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:127:16: error nothing-fits minutesPerDay is 5 minutes; must be at least 6 minutes for what the stage needs.
          minutesPerDay: 5
                         ^
      Fix: Write minutesPerDay: 6 or more."
    `);
  });

  it('a first step that breaks a limit', () => {
    const files = [{ ...fileWith({}), file: 'consults/otter-r1.md' }];
    const { current, placeOf } = readConsults(files, shipped);
    const [otter] = current;
    if (otter === undefined) throw new Error('otter must be read');
    const problem = problemOf(
      worded(
        noSession(otter, { reason: 'no-room', limit: 'compression', slot: 'Bow' }),
        shipped,
        otter.protocol,
      ),
      placeOf,
    );
    expect(problemText(problem, lineFinder(files)(problem.file, problem.line))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error nothing-fits stage is a session whose Bow breaks compression; must be a first step inside every limit of the stage.
          stage: auto
                 ^
      Fix: Choose an earlier stage."
    `);
  });
});

describe('does-not-fit', () => {
  it('a stage above the proposal without a reason', () => {
    expect(printedWith({ 'stage: auto': 'stage: 3' })).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error does-not-fit stage is 3; must be stage 2 or earlier, as the tests propose (Not stage 3: pain 5 in One-leg arabesque, the worst of its tests; 3 at most is asked), or with the reason under stageBecause.
          stage: 3
                 ^
      Fix: Write stage: auto, or add stageBecause: with why a later stage is right for this person."
    `);
  });

  it('fast work with a test that hurt, whatever the reason', () => {
    expect(printedWith({ 'stage: auto': 'stage: 4\nstageBecause: wants to race' })).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error does-not-fit stage is 4; must be an earlier stage: pain 5 in One-leg arabesque; fast work asks for 3 at most in every test.
          stage: 4
                 ^
      Fix: Write stage: auto, or an earlier stage; no reason lifts this."
    `);
  });

  it('a step beyond the ladder', () => {
    expect(printedWith({ 'step: 1': 'step: 40' })).toMatchInlineSnapshot(`
      "consults/otter-r1.md:15:7: error does-not-fit step is 40; must be a step of stage 2 for this person: 1 to 4.
          step: 40
                ^
      Fix: Write step: 4 or less, or go on to the next stage when its tests allow it."
    `);
  });

  it('pain under the protocol of a runner without any', () => {
    expect(
      printedWith({
        'protocol: proximal-hamstring': 'protocol: runner-strength',
        'test: arabesque': 'test: single-leg-hinge',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:13:11: error does-not-fit protocol is runner-strength; must be the staged protocol of what hurts: pain 5 of 10 is recorded, and this one is for someone without.
          protocol: runner-strength
                    ^
      Fix: Write the protocol of the tendon that hurts."
    `);
  });

  it('usual pain of 7 or more without a recorded decision', () => {
    expect(printedWith({ 'usualMorningPain: 2': 'usualMorningPain: 7' })).toMatchInlineSnapshot(`
      "consults/otter-r1.md:18:19: error does-not-fit usualMorningPain is 7; must be below 7, or with a recorded decision: with usual pain of 7 or more no programme is written without one.
          usualMorningPain: 7
                            ^
      Fix: Look for what else may cause so much pain. If a programme is right all the same, record the decision under overrides: path pain.decision, value goOn, and the reason."
    `);
    expect(
      printedWith({ ...own('pain.decision', 'goOn'), 'usualMorningPain: 2': 'usualMorningPain: 7' }),
    ).toMatch(/^written/);
  });

  it('repetitions for a hold', () => {
    expect(printedWith(own('prone-curl-hold.repetitions', '8'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 8; must be left out: this exercise is held.
              value: 8
                     ^
      Fix: Set holdSeconds instead."
    `);
  });

  it('seconds for what goes by repetitions', () => {
    expect(printedWith(own('hip-hinge.holdSeconds', '20'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 20; must be left out: this exercise goes by repetitions.
              value: 20
                     ^
      Fix: Set repetitions instead."
    `);
  });

  it('a hip bend outside the exercise', () => {
    expect(printedWith(own('hip-hinge.hipFlexionDeg', '120'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 120; must be a hip bend of this exercise: 10° to 60°.
              value: 120
                     ^
      Fix: Write 10 to 60."
    `);
  });

  it('a hip bend of what is not set by it', () => {
    expect(printedWith(own('slow-prone-curl.hipFlexionDeg', '20'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 20; must be left out: this exercise is not set by hip bend.
              value: 20
                     ^
      Fix: Take the entry out."
    `);
  });

  it('a weight on what carries none', () => {
    expect(printedWith(own('single-leg-bridge-raised.loadKg', '4'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 4; must be left out: this exercise carries no weight.
              value: 4
                     ^
      Fix: Take the entry out."
    `);
  });

  it('a day on which this work is not planned', () => {
    expect(printedWith(own('hip-hinge.days', 'tue'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is tue; must be days on which this work is planned, of mon, wed, fri.
              value: tue
                     ^
      Fix: Write some of mon, wed, fri."
    `);
  });

  it('a long hold for someone who must hold short', () => {
    expect(printedWith({ ...own('prone-curl-hold.holdSeconds', '40'), 'hernia: no': 'hernia: yes' }))
      .toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 40; must be at most 15: the screen allows short holds only.
              value: 40
                     ^
      Fix: Write 15 or less."
    `);
  });

  it('a weight for someone with light holds at most', () => {
    expect(
      printedWith({
        ...own('prone-curl-hold.loadKg', '2'),
        'oralSteroid: no': 'oralSteroid: yes',
        'clearances: []':
          'clearances: [{ flag: oralSteroid, by: doctor, on: 2026-11-20, decision: light holds may go on }]',
      }),
    ).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error does-not-fit overrides[0].value is 2; must be 0: the screen allows light holds only.
              value: 2
                     ^
      Fix: Take the entry out."
    `);
  });

  it('an own run decision that is none', () => {
    expect(printedWith(own('running.decision', 'sometimes'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error wrong-word overrides[0].value is sometimes; must be keep, walk-run or none.
              value: sometimes
                     ^
      Fix: write one of keep, walk-run or none."
    `);
  });
});

describe('load-not-in-kit', () => {
  it('a load that the things at home do not make', () => {
    expect(printedWith(own('hip-hinge.loadKg', '9'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error load-not-in-kit overrides[0].value is 9; must be a load that the kit makes for this exercise; the nearest are 8.5 kg and 10 kg.
              value: 9
                     ^
      Fix: Write 8.5, or add to the kit what makes 9 kg."
    `);
  });

  it('a load above everything there is', () => {
    expect(printedWith(own('hip-hinge.loadKg', '200'))).toMatchInlineSnapshot(`
      "consults/otter-r1.md:181:12: error load-not-in-kit overrides[0].value is 200; must be a load that the kit makes for this exercise; the nearest is 22 kg.
              value: 200
                     ^
      Fix: Write 22, or add to the kit what makes 200 kg."
    `);
  });
});
