/** A staged protocol as its public page shows it. */
import type { Messages } from '../messages/messages.ts';
import type { Library, Protocol, Slot } from '../content/library.ts';
import { countedAs } from '../decisions/session/counted.ts';
import { cappedAngleOf } from '../content/guardedAngle.ts';

import { section, table, type Section } from '../messages/shapes.ts';
import { ladderOf } from './ladder.ts';
import type { Measured } from './measured.ts';
import { ownChanges } from './ownChanges.ts';
import { settingTables } from './settings.ts';
import { stageFacet } from './uses.ts';
import type { Origin, ProtocolView, SlotView, StageView } from './view.ts';

export function protocolView(
  say: Messages,
  protocol: Protocol,
  library: Library,
  measured: ReadonlyMap<string, Measured>,
  origin: Origin,
): ProtocolView {
  const { ladder, note } = ladderOf(say, protocol, measured);
  return {
    id: protocol.id,
    title: protocol.title,
    origin,
    tendon: protocol.tendon,
    alsoCalled: protocol.alsoCalled,
    guard: say.guardText(protocol),
    why: protocol.why,
    body: protocol.body,
    stageTable: {
      caption: say.STAGE_CAPTION,
      columns: say.stageColumns(cappedAngleOf(protocol.angle)),
      rows: protocol.stages.map(say.stageRow),
    },
    stages: protocol.stages.map((stage, index): StageView => ({
      facet: stageFacet(protocol.id, index),
      heading: say.stageOption(index, stage.name),
      parts: say.stageParts(stage),
      slots: stage.slots.map((slot) => slotView(say, slot, library)),
    })),
    ladder,
    ladderNote: note,
    ownChanges: ownChanges(say, protocol, library),
    sections: [say.stepRules(protocol), say.testsSection(protocol), activities(say, protocol)],
    settings: settingTables(say, protocol),
    sources: protocol.sources,
  };
}

function slotView(say: Messages, slot: Slot, { exercises }: Library): SlotView {
  const best = slot.cards.map((id) => exercises.get(id)).find((card) => card !== undefined);
  return {
    heading: say.slotHeading(slot),
    sentences: say.slotSentences(slot, best === undefined ? 'repetition' : countedAs(best)),
    cards: slot.cards.map((id) => ({ id, title: exercises.get(id)?.title ?? id })),
    source: slot.doseSource,
  };
}

function activities(say: Messages, { activities: rows }: Protocol): Section {
  return section('activities', say.ACTIVITIES_HEADING, [
    table(
      say.ACTIVITIES_HEADING,
      say.ACTIVITY_COLUMNS,
      rows.map(({ what, fromStage, how, until }) => [what, String(fromStage), how, until]),
    ),
  ]);
}
