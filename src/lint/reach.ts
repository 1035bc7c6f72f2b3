/** Stages that leave somebody out: a slot that must be filled, and no card in it that a patient could do. */
import { stageLeavesOut } from '../messages/en/author/library.ts';
import { keepStageOf } from '../content/keepStage.ts';
import type { Library, Protocol, Slot, Stage } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { referenceBody } from '../decisions/person/body.ts';
import { chooseCards } from '../decisions/candidates/choose.ts';
import { modelIn, type Models } from '../decisions/person/model.ts';
import { boundsOf, personOf, type Person } from '../decisions/person/person.ts';
import type { ScreenEffects } from '../decisions/screen/screen.ts';
import type { StageName } from '../decisions/terms/stageName.ts';
import type { JointAngle } from '../mechanics/jointAngle.ts';
import { SYNTHETIC_PATIENTS, syntheticConsult, type SyntheticPatient } from './syntheticPatients.ts';
import { warn } from './fieldPlace.ts';
import { cardLimitWords } from '../messages/en/clinician/cardLimits.ts';

/** A warning at the cards of each needed slot for which the programme's own choice finds none for a patient. */
export function leftOut(library: Library, placeOf: PlaceOf): Problem[] {
  const models: Models = new Map();
  return [...library.protocols.values()].flatMap((protocol) => {
    const modelFor = (_: unknown, guardedBy: JointAngle) =>
      modelIn(models, library.version, referenceBody(library.clinic), guardedBy);
    const people = SYNTHETIC_PATIENTS.map((patient) => ({
      patient,
      person: personOf(syntheticConsult(patient, protocol.id), library, protocol, NO_EFFECTS, modelFor),
    }));
    return protocol.stages.flatMap((stage, index) =>
      gapsIn(stage, nameOf(protocol, stage, index), people).map((gap) =>
        warn(
          placeOf,
          { kind: 'protocol', id: protocol.id, path: ['stages', index, 'slots', gap.slotIndex, 'cards'] },
          'stage-leaves-out',
          stageLeavesOut(
            gap.leaves.map(({ cannotDo: [cannot] }) => cannot ?? null),
            gap.reasons,
          ),
        ),
      ),
    );
  });
}

const NO_EFFECTS: ScreenEffects = {
  noRunning: [],
  lightHolds: [],
  shortHolds: [],
  under18: false,
};

interface Gap {
  readonly slot: Slot;
  readonly slotIndex: number;
  readonly leaves: readonly SyntheticPatient[];
  /** Why each card of the slot was passed over for the first of them. */
  readonly reasons: readonly string[];
}

interface OnPanel {
  readonly patient: SyntheticPatient;
  readonly person: Person;
}

function gapsIn(stage: Stage, name: StageName, people: readonly OnPanel[]): Gap[] {
  const chosen = people.map(({ patient, person }) => ({ patient, ...chosenFor(person, name, stage) }));
  return stage.slots.flatMap((slot, slotIndex) => {
    const without = chosen.filter(({ empty }) => empty.includes(slot));
    const [first] = without;
    if (first === undefined) return [];
    const reasons = first.passedOver
      .filter((one) => one.slot === slot.name)
      .map(({ card, why }) => `${card}: ${cardLimitWords(why)}`);
    return [{ slot, slotIndex, leaves: without.map(({ patient }) => patient), reasons }];
  });
}

// Needed slots are filled before the others, so that without those the answer is the same and comes sooner.
function chosenFor(person: Person, name: StageName, stage: Stage) {
  const needed = { ...stage, slots: stage.slots.filter((slot) => slot.needed) };
  return chooseCards(person, boundsOf(person, name, needed, false));
}

function nameOf({ stages }: Protocol, stage: Stage, index: number): StageName {
  return stage === keepStageOf(stages) ? 'keepGoing' : ((index + 1) as StageName);
}
