/** A guarded joint angle in words: for the patient by the joint that bends, for the clinician by its name. */
import type { JointAngle } from '../../mechanics/jointAngle.ts';

export const ANGLE_WORDS: Readonly<Record<JointAngle, { readonly bend: string; readonly clinical: string }>> =
  {
    hipFlexion: { bend: 'hip bend', clinical: 'hip flexion' },
    kneeFlexion: { bend: 'knee bend', clinical: 'knee flexion' },
    ankleDorsiflexion: { bend: 'ankle bend', clinical: 'ankle dorsiflexion' },
  };
