/** What `check` says of a library that content takes: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { checked, checkedWith, GOOD } from './goodLibrary.ts';

const BRIDGE = 'exercises/bridge.md';
const SINGLE = 'exercises/single-leg-bridge.md';
const WALK = 'exercises/band-walk.md';
const HAMSTRING = 'protocols/hamstring.md';

describe('a good library', () => {
  it('has no warning', () => {
    expect(checkedWith({})).toBe('');
  });
});

describe('words-against-angle', () => {
  it('a straight hip where the pose bends it', () => {
    expect(checked(BRIDGE, 'Breathe all the way.', 'Keep the hip straight all the way.'))
      .toMatchInlineSnapshot(`
      "exercises/bridge.md:30:21: warning words-against-angle found text with “Keep the hip straight”, and the pose has a hip bend from 0° to 53°; must be text that agrees with the pose; these words mean a hip bend of 20° at most.
          turn there at once. Keep the hip straight all the way.
                              ^
      Fix: say what the pose does, or mend the pose."
    `);
  });

  it('in a caution, of the knee', () => {
    expect(checked(BRIDGE, 'Keep your hips level.]', "'Go slowly, and keep your knees straight.']"))
      .toMatchInlineSnapshot(`
      "exercises/bridge.md:16:28: warning words-against-angle cautions[0] is text with “keep your knees straight”, and the pose has a knee bend from 95° to 117°; must be text that agrees with the pose; these words mean a knee bend of 20° at most.
          cautions: ['Go slowly, and keep your knees straight.']
                                     ^
      Fix: say what the pose does, or mend the pose."
    `);
  });

  it('a bow where there is none', () => {
    expect(checked(WALK, 'Do not lean.', 'Bend your hips.')).toBe('');
    expect(
      checkedWith({
        [WALK]: GOOD[WALK].replace('peakHipFlexionDeg: 25', 'peakHipFlexionDeg: 5').replace(
          'Do not lean.',
          'Bow forward.',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:28:52: warning words-against-angle found text with “Bow forward”, and the pose has a hip bend from 0° to 5°; must be text that agrees with the pose; these words mean a hip bend of at least 30°.
          Keep your toes facing forward and your hips level. Bow forward. Take smaller steps when you get
                                                             ^
      Fix: say what the pose does, or mend the pose."
    `);
  });

  it("a number of degrees that is not the pose's is an error", () => {
    expect(checked(BRIDGE, 'Breathe all the way.', 'Bend the hip to 90 degrees.')).toMatchInlineSnapshot(`
      "exercises/bridge.md:30:37: error words-against-angle found text with “90 degrees” of the hip, and the pose has a hip bend from 0° to 53°; must be text without another number than the pose has.
          turn there at once. Bend the hip to 90 degrees.
                                              ^
      Fix: leave the number out: the plan says how far."
    `);
  });
});

describe('easier-is-harder', () => {
  it('more squeeze than the card has', () => {
    expect(
      checkedWith({
        [BRIDGE]: GOOD[BRIDGE].replace('harder: single-leg-bridge', 'easier: single-leg-bridge'),
        [SINGLE]: GOOD[SINGLE].replace('easier: bridge\n', ''),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/bridge.md:15:9: warning easier-is-harder easier is single-leg-bridge, which squeezes with 1.76 body weights where this card has 0.56; must be a card that the model does not put above this one.
          easier: single-leg-bridge
                  ^
      Fix: name another card, mend the pose of one of the two, or take easier out."
    `);
  });
});

describe('harder-is-easier', () => {
  it('less of everything than the card has', () => {
    expect(
      checkedWith({
        [BRIDGE]: GOOD[BRIDGE].replace('harder: single-leg-bridge\n', ''),
        [SINGLE]: GOOD[SINGLE].replace('easier: bridge', 'harder: bridge'),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/single-leg-bridge.md:15:9: warning harder-is-easier harder is bridge, which squeezes with 0.56 body weights where this card has 1.76; must be a card that the model does not put below this one.
          harder: bridge
                  ^
      Fix: name another card, mend the pose of one of the two, or take harder out."
    `);
  });
});

describe('pose-cannot-close', () => {
  it('no angle of the trunk within the range', () => {
    expect(checked(BRIDGE, 'range: [-140, -20]', 'range: [-50, -20]')).toMatchInlineSnapshot(`
      "exercises/bridge.md:6:8: error pose-cannot-close solve is without an answer at the start for a body of 1.55 m: no trunk from -50° to -20° closes the pose; must be a way to close the pose for every body from 1.55 to 1.95 m.
          solve: { unknown: trunk, kind: height, dh: 0, range: [-50, -20] }
                 ^
      Fix: mend hip, knee or pitch until the body reaches its supports, or widen range.

      protocols/hamstring.md:22:16: warning stage-leaves-out stages[0].slots[0].cards is a slot that leaves out someone without kit (bridge: the pose cannot be held by this body); must be a slot with a card for everybody, for the stage needs it.
                  cards: [bridge]
                         ^
      Fix: add a card that asks for less behind the others, or write needed: no if the stage can do without this slot."
    `);
  });

  it('an ankle that no foot has', () => {
    expect(
      checked(
        BRIDGE,
        'end: { trunk: -90, work: { hip: 0, knee: 95, pitch: 0 } }',
        'end: { trunk: -90, work: { hip: 0, knee: 95, pitch: -70 } }',
      ),
    ).toMatchInlineSnapshot(`
      "exercises/bridge.md:8:6: error pose-cannot-close end is a pose that bends an ankle to -91° at the end; must be a pose with its ankles from -60° to 40°.
          end: { trunk: -90, work: { hip: 0, knee: 95, pitch: -70 } }
               ^
      Fix: mend hip, knee or pitch of that leg; pitch is the angle of the foot to the ground."
    `);
  });

  it('a stand beside the feet', () => {
    expect(
      checkedWith({
        [WALK]: GOOD[WALK].replace(
          'peakHipFlexionDeg: 25\nmark: choice',
          'supports: [both.mid]\nstart: { trunk: 60, work: { hip: 20, knee: 5, pitch: 0 } }',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:5:11: error pose-cannot-close supports is beside the weight of the body at the start for a body of 1.55 m; must be a point below the weight of the body.
          supports: [both.mid]
                    ^
      Fix: let a solve of kind balance turn the trunk, or name a second support."
    `);
  });

  it('a support that would have to hold the body down', () => {
    expect(
      checkedWith({
        [WALK]: GOOD[WALK].replace(
          'peakHipFlexionDeg: 25\nmark: choice',
          'supports: [both.heel, both.fore]\nstart: { trunk: 60, work: { hip: 20, knee: 5, pitch: 0 } }',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:5:11: error pose-cannot-close supports is a pair of which one would have to hold the body down at the start for a body of 1.55 m; must be points on which the body rests by its weight.
          supports: [both.heel, both.fore]
                    ^
      Fix: put the supports to both sides of the weight, or name the one that carries it."
    `);
  });

  it('a squat deeper than the ankle', () => {
    expect(
      checkedWith({
        [WALK]: GOOD[WALK].replace(
          'peakHipFlexionDeg: 25\nmark: choice',
          'supports: [both.mid]\nsolve: { unknown: trunk, kind: balance, range: [-30, 120] }\nstart: { trunk: 0, work: { hip: 60, knee: 130, pitch: 0 } }',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:7:8: error pose-cannot-close start is a pose that bends the standing ankle beyond its reach at the start for a body of 1.55 m; must be a pose whose standing ankle bends by 40° at most.
          start: { trunk: 0, work: { hip: 60, knee: 130, pitch: 0 } }
                 ^
      Fix: bend the knee less, or the hip more."
    `);
  });
});

describe('stage-leaves-out', () => {
  it('someone without kit', () => {
    expect(checked(HAMSTRING, 'cards: [bridge]', 'cards: [band-walk]')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:22:16: warning stage-leaves-out stages[0].slots[0].cards is a slot that leaves out someone without kit (band-walk: its position (standing) is not one of the stage); must be a slot with a card for everybody, for the stage needs it.
                  cards: [band-walk]
                         ^
      Fix: add a card that asks for less behind the others, or write needed: no if the stage can do without this slot."
    `);
  });

  it('someone who cannot kneel, and someone who cannot lie face up', () => {
    expect(checked(BRIDGE, 'needs: []', 'needs: [kneel, lie-supine]')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:22:16: warning stage-leaves-out stages[0].slots[0].cards is a slot that leaves out someone without kit who cannot kneel, or cannot lie face up (bridge: it asks for what cannot be done (kneel)); must be a slot with a card for everybody, for the stage needs it.
                  cards: [bridge]
                         ^
      Fix: add a card that asks for less behind the others, or write needed: no if the stage can do without this slot."
    `);
  });
});

describe('review-overdue', () => {
  it('the day after', () => {
    expect(checked(WALK, 'nextReviewOn: 2027-01-05', 'nextReviewOn: 2026-11-24')).toMatchInlineSnapshot(`
      "exercises/band-walk.md:14:15: warning review-overdue nextReviewOn is 2026-11-24; must be 2026-11-25, the day of this check, or later.
          nextReviewOn: 2026-11-24
                        ^
      Fix: look through pose, words and evidence, then write the day in reviewedOn and the next one here."
    `);
  });

  it('not on the day itself', () => {
    expect(checkedWith({}, '2027-01-05')).toBe('');
    expect(checkedWith({}, '2027-01-06').match(/review-overdue/g)).toHaveLength(3);
  });
});

describe('words-against-dose', () => {
  it('a card that asks for few at first, and a dose that is many', () => {
    expect(checked(BRIDGE, 'Keep your hips level.]', "'Do few at first, then more.']"))
      .toMatchInlineSnapshot(`
      "exercises/bridge.md:16:11: error words-against-dose cautions is "Do few at first, then more.", where hamstring begins main with 24 repetitions; must be words that agree with the dose: 10 repetitions in a first session are few.
          cautions: ['Do few at first, then more.']
                    ^
      Fix: write fewAtFirst: yes in the card, so that a first session has few, or mend the words."
    `);
  });

  it('not when the card says so to the programme as well', () => {
    const text = GOOD[BRIDGE].replace('Keep your hips level.]', "'Do few at first, then more.']");
    expect(checkedWith({ [BRIDGE]: text.replace('cautions:', 'fewAtFirst: yes\ncautions:') })).toBe('');
  });
});

describe('card-unused', () => {
  it('in no slot, test or morning check', () => {
    expect(checked(HAMSTRING, ', band-walk]', ']')).toMatchInlineSnapshot(`
      "exercises/band-walk.md:2:8: warning card-unused title is on a card that no protocol uses; must be on a card that stands in a slot, a test or the morning check of a protocol.
          title: Side steps with a band
                 ^
      Fix: name band-walk in a slot of a protocol, or take the file out."
    `);
  });

  it('not when a slot climbs to it by its lever', () => {
    const text = GOOD[HAMSTRING].replace(
      'cards: [single-leg-bridge, bridge, band-walk]',
      'cards: [bridge, band-walk]',
    );
    expect(checkedWith({ [HAMSTRING]: text })).toContain('warning card-unused');
    expect(checkedWith({ [HAMSTRING]: text.replace('[{ change: load }]', '[{ change: lever }]') })).toBe('');
  });
});

describe('evidence-weak', () => {
  it('nothing but choice and memory', () => {
    expect(
      checked(
        WALK,
        '{ cite: house choice, mark: common-practice }',
        '{ cite: house choice, mark: choice }\n  - { cite: a book, mark: memory }',
      ),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:12:3: warning evidence-weak evidence is nothing but choice and memory; must be at least one source marked read, secondary or common-practice.
            - { cite: house choice, mark: choice }
            ^
      Fix: name what the trade or a paper says of it; when nothing does, write so: { cite: "Common practice, no source", mark: common-practice }."
    `);
  });

  it('of an advice card', () => {
    expect(checked('advice/sitting.md', 'mark: common-practice', 'mark: choice')).toMatchInlineSnapshot(`
      "advice/sitting.md:5:3: warning evidence-weak sources is nothing but choice; must be at least one source marked read, secondary or common-practice.
            - { cite: house choice, mark: choice }
            ^
      Fix: name what the trade or a paper says of it; when nothing does, write so: { cite: "Common practice, no source", mark: common-practice }."
    `);
  });
});

describe('card-length', () => {
  it('too short', () => {
    expect(
      checked(
        WALK,
        'Keep your toes facing forward and your hips level. Do not lean. Take smaller steps when you get\ntired.',
        'Do not lean.',
      ),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:19:1: warning card-length found a card of 54 words; must be a card of 60 to 140 words under its headings.
          Stand with your feet as wide as your hips. Put the band round both ankles.
          ^
      Fix: say more of how to set up, how to move and what to look out for."
    `);
  });

  it('too long', () => {
    expect(checked(WALK, 'Do not lean.', 'Do not lean to the side. '.repeat(14))).toMatchInlineSnapshot(`
      "exercises/band-walk.md:19:1: warning card-length found a card of 151 words; must be a card of 60 to 140 words under its headings.
          Stand with your feet as wide as your hips. Put the band round both ankles.
          ^
      Fix: leave out what the figure shows or the plan says."
    `);
  });
});

describe('long-sentence', () => {
  it('at its beginning, in the second line of a paragraph', () => {
    expect(
      checked(
        WALK,
        'Keep the band tight all the time.',
        'Keep the band tight all the time, and your back and your neck and your arms and your hands and your face loose.',
      ),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:24:43: warning long-sentence found a sentence of 23 words; must be a sentence of at most 20 words.
          …ows, then come back the same way. Keep the band tight all the time, and your back and your neck and …
                                             ^
      Fix: make two sentences of it, one thing to do in each."
    `);
  });

  it('in a list entry of the second level', () => {
    expect(
      checked(
        BRIDGE,
        '  2. keep your hips level',
        '  2. keep your hips level and your back and your neck and your arms and your hands and your face and your feet loose',
      ),
    ).toMatchInlineSnapshot(`
      "exercises/bridge.md:36:6: warning long-sentence found a sentence of 23 words; must be a sentence of at most 20 words.
            2. keep your hips level and your back and your neck and your arms and your hands and your face and…
               ^
      Fix: make two sentences of it, one thing to do in each."
    `);
  });
});

describe('reading-grade', () => {
  it('by Flesch-Kincaid, with the longest words of the hardest sentence', () => {
    expect(
      checkedWith({
        'advice/sitting.md': GOOD['advice/sitting.md'].replace(
          'Stand up when it begins.',
          'Regular alternation of occupational positions facilitates considerable improvement of individual tolerance.',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "advice/sitting.md:14:1: warning reading-grade found the hardest sentence of a text of grade 14.1 (Flesch-Kincaid; reading ease 6); must be in a text of grade 8 or below.
          Regular alternation of occupational positions facilitates considerable improvement of individual tol…
          ^
      Fix: write shorter sentences and shorter words, here first in place of occupational, considerable, individual."
    `);
  });

  it('by SMOG, of ten sentences or more', () => {
    expect(
      checkedWith({
        'advice/sitting.md': GOOD['advice/sitting.md'].replace(
          'Stand up when it begins.',
          'You go there on Saturday now. '.repeat(12),
        ),
      }),
    ).toMatchInlineSnapshot(`
      "advice/sitting.md:14:1: warning reading-grade found the hardest sentence of a text of grade 8.4 (SMOG; reading ease 90); must be in a text of grade 8 or below.
          You go there on Saturday now. You go there on Saturday now. You go there on Saturday now. You go the…
          ^
      Fix: write shorter sentences and shorter words, here first in place of Saturday."
    `);
  });
});

describe('trade-word', () => {
  it('in a body, under strong', () => {
    expect(checked(WALK, 'Do not lean.', 'Feel the **gluteus medius** work.')).toMatchInlineSnapshot(`
      "exercises/band-walk.md:28:63: warning trade-word found text with “gluteus”; must be text in everyday words.
          …d and your hips level. Feel the **gluteus medius** work. Take smaller steps when you get
                                             ^
      Fix: say buttock muscles."
    `);
  });

  it('in the protocol, where the leaflet takes it from', () => {
    expect(checked(HAMSTRING, 'sitting: Break it up.', 'sitting: Break up prolonged lumbar flexion.'))
      .toMatchInlineSnapshot(`
      "protocols/hamstring.md:26:33: warning trade-word stages[0].sitting is text with “lumbar”; must be text in everyday words.
              sitting: Break up prolonged lumbar flexion.
                                          ^
      Fix: say lower back.

      protocols/hamstring.md:26:40: warning trade-word stages[0].sitting is text with “flexion”; must be text in everyday words.
              sitting: Break up prolonged lumbar flexion.
                                                 ^
      Fix: say bend."
    `);
  });

  it('on a public page only when the glossary does not explain it', () => {
    expect(checked(HAMSTRING, '## How it works\n', '## How it works\n\nMind the tempo and the gait.\n'))
      .toMatchInlineSnapshot(`
      "protocols/hamstring.md:122:24: warning trade-word found text with “gait”; must be text in everyday words or those of the glossary.
          Mind the tempo and the gait.
                                 ^
      Fix: say the way you walk or run."
    `);
  });
});

describe('banned-word', () => {
  it('in a body and in a caution, each at its place', () => {
    expect(
      checkedWith({
        [WALK]: GOOD[WALK].replace('Do not lean.', 'There is no risk in it.').replace(
          'Keep the knees soft.',
          '"A safe way: knees soft."',
        ),
      }),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:10:15: warning banned-word cautions[0] is text with “safe”; must be text without the words a leaflet leaves out.
          cautions: ["A safe way: knees soft."]
                        ^
      Fix: write it another way: steady, or say what holds.

      exercises/band-walk.md:28:64: warning banned-word found text with “risk”; must be text without the words a leaflet leaves out.
          … and your hips level. There is no risk in it. Take smaller steps when you get
                                             ^
      Fix: write it another way: say what may happen and what to do then."
    `);
  });

  it('not on the public page of a protocol', () => {
    expect(
      checked(HAMSTRING, '## How it works\n', '## How it works\n\nIn this stage the cap is low.\n'),
    ).toBe('');
  });
});
