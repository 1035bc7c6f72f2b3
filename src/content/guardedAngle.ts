/** The joint angle a protocol is guarded by, as the body model sees it: its cap, and the tests that say where it hurts. */
import type { Caps } from '../mechanics/cap.ts';
import { JOINT_ANGLES, type JointAngle } from '../mechanics/jointAngle.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';
import type { ProtocolFrontMatter, StageFrontMatter } from './schema/protocol.ts';

/**
 * The angle whose cap a stage gives. The model looks from the side and sees no hip adduction: its positions guard that,
 * and a cap on hip flexion beside them.
 */
export function cappedAngleOf(angle: ProtocolFrontMatter['angle']): JointAngle {
  return angle === 'hipAdduction' ? 'hipFlexion' : angle;
}

/** Keys of the front matter by the angle they speak of. */
const CAP_KEYS = {
  hipFlexion: 'hipFlexionDeg',
  kneeFlexion: 'kneeFlexionDeg',
  ankleDorsiflexion: 'ankleDorsiflexionDeg',
} as const satisfies Record<JointAngle, keyof StageFrontMatter['caps']>;
export const PAIN_FREE_KEYS = {
  hipFlexion: 'painFreeHipFlexionDeg',
  kneeFlexion: 'painFreeKneeFlexionDeg',
  ankleDorsiflexion: 'painFreeAnkleDorsiflexionDeg',
} as const satisfies Record<JointAngle, keyof Test>;

type Test = ConsultFrontMatter['tests'][number];

/** A stage's caps with the one on its angle; the schema asks for it, and for no other. */
export function stageCaps(
  { compressionBw, tensionBw, demand, ...angles }: StageFrontMatter['caps'],
  angle: JointAngle,
): Omit<Caps, 'supportMargin'> {
  return { angle, angleDeg: angles[CAP_KEYS[angle]] ?? null, compressionBw, tensionBw, demand };
}

/** The angle at which pain began in a test; undefined where it began at none. Content refuses that of another joint. */
export function provokedDeg(test: Pick<Test, (typeof PAIN_FREE_KEYS)[JointAngle]>): number | undefined {
  return JOINT_ANGLES.map((angle) => test[PAIN_FREE_KEYS[angle]]).find((deg) => deg !== undefined);
}
