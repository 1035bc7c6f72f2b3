/** A staged protocol's front matter as the protocol the other rooms use. */
import type { Dose } from '../dosing/dose.ts';
import type { JointAngle } from '../mechanics/jointAngle.ts';
import { cappedAngleOf, stageCaps } from './guardedAngle.ts';
import type { Extension } from './extending/extension.ts';
import type { ProgressionEntry, Protocol, Slot, Stage } from './library.ts';
import type { ProseSection } from './prose/block.ts';
import type { ProtocolFrontMatter, SlotFrontMatter, StageFrontMatter } from './schema/protocol.ts';
import { tempoOf } from './tempo.ts';

/** The protocol with the id of its file; a dose keeps its source beside it, and null where the author gives nothing. */
export function protocolOf(
  id: string,
  front: ProtocolFrontMatter,
  body: readonly ProseSection[],
  extension: Extension | null,
): Protocol {
  const angle = cappedAngleOf(front.angle);
  return { ...front, id, stages: front.stages.map((stage) => stageOf(stage, angle)), body, extension };
}

function stageOf(stage: StageFrontMatter, angle: JointAngle): Stage {
  return { ...stage, caps: stageCaps(stage.caps, angle), slots: stage.slots.map(slotOf) };
}

function slotOf({ dose, progression, ...slot }: SlotFrontMatter): Slot {
  return { ...slot, dose: doseOf(dose), doseSource: dose.source, progression: progression.map(changeOf) };
}

function doseOf(dose: SlotFrontMatter['dose']): Dose {
  return {
    kind: dose.kind,
    sets: dose.sets,
    repetitions: dose.repetitions ?? null,
    holdSeconds: dose.holdSeconds ?? null,
    tempo: dose.tempo === undefined ? null : tempoOf(dose.tempo),
    restSeconds: dose.restSeconds,
    timesPerDay: dose.timesPerDay,
    reserve: dose.reserve ?? null,
  };
}

function changeOf({ change, by, to }: SlotFrontMatter['progression'][number]): ProgressionEntry {
  return { change, by: by ?? null, to: to ?? null };
}
