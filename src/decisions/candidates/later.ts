/** The stages still to come: what would be passed over there, and needed slots that nothing fills. */
import { chooseCards } from './choose.ts';
import { boundsOf, type Person } from '../person/person.ts';
import type { PassedOver } from '../terms/passedOver.ts';
import { stagesAfter } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

export interface Later {
  readonly passedOver: readonly PassedOver[];
  /** Needed slots that no card fills yet. */
  readonly empty: readonly { readonly slot: string; readonly stage: StageName }[];
  /** No stage is looked at: the screen allows light holds only. */
  readonly waits: boolean;
}

/** As far as the consult tells today, without a weight: its load is worked out when the stage has come. */
export function laterStages(person: Person, present: StageName): Later {
  if (person.effects.lightHolds.length > 0) return { passedOver: [], empty: [], waits: true };
  const chosen = stagesAfter(person.protocol, present).map(([name, stage]) => ({
    name,
    ...chooseCards(person, { ...boundsOf(person, name, stage, false), ahead: true }),
  }));
  return {
    passedOver: chosen.flatMap(({ passedOver }) => passedOver),
    empty: chosen.flatMap(({ name, empty }) => empty.map((slot) => ({ slot: slot.name, stage: name }))),
    waits: false,
  };
}
