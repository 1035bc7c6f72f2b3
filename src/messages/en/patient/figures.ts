/** Captions and text alternatives of the pictures, and how their sign of the hip's bend is read. */
import type { ArrowSign } from '../../../mechanics/drawnPose.ts';
import type { Scene, SceneFrame } from '../../../mechanics/scene.ts';
import {
  heldIn,
  movesBetween,
  placedAt,
  type Held,
  type Move,
  type Placed,
} from '../../../decisions/candidates/moves.ts';

// The words of a turning point must not sound like rolling over.
const FRAME_WORDS: Readonly<Record<SceneFrame['name'], string>> = {
  setUp: 'Get ready',
  start: 'Start',
  end: 'This far, then back',
  hold: 'Hold',
  takeOff: 'Push off',
  flight: 'In the air',
  landing: 'Land',
};

const PLACED_WORDS: Readonly<Record<Placed, string>> = {
  standing: 'standing',
  sitting: 'sitting',
  kneeling: 'kneeling',
  onTheBack: 'lying on the back',
  backRaised: 'the upper back on a bench',
  faceDown: 'lying face down',
  onTheSide: 'lying on the side',
  onHandsAndFeet: 'facing the floor on forearms and feet',
};

const HELD_WORDS: Readonly<Record<Held, string>> = {
  legBehind: 'the leg lifted a little behind the body',
  footUp: 'the knee bent and the foot up',
  hipsUp: 'the hips off the floor',
  oneLine: 'the body in one line',
  otherLegUp: 'the other foot off the floor',
};

const MOVE_WORDS: Readonly<Record<Move, string>> = {
  heelToButtock: 'the heel comes up towards the buttock',
  heelAway: 'the heel moves away from the buttock',
  kneeBends: 'the knee bends',
  kneeStraightens: 'the knee straightens',
  hipBends: 'the hip bends',
  hipStraightens: 'the hip straightens',
  hipStaysStraight: 'the hip stays straight',
  hipStaysBent: 'the hip stays as bent as it is',
  legGoesBack: 'the leg goes back',
  legGoesForward: 'the leg goes forward',
  legGoesOut: 'the leg goes out to the side',
  legComesIn: 'the leg comes back to the other',
  legComesUp: 'the leg comes up',
  chestRises: 'the chest comes up',
  chestSinks: 'the chest sinks',
  trunkTips: 'the trunk tips forward',
  trunkComesUp: 'the trunk comes up',
  hipsRise: 'the hips go up',
  hipsSink: 'the hips sink',
  heelsRise: 'the heel rises from the floor',
  heelsSink: 'the heel sinks to the floor',
  bodyLeans: 'the whole body leans forward from the knees',
  bodyComesUp: 'the whole body comes up from the knees',
  bodyRises: 'the body comes up',
  bodySinks: 'the body sinks',
  leavesTheGround: 'both feet are off the ground',
  landsAgain: 'back on the ground',
  otherLegGoesBack: 'the other leg rises behind',
  otherKneeComesUp: 'the other knee comes up',
  armsGoForward: 'the arms go forward',
  armsRise: 'the arms rise',
  stepsOut: 'the feet step apart',
};

const ARROW_AT: Readonly<Record<ArrowSign['at'], string>> = {
  head: 'the body goes',
  hands: 'the hands push',
  hip: 'the hips go',
  knee: 'the knee pushes',
  foot: 'the foot pushes',
};

const ARROW_TO: Readonly<Record<ArrowSign['to'], string>> = {
  up: 'up',
  down: 'down',
  forward: 'forward',
  back: 'back',
  out: 'outwards',
  in: 'inwards',
};

const STRAIGHT = 'hip straight';

/** Said once, where the first figure with a dashed line stands. */
export const ANGLE_LEGEND =
  'Dashed line: the line of your back, drawn on past the hip. Number: how far the thigh bends forward from it.';

/** Whether any frame shows the dashed line. */
export function showsAngle(scene: Scene): boolean {
  return scene.view === 'side' && scene.frames.some(({ hipFlexionDeg }) => hipFlexionDeg !== null);
}

/** Under one picture of a figure. */
export function captionText(frame: SceneFrame): string {
  return frame.caption ?? FRAME_WORDS[frame.name];
}

/**
 * The same with the degrees of the hip's bend, where the picture shows them; the frame before tells whether the hip moves.
 * @example 'Start: hip 5°'
 */
export function captionWithDegrees(frame: SceneFrame, at: number, frames: readonly SceneFrame[]): string {
  const deg = hipDegOf(frame);
  if (deg === null) return captionText(frame);
  const before = frames[at - 1];
  const stays = before !== undefined && hipDegOf(before) === deg;
  return `${captionText(frame)}: hip ${stays ? 'stays at ' : ''}${deg}°`;
}

function hipDegOf(frame: SceneFrame): number | null {
  return 'front' in frame ? null : frame.hipFlexionDeg;
}

/** The sentences that stand for the whole figure: how the body is placed, then what moves. */
export function altText(title: string, side: string, scene: Scene): string {
  const rests = scene.view === 'side' ? scene.supports : [];
  const seen =
    scene.view === 'front' ? ' Seen from the front.' : scene.view === 'above' ? ' Seen from above.' : '';
  const parts = scene.frames.map((frame, index) => {
    const before = index === 0 ? undefined : scene.frames[index - 1];
    const shown =
      before === undefined
        ? [PLACED_WORDS[placedAt(frame, scene.view, rests)]]
        : movesBetween(before, frame).map((move) => MOVE_WORDS[move]);
    const angle = shown.includes(MOVE_WORDS.hipStaysStraight) ? [] : angleWords(frame);
    const held =
      frame.name === 'hold' && before === undefined ? heldIn(frame).map((one) => HELD_WORDS[one]) : [];
    return `${captionText(frame)}: ${[...new Set([...shown, ...held, ...angle, ...arrowWords(frame)])].join('; ')}.`;
  });
  return `${title}, ${side.toLowerCase()}.${seen} ${parts.join(' ')}`;
}

function angleWords(frame: SceneFrame): readonly string[] {
  if ('front' in frame || frame.hipFlexionDeg === null) return [];
  return [frame.hipFlexionDeg <= 0 ? STRAIGHT : `hip bent ${frame.hipFlexionDeg} degrees`];
}

function arrowWords({ arrow }: SceneFrame): readonly string[] {
  return arrow === undefined
    ? []
    : [
        `${arrow.at === 'hip' && arrow.to === 'out' ? 'the hip pushes' : ARROW_AT[arrow.at]} ${ARROW_TO[arrow.to]}`,
      ];
}
