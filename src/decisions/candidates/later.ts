/** The stages still to come: what would be passed over there, and needed slots that nothing fills. */
import { chooseCards } from './choose.ts';
import { boundsOf, type Person } from '../person/person.ts';
import type { PassedOver } from '../../programme/programme.ts';
import { stagesAfter, stageWord } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

export interface Later {
  readonly passedOver: readonly PassedOver[];
  /** A sentence for each needed slot that no card fills yet. */
  readonly notes: readonly string[];
}

/** As far as the consult tells today, without a weight: its load is worked out when the stage has come. */
export function laterStages(person: Person, present: StageName): Later {
  if (person.effects.lightHolds.length > 0)
    return { passedOver: [], notes: ['Later stages wait until more than light holds are allowed.'] };
  const chosen = stagesAfter(person.protocol, present).map(([name, stage]) => ({
    name,
    ...chooseCards(person, { ...boundsOf(person, name, stage, false), ahead: true }),
  }));
  return {
    passedOver: chosen.flatMap(({ passedOver }) => passedOver),
    notes: chosen.flatMap(({ name, empty }) =>
      empty.map(
        (slot) => `Nothing in the library fills ${slot.name} of ${stageWord(name)} for this person yet.`,
      ),
    ),
  };
}
