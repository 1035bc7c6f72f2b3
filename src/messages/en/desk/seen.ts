/** A landmark as it was seen on the video, for the clinician. */
import type { Landmark } from '../../../mechanics/landmark.ts';

/** Null for what cannot be told by looking. @example seenText({ kind: 'handsAboveKnee', cm: 0 }) // => 'hands reached the knee' */
export function seenText(landmark: Landmark): string | null {
  switch (landmark.kind) {
    case 'handsAboveKnee':
      return landmark.cm <= 0 ? 'hands reached the knee' : `hands ${landmark.cm} cm above the knee`;
    case 'handsBelowKnee':
      return landmark.cm <= 0 ? 'hands reached the knee' : `hands ${landmark.cm} cm below the knee`;
    case 'hipsAboveFloor':
      return `hips ${landmark.cm} cm above the floor`;
    case 'buttockBack':
      return `buttock ${landmark.cm} cm back`;
    case 'rearKneeAboveFloor':
      return `rear knee ${Math.max(0, landmark.cm)} cm above the floor`;
    case 'kneeOverToes':
      return landmark.cm > 0 ? `knee ${landmark.cm} cm past the toes` : 'knee behind the toes';
    case 'stepHeight':
      return `a step of ${landmark.cm} cm`;
    default:
      return null;
  }
}

export const TEST_WORDS = {
  protocolFirst: 'Choose the protocol above: its tests are offered here by name.',
  ofProtocol: 'Tests of the protocol',
  exercises: 'Exercises',
  seen: 'Seen on the video when pain began',
} as const;
