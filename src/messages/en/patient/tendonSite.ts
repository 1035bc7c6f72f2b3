/** Where it is sore, in the words of the place: what presses it, what to leave alone, how it speaks up early. */
import type { Protocol } from '../../../content/library.ts';

export interface TendonSite {
  /** What is held small at first and then comes back. */
  readonly comesBack: string;
  readonly pressing: string;
  readonly leaveAlone: string;
  readonly earlySigns: string;
}

const SIGNS = 'the sore spot is stiff in the morning, or the day after more work';

/** By the angle that squeezes the tendon. */
export const TENDON_SITES: Readonly<Record<Protocol['angle'], TendonSite>> = {
  hipFlexion: {
    comesBack: 'Bending',
    pressing: 'Leave out long, deep stretches of the back of the thigh. They press the sore spot.',
    leaveAlone: 'Do not roll or massage the sit bone.',
    earlySigns: 'a stiff or sore sit bone in the morning, or after sitting or hills',
  },
  hipAdduction: {
    comesBack: 'Moving as you like',
    pressing: 'Do not pull the knee across your body. That presses the sore spot.',
    leaveAlone: 'Do not roll or massage the side of the hip.',
    earlySigns: 'the side of the hip is sore at night, in the morning, or after stairs',
  },
  ankleDorsiflexion: {
    comesBack: 'Bending',
    pressing: 'Leave out long, deep stretches of the calf. They press the sore spot.',
    leaveAlone: 'Do not roll or massage the sore spot.',
    earlySigns: SIGNS,
  },
  kneeFlexion: {
    comesBack: 'Bending',
    pressing: 'Leave out long, deep stretches of the front of the thigh. They press the sore spot.',
    leaveAlone: 'Do not roll or massage the sore spot.',
    earlySigns: SIGNS,
  },
};
