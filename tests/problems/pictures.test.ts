/** What `check` says of a card whose figure is missing or shows something else than its words: the printed texts. */
import { describe, expect, it } from 'vitest';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { seenIn } from '../../src/drawing/seen.ts';
import type { SeenFrame } from '../../src/mechanics/seen.ts';
import { againstPictures } from '../../src/lint/pictures.ts';
import { filesWith } from '../content/sample.ts';
import { GOOD } from './goodLibrary.ts';

const WALK = 'exercises/band-walk.md';
const DRAWN = `picture:
  view: side
  frames:
    - name: start
      trunk: 0
      work: { hip: 0, knee: 0, pitch: 0 }
    - name: end
      trunk: 0
      work: { hip: 30, knee: 30, ankle: 0 }
      other: { hip: 0, knee: 0, pitch: 0 }
`;

/** Only what is said of the walk; \`seen\` puts faults into what is looked at. */
function printed(changes: readonly (readonly [string, string])[], seen: Partial<SeenFrame> = {}): string {
  const drawn = GOOD[WALK].replace('equipment:', `${DRAWN}equipment:`);
  const text = changes.reduce((now, [from, to]) => {
    if (!now.includes(from)) throw new Error(`no ${from}`);
    return now.replace(from, to);
  }, drawn);
  const files = filesWith({ ...GOOD, [WALK]: text });
  const { library, placeOf, problems } = readLibrary(files);
  if (library === null) throw new Error(problems.map((one) => problemText(one, null)).join('\n'));
  const lineOf = lineFinder(files);
  return againstPictures(library, (scene) => seenIn(scene).map((one) => ({ ...one, ...seen })), placeOf)
    .filter(({ file }) => file === WALK)
    .slice(0, 1)
    .map((problem) => problemText(problem, lineOf(problem.file, problem.line)))
    .join('\n\n');
}

describe('a card whose figure agrees', () => {
  it('has no warning', () => {
    expect(printed([])).toBe('');
  });
});

describe('figure-missing', () => {
  it('neither a pose nor a picture', () => {
    expect(printed([[DRAWN, '']])).toMatchInlineSnapshot(`
      "exercises/band-walk.md:2:8: warning figure-missing title is a card without a figure; must be a card with a start pose, or with a picture that is only drawn.
          title: Side steps with a band
                 ^
      Fix: give it a start pose, or a picture with its frames."
    `);
  });
});

describe('hand-in-the-air', () => {
  it('a hand said to be on the worktop, and no worktop', () => {
    expect(printed([['Put the band round both ankles.', 'Rest one hand on a worktop.']]))
      .toMatchInlineSnapshot(`
      "exercises/band-walk.md:29:44: warning hand-in-the-air found text that puts a hand on the worktop, and the figure has it elsewhere; must be text whose hand is drawn on the worktop.
          Stand with your feet as wide as your hips. Rest one hand on a worktop.
                                                     ^
      Fix: name the thing in props, or say with hands or arms where the hand is."
    `);
  });
});

describe('said-to-move-stays', () => {
  it('a leg that is said to be lifted', () => {
    expect(
      printed([
        ['Keep the band tight all the time.', 'Lift the working leg.'],
        ['work: { hip: 30, knee: 30, ankle: 0 }', 'work: { hip: 1, knee: 1, ankle: 0 }'],
      ]),
    ).toMatchInlineSnapshot(`
      "exercises/band-walk.md:34:43: warning said-to-move-stays found text in which leg moves, and the figure does not show it; must be text whose leg is seen to move, with the arrow beside it.
          room allows, then come back the same way. Lift the working leg.
                                                    ^
      Fix: mend the poses, or give the frame its arrow."
    `);
  });
});

describe('body-enters-thing', () => {
  it('a foot in a step', () => {
    expect(printed([], { entered: [{ part: 'foot', prop: 'step', depthM: 0.04 }] })).toMatchInlineSnapshot(`
      "exercises/band-walk.md:10:7: warning body-enters-thing picture.frames[0] is a pose whose foot is drawn 4 cm inside the step; must be a pose that touches things from outside.
              - name: start
                ^
      Fix: move the limb, or take the thing out of props."
    `);
  });
});

describe('arc-against-number', () => {
  it('an arc beside 0°', () => {
    expect(printed([], { arcDeg: 9, shownDeg: 0 })).toMatchInlineSnapshot(`
      "exercises/band-walk.md:10:7: warning arc-against-number picture.frames[0] is a pose drawn with an arc of 9° beside the number 0; must be an arc that agrees with its number within 6°, and none under 12°.
              - name: start
                ^
      Fix: mend the hip of the pose."
    `);
  });
});

describe('foot-off-the-ground', () => {
  it('a standing foot in the air', () => {
    expect(printed([['work: { hip: 30, knee: 30, ankle: 0 }', 'work: { hip: 30, knee: 40, pitch: 0 }']]))
      .toMatchInlineSnapshot(`
      "exercises/band-walk.md:13:7: warning foot-off-the-ground picture.frames[1] is a pose whose standing foot hangs 6 cm over the ground; must be a pose with its standing feet on the ground.
              - name: end
                ^
      Fix: mend hip and knee of that leg, or give the foot in the air an ankle instead of a pitch."
    `);
  });
});
