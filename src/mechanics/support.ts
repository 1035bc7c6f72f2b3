/** The names of supports taken apart, once and for all: a movement is looked at thousands of times. */
import type { SupportPoint } from './movement.ts';
import type { LegPoints, Posture } from './pose.ts';

/** Whose point it is, and which of a leg; a point of the trunk has no part. */
export type SupportPlace =
  | { readonly owner: 'work' | 'other' | 'both'; readonly part: keyof LegPoints }
  | { readonly owner: 'upperBack' | 'seat' | 'shoulder' | 'hands'; readonly part: null };

const TRUNK = ['upperBack', 'seat', 'shoulder', 'hands'] as const satisfies readonly (keyof Posture)[];
const LEGS = ['work', 'other', 'both'] as const;
const PARTS = ['heel', 'mid', 'fore', 'knee', 'ankle'] as const;

/** Place by the support's name. */
export const PLACE = Object.fromEntries([
  ...TRUNK.map((owner) => [owner, { owner, part: null }]),
  ...LEGS.flatMap((owner) => PARTS.map((part) => [`${owner}.${part}`, { owner, part }])),
]) as Readonly<Record<SupportPoint, SupportPlace>>;
