/** Where a movement stands at a moment between its two end poses. */
import type { Movement } from './movement.ts';
import type { LegPose, Pose } from './pose.ts';

/**
 * The pose a fraction `t` of the way from start to end, every number interpolated linearly, not yet closed.
 * `t` 0 is the start, 1 the end; a hold is its start pose at every `t`.
 */
export function poseAt({ start, end }: Pick<Movement, 'start' | 'end'>, t: number): Pose {
  if (!end) return start;
  const lumbar = mix(start.lumbar ?? 0, end.lumbar ?? 0, t);
  const arms =
    typeof start.arms === 'number' && typeof end.arms === 'number'
      ? mix(start.arms, end.arms, t)
      : start.arms;
  const pose: Writable<Pose> = {
    trunk: mix(start.trunk, end.trunk, t),
    work: legAt(start.work, end.work, t),
  };
  if (lumbar !== 0) pose.lumbar = lumbar;
  if (arms !== undefined) pose.arms = arms;
  if (start.other && end.other) pose.other = legAt(start.other, end.other, t);
  return pose;
}

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

function legAt(start: LegPose, end: LegPose, t: number): LegPose {
  const leg: Writable<LegPose> = { hip: mix(start.hip, end.hip, t), knee: mix(start.knee, end.knee, t) };
  if (start.pitch !== undefined && end.pitch !== undefined) leg.pitch = mix(start.pitch, end.pitch, t);
  if (start.ankle !== undefined && end.ankle !== undefined) leg.ankle = mix(start.ankle, end.ankle, t);
  return leg;
}

/** From `start` to `end`, written so that both ends come out exactly. */
export function mix(start: number, end: number, t: number): number {
  return t === 1 ? end : start + (end - start) * t;
}
