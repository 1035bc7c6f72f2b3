/** Names that lead nowhere or in a circle: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { filesWith, SAMPLE, spoilt } from '../content/sample.ts';
import { BRIDGE, HAMSTRING, OTTER, printed, printedWith } from './printed.ts';

describe('no-such-card', () => {
  it('in a tested set, with the nearest id', () => {
    expect(printedWith(OTTER, 'card: bridge', 'card: brigde')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:13: error no-such-card testedSets[0].card is brigde; must be the id of a file in exercises/.
            - { card: brigde, side: left, loadKg: 10, repetitions: 8, reserve: 2, pain: 2 }
                      ^
      Fix: write bridge (Bridge from the floor, hip bend up to 53°), if that is meant."
    `);
  });

  it('in a slot, with no id near', () => {
    expect(printedWith(HAMSTRING, 'cards: [bridge]', 'cards: [bridge, deep-squat]')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:22:25: error no-such-card stages[0].slots[0].cards[1] is deep-squat; must be the id of a file in exercises/.
                  cards: [bridge, deep-squat]
                                  ^
      Fix: add exercises/deep-squat.md, or name one that is there."
    `);
  });

  it('as the harder card', () => {
    expect(printedWith(BRIDGE, 'harder: single-leg-bridge', 'harder: one-leg-bridge')).toMatchInlineSnapshot(`
      "exercises/bridge.md:15:9: error no-such-card harder is one-leg-bridge; must be the id of a file in exercises/.
          harder: one-leg-bridge
                  ^
      Fix: write single-leg-bridge."
    `);
  });

  it('in the morning check', () => {
    expect(printedWith(HAMSTRING, '  card: bridge', '  card: bridges')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:52:9: error no-such-card morningCheck.card is bridges; must be the id of a file in exercises/.
            card: bridges
                  ^
      Fix: write bridge."
    `);
  });

  it('as the protocol', () => {
    expect(printedWith(OTTER, 'protocol: hamstring', 'protocol: hamstrings')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:13:11: error no-such-card protocol is hamstrings; must be the id of a file in protocols/.
          protocol: hamstrings
                    ^
      Fix: write hamstring."
    `);
  });

  it('in a number set by the clinician', () => {
    expect(printedWith(OTTER, 'path: bridge.sets', 'path: brige.sets')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:53:13: error no-such-card overrides[0].path is brige.sets; must be the id of a file in exercises/.
            - { path: brige.sets, value: 2, reason: Two are enough for now. }
                      ^
      Fix: write bridge.sets (Bridge from the floor, hip bend up to 53°), if that is meant."
    `);
  });

  it('is not raised for a card that is there but broken', () => {
    const files = filesWith({ [BRIDGE]: spoilt(BRIDGE, 'kind: isotonic', 'kind: heavy') });
    expect(printed(files)).toMatchInlineSnapshot(`
      "exercises/bridge.md:3:7: error wrong-word kind is heavy; must be isometric, isotonic, energy-storage, mobility or running-drill.
          kind: heavy
                ^
      Fix: write one of isometric, isotonic, energy-storage, mobility or running-drill. How it loads the tendon."
    `);
  });
});

describe('does-not-fit', () => {
  it('a tested weight on a card that carries none', () => {
    const files = filesWith({
      [BRIDGE]: spoilt(BRIDGE, 'loadAt: pelvisFront\npickUpHeightCm: 40\n', ''),
    });
    expect(printed(files)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:41: error does-not-fit testedSets[0].loadKg is 10; must be 0: bridge is done without a weight.
            - { card: bridge, side: left, loadKg: 10, repetitions: 8, reserve: 2, pain: 2 }
                                                  ^
      Fix: write 0, or the card that was done with this weight."
    `);
  });
});

describe('missing-key', () => {
  it('the decision to end the treatment', () => {
    expect(printedWith(OTTER, 'stage: auto', 'stage: keepGoing')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error missing-key discharge is missing; must be there with stage: keepGoing: who decided to end the treatment, and when.
          stage: keepGoing
                 ^
      Fix: add discharge with decidedBy and on; or write the stage of somebody who is still treated."
    `);
    const decided = 'stage: keepGoing\ndischarge: { decidedBy: M. Vale, on: 2026-03-02 }';
    expect(printedWith(OTTER, 'stage: auto', decided)).toBe('');
  });
});

describe('circle', () => {
  it('prints the way round', () => {
    expect(printedWith('exercises/single-leg-bridge.md', 'easier: bridge', 'harder: bridge'))
      .toMatchInlineSnapshot(`
      "exercises/bridge.md:15:9: error circle harder is bridge -> single-leg-bridge -> bridge; must be a way that ends.
          harder: single-leg-bridge
                  ^
      Fix: take harder out of the hardest of these cards."
    `);
  });

  it('sees a card that is easier than itself', () => {
    expect(printedWith('exercises/band-walk.md', 'needs: []', 'needs: []\neasier: band-walk'))
      .toMatchInlineSnapshot(`
      "exercises/band-walk.md:9:9: error circle easier is band-walk -> band-walk; must be a way that ends.
          easier: band-walk
                  ^
      Fix: take easier out of the easiest of these cards."
    `);
  });
});

describe('no-such-country', () => {
  it('names the countries there are', () => {
    expect(printedWith(OTTER, 'country: GB', 'country: FR')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:8:10: error no-such-country country is FR; must be one of the countries in clinic.md: GB or IE.
          country: FR
                   ^
      Fix: add the emergency wording for FR to clinic.md, or write one of its countries."
    `);
  });
});

describe('wrong-word', () => {
  it('a test one letter beside a known one', () => {
    expect(printedWith(OTTER, 'test: bridge-hold', 'test: bridge-holt')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:24:13: error wrong-word tests[0].test is bridge-holt; must be a test of hamstring, or the id of the card that was tried.
            - { test: bridge-holt, pain: 3, seconds: 40 }
                      ^
      Fix: write bridge-hold (Bridge hold), if that was done. The tests of hamstring are bridge-hold (Bridge hold). The cards are bridge, single-leg-bridge, band-walk."
    `);
  });

  it('a test that neither protocol nor library knows, with what there is', () => {
    expect(printedWith(OTTER, 'test: bridge-hold', 'test: shoe-off-test')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:24:13: error wrong-word tests[0].test is shoe-off-test; must be a test of hamstring, or the id of the card that was tried.
            - { test: shoe-off-test, pain: 3, seconds: 40 }
                      ^
      Fix: The tests of hamstring are bridge-hold (Bridge hold). The cards are bridge, single-leg-bridge, band-walk."
    `);
  });

  it('the id of a card that was tried is taken', () => {
    expect(
      printedWith(
        OTTER,
        'test: bridge-hold, pain: 3, seconds',
        'test: single-leg-bridge, pain: 3, repetitions',
      ),
    ).toBe('');
  });

  it('a band nobody has measured', () => {
    expect(printedWith(OTTER, 'bands: [green]', 'bands: [greem, long-red]')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:31:11: error wrong-word kit.bands[0] is greem; must be a band of clinic.md: green.
            bands: [greem, long-red]
                    ^
      Fix: write green if that is meant, or add greem with its force to bandNewtons in clinic.md.

      consults/otter-r1.md:31:18: error wrong-word kit.bands[1] is long-red; must be a band of clinic.md: green.
            bands: [greem, long-red]
                           ^
      Fix: add long-red with its force to bandNewtons in clinic.md, or take it out."
    `);
  });

  it('an activity that the protocol does not know, which may be right', () => {
    const choir = 'doesNow: [{ what: cycling to work, times: 2 }, { what: choir, times: 1 }]\noverrides:';
    expect(printedWith(OTTER, 'overrides:', choir)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:52:56: error wrong-word doesNow[1].what is choir; must be an activity that hamstring knows: cycling.
          doesNow: [{ what: cycling to work, times: 2 }, { what: choir, times: 1 }]
                                                                 ^
      Fix: write one of these, or take the line out; or, if it is right, check it and add to confirmed: - { path: doesNow.1.what, value: choir, reason: how it was checked }."
    `);
    const confirmed = `confirmed: [{ path: "doesNow.1.what", value: choir, reason: sings standing }]\n${choir}`;
    expect(printedWith(OTTER, 'overrides:', confirmed)).toBe('');
  });

  it('the old name of the keep-going stage', () => {
    expect(printedWith(OTTER, 'stage: auto', 'stage: keep')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error wrong-word stage is keep; must be auto, 1, 2, 3, 4 or keepGoing.
          stage: keep
                 ^
      Fix: write stage: keepGoing."
    `);
  });

  it('a cell that is not in the dosage table', () => {
    expect(printedWith(OTTER, 'path: bridge.sets', 'path: bridge.reps')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:53:13: error wrong-word overrides[0].path is bridge.reps; must be a card and one of sets, repetitions, holdSeconds, tempo, restSeconds, loadKg, reserve, hipFlexionDeg, kneeFlexionDeg, ankleDorsiflexionDeg, howFar, timesPerDay or days.
            - { path: bridge.reps, value: 2, reason: Two are enough for now. }
                      ^
      Fix: write a cell of the dosage table after bridge."
    `);
  });

  it('a test no stage can ask for', () => {
    expect(printedWith(HAMSTRING, 'tests: [bridge-hold]', 'tests: [bridge-holds]')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:33:47: error wrong-word stages[1].enter.tests[0] is bridge-holds; must be a test of this protocol or the id of a card.
              enter: { words: After discharge., tests: [bridge-holds] }
                                                        ^
      Fix: write bridge-hold."
    `);
  });
});

describe('all Problems of all files in one run', () => {
  it('one broken file hides no other', () => {
    const files = filesWith({
      [BRIDGE]: spoilt(BRIDGE, 'hip: 53', 'hip: 530'),
      'advice/sitting.md': 'nothing',
      'clinic.md': SAMPLE['clinic.md'].replace('paper: A4', 'paper: A5'),
      [OTTER]: spoilt(OTTER, 'pain: 3,', 'pain: 30,'),
    });
    expect(printed(files)).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error no-front-matter found no front matter; must be a first line ---, the keys, and a closing line ---.
          nothing
          ^
      Fix: put the keys between two lines of three hyphens at the top of the file.

      clinic.md:5:8: error wrong-word paper is A5; must be A4 or Letter.
          paper: A5
                 ^
      Fix: write one of A4 or Letter.

      exercises/bridge.md:7:35: error out-of-range start.work.hip is 530; must be a number from -30 to 135 °.
          start: { trunk: -90, work: { hip: 530, knee: 116.5, pitch: 0 } }
                                            ^
      Fix: give a number from -30 to 135 °. Hip flexion in degrees, 0 standing.

      consults/otter-r1.md:24:32: error out-of-range tests[0].pain is 30; must be a whole number from 0 to 10.
            - { test: bridge-hold, pain: 30, seconds: 40 }
                                         ^
      Fix: give a whole number from 0 to 10. Pain during it, 0 to 10."
    `);
  });
});

describe('words of its own that a file does not have', () => {
  it('advice that gives way', () => {
    const by =
      'showWhen: [sits]\ngivesWay:\n  - { entry: Stand up when it begin., when: [kneel], instead: Rest. }';
    expect(printedWith('advice/sitting.md', 'showWhen: [sits]', by)).toMatchInlineSnapshot(`
      "advice/sitting.md:5:14: error wrong-word givesWay[0].entry is Stand up when it begin.; must be words of this file, letter for letter.
            - { entry: Stand up when it begin., when: [kneel], instead: Rest. }
                       ^
      Fix: write: Stand up when it begins."
    `);
  });

  it('what a card says of a weight', () => {
    expect(printedWith(BRIDGE, 'evidence:', 'withWeight: [Take the weight from a table.]\nevidence:'))
      .toMatchInlineSnapshot(`
      "exercises/bridge.md:17:14: error wrong-word withWeight[0] is Take the weight from a table.; must be words of this file, letter for letter.
          withWeight: [Take the weight from a table.]
                       ^
      Fix: copy the sentence from the body."
    `);
  });

  it('and not when they are there', () => {
    const by = 'showWhen: [sits]\ngivesWay:\n  - { entry: Stand up when it begins., when: [kneel] }';
    expect(printedWith('advice/sitting.md', 'showWhen: [sits]', by)).toBe('');
  });
});

describe('the guarded joint', () => {
  const KNEE = ['angle: hipFlexion', 'angle: kneeFlexion'] as const;

  it('is capped in every stage, and no other is', () => {
    expect(printedWith(HAMSTRING, ...KNEE)).toMatchInlineSnapshot(`
      "protocols/hamstring.md:11:11: error missing-key stages[0].caps.kneeFlexionDeg is missing; must be there where angle is kneeFlexion.
              caps: { hipFlexionDeg: 60, compressionBw: 0.8, tensionBw: 2.5, demand: 0.6 }
                    ^
      Fix: add kneeFlexionDeg. Largest knee bend in degrees at the first step, or none; where the angle is kneeFlexion.

      protocols/hamstring.md:11:28: error does-not-fit stages[0].caps.hipFlexionDeg is 60; must be left out where angle is kneeFlexion.
              caps: { hipFlexionDeg: 60, compressionBw: 0.8, tensionBw: 2.5, demand: 0.6 }
                                     ^
      Fix: take hipFlexionDeg out; the cap is kneeFlexionDeg.

      protocols/hamstring.md:30:11: error missing-key stages[1].caps.kneeFlexionDeg is missing; must be there where angle is kneeFlexion.
              caps: { hipFlexionDeg: none, compressionBw: none, tensionBw: none, demand: none }
                    ^
      Fix: add kneeFlexionDeg. Largest knee bend in degrees at the first step, or none; where the angle is kneeFlexion.

      protocols/hamstring.md:30:28: error does-not-fit stages[1].caps.hipFlexionDeg is none; must be left out where angle is kneeFlexion.
              caps: { hipFlexionDeg: none, compressionBw: none, tensionBw: none, demand: none }
                                     ^
      Fix: take hipFlexionDeg out; the cap is kneeFlexionDeg."
    `);
  });
});
