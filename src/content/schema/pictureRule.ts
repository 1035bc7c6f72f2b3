/** Rules across the keys of a picture: each view has its own words, and a frame must have all it is drawn from. */
import type { Wrong } from './words.ts';

type Keys = Readonly<Record<string, unknown>>;

const SIDE_ONLY = ['trunk', 'arms', 'elbow', 'farArm'] as const;
const FRONT_ONLY = ['lean', 'hands'] as const;

/** Every frame has the keys of its view and none of the other; a step in the air says how high. */
export function pictureRule(picture: Keys, wrong: Wrong): void {
  const side = picture['view'] === 'side';
  if (!side)
    for (const key of ['supports', 'riseCm'] as const)
      if (picture[key] !== undefined) wrong([key], 'left out of a view that is not from the side');
  const frames: readonly unknown[] = Array.isArray(picture['frames']) ? picture['frames'] : [];
  frames.forEach((frame, index) => {
    if (isKeys(frame)) frameRule(frame, side, ['frames', index], wrong);
  });
  namesRule(frames, wrong);
}

function frameRule(frame: Keys, side: boolean, path: readonly PropertyKey[], wrong: Wrong): void {
  const needed = side ? 'trunk' : 'lean';
  if (frame[needed] === undefined)
    wrong([...path, needed], `there in a view from ${side ? 'the side' : 'the front'}`, { missing: true });
  for (const key of side ? FRONT_ONLY : SIDE_ONLY)
    if (frame[key] !== undefined)
      wrong([...path, key], `left out of a view from ${side ? 'the side' : 'the front'}`);
  if (frame['elbow'] !== undefined && frame['arms'] === undefined)
    wrong([...path, 'arms'], 'there with elbow: the forearm turns on from the upper arm', { missing: true });
  if (frame['name'] === 'flight' && frame['offGroundCm'] === undefined)
    wrong([...path, 'offGroundCm'], 'there in a flight', { missing: true });
  for (const name of ['work', 'other'] as const) {
    const leg = frame[name];
    if (isKeys(leg)) legRule(leg, side, [...path, name], wrong);
  }
}

function legRule(leg: Keys, side: boolean, path: readonly PropertyKey[], wrong: Wrong): void {
  if (!side) {
    for (const key of ['pitch', 'ankle'])
      if (leg[key] !== undefined) wrong([...path, key], 'left out of a view from the front');
    return;
  }
  if (leg['out'] !== undefined) wrong([...path, 'out'], 'left out of a view from the side');
  for (const key of ['hip', 'knee'])
    if (leg[key] === undefined) wrong([...path, key], 'there in a view from the side', { missing: true });
  if ((leg['pitch'] === undefined) === (leg['ankle'] === undefined))
    wrong([...path], 'given either pitch (foot on the ground) or ankle (foot in the air)');
}

// Two frames of one name could not be told apart by their captions; each then needs words of its own.
function namesRule(frames: readonly unknown[], wrong: Wrong): void {
  const seen = new Set<unknown>();
  frames.forEach((frame, index) => {
    if (!isKeys(frame)) return;
    if (seen.has(frame['name']) && frame['caption'] === undefined)
      wrong(['frames', index, 'caption'], 'there when an earlier frame has the same name', { missing: true });
    seen.add(frame['name']);
  });
}

function isKeys(value: unknown): value is Keys {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
