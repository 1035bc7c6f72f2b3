/** How far to go, in things a patient can see or measure alone. */
import type { ExerciseCard } from '../../../content/library.ts';
import type { Landmark } from '../../../mechanics/landmark.ts';
import type { HowFar } from '../../../decisions/terms/howFar.ts';
import { countText } from '../plain.ts';

/** A buttock this near to the floor almost touches it, centimetres: less than a hand can tell [choice]. */
const NEXT_TO_CM = 3;

/** How far, as an instruction. */
export function howFarText(how: HowFar): string {
  switch (how.far) {
    case 'card':
      return how.text;
    case 'landmark':
      return landmarkText(how.landmark, how.legs, how.held, how.onBed);
    case 'part':
      return partText(how.share);
    case 'whole':
      return how.held ? 'As in the picture' : 'The whole way, as in the picture';
  }
}

/** How far with the easier numbers; rounded to whole pillows a shorter way may be said as the longer one is. */
export function easierFarText(now: HowFar, easier: HowFar): string {
  const text = howFarText(easier);
  return text === howFarText(now) ? LESS_FAR : text;
}

/** One landmark as an instruction; empty for one that tells a patient nothing. `legs`: whether one heel or both are on the floor; `held`: nothing is lowered; `onBed`: for someone who does not get down to the floor. */
export function landmarkText(
  landmark: Landmark,
  legs: ExerciseCard['legs'],
  held: boolean,
  onBed = false,
): string {
  switch (landmark.kind) {
    case 'handsAboveKnee':
      return handsText(landmark.cm, 'above');
    case 'handsBelowKnee':
      return handsText(landmark.cm, 'below');
    case 'buttockBack':
      return `Buttock ${landmark.cm} cm back: stand with your heels ${landmark.heelsFromWallCm} cm from a wall and just touch it`;
    case 'hipsAboveFloor':
      return `Hips no lower than a seat of ${landmark.cm} cm`;
    case 'buttockAboveFloor':
      return buttockText(landmark.cm, held, onBed);
    case 'pillows':
      return `No lower than ${landmark.count === 1 ? 'one pillow' : `${countText(landmark.count, 'stacked pillow')}`} (${landmark.cm} cm)`;
    case 'heelDistance':
      return `${legs === 'together' ? 'Heels' : 'Heel'} ${landmark.cm} cm away from your buttock`;
    case 'stepHeight':
      return `Step of ${landmark.cm} cm`;
    case 'stanceLength':
      return `Front heel ${landmark.cm} cm in front of the rear toes`;
    case 'rearKneeAboveFloor':
      return landmark.cm <= 0
        ? 'Rear knee down to the floor'
        : `Rear knee no lower than ${landmark.cm} cm above the floor`;
    case 'kneeOverToes':
      return landmark.cm > 0 ? `Knee up to ${landmark.cm} cm past the toes` : 'Knee behind the toes';
    case 'shouldersPastHips':
      return landmark.cm <= 0 ? '' : `Shoulders up to ${landmark.cm} cm in front of your hips`;
    case 'shouldersForward':
      return landmark.cm <= 0 ? 'Body upright' : `Shoulders up to ${landmark.cm} cm in front of the knees`;
    case 'footLift':
      return `Foot ${landmark.cm} cm above the ${onBed ? 'bed' : 'bed or floor'}`;
  }
}

function handsText(cm: number, side: 'above' | 'below'): string {
  return cm <= 0 ? 'Hands no lower than your knees' : `Hands no lower than ${cm} cm ${side} the knee`;
}

function buttockText(cm: number, held: boolean, onBed: boolean): string {
  const ground = onBed ? 'bed' : 'floor';
  if (held) return `Buttock ${cm} cm above the ${onBed ? 'bed' : 'floor or bed'}`;
  if (cm === 0) return `Down to the ${ground}`;
  return cm < NEXT_TO_CM
    ? `Down until you almost touch the ${ground}`
    : `Buttock no lower than ${cm} cm above the ${ground}: pile pillows or books to that height`;
}

const PARTS: readonly (readonly [share: number, words: string])[] = [
  [0.75, 'three quarters'],
  [0.66, 'two thirds'],
  [0.5, 'half'],
  [0.33, 'a third'],
  [0.25, 'a quarter'],
];

/** Where a shorter way has no landmark of its own. */
const LESS_FAR = 'Not quite as far as your numbers say';

/** Less than the whole way where no landmark shows it, rounded to the gentle end. @example partText(0.4) // => 'About a third of the whole way' */
function partText(share: number): string {
  const words = PARTS.find(([least]) => share >= least - 0.01)?.[1];
  return words === undefined ? 'Only a little of the way' : `About ${words} of the whole way`;
}
