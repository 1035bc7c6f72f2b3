/** Where a movement stands at a moment between its two end poses. */
import type { Movement } from './movement.ts';
import type { LegPose, Pose } from './pose.ts';

/**
 * The pose a fraction `t` of the way from start to end, every number interpolated linearly, not yet closed.
 * `t` 0 is the start, 1 the end; a hold is its start pose at every `t`.
 */
export function poseAt({ start, end }: Movement, t: number): Pose {
  if (!end) return start;
  const lumbar = mix(start.lumbar ?? 0, end.lumbar ?? 0, t);
  const arms =
    typeof start.arms === 'number' && typeof end.arms === 'number'
      ? mix(start.arms, end.arms, t)
      : start.arms;
  return {
    trunk: mix(start.trunk, end.trunk, t),
    ...(lumbar === 0 ? {} : { lumbar }),
    ...(arms === undefined ? {} : { arms }),
    work: legAt(start.work, end.work, t),
    ...(start.other && end.other ? { other: legAt(start.other, end.other, t) } : {}),
  };
}

/**
 * The fraction at which the working hip is bent by `hipDeg`; null when the movement never gets there or holds still.
 */
export function fractionAtHip({ start, end }: Movement, hipDeg: number): number | null {
  if (!end || start.work.hip === end.work.hip) return null;
  const t = (hipDeg - start.work.hip) / (end.work.hip - start.work.hip);
  return t >= 0 && t <= 1 ? t : null;
}

function legAt(start: LegPose, end: LegPose, t: number): LegPose {
  return {
    hip: mix(start.hip, end.hip, t),
    knee: mix(start.knee, end.knee, t),
    ...mixed('pitch', start.pitch, end.pitch, t),
    ...mixed('ankle', start.ankle, end.ankle, t),
  };
}

function mixed(
  key: 'pitch' | 'ankle',
  start: number | undefined,
  end: number | undefined,
  t: number,
): { readonly pitch?: number; readonly ankle?: number } {
  return start === undefined || end === undefined ? {} : { [key]: mix(start, end, t) };
}

// Written so that both ends come out exactly.
function mix(start: number, end: number, t: number): number {
  return t === 1 ? end : start + (end - start) * t;
}
