/** A staged protocol as its public page shows it. */
import type { Library, Protocol, Slot } from '../content/library.ts';
import { countedAs } from '../decisions/session/counted.ts';
import { cappedAngleOf } from '../content/guardedAngle.ts';
import {
  ACTIVITIES_HEADING,
  ACTIVITY_COLUMNS,
  guardText,
  slotHeading,
  slotSentences,
  STAGE_CAPTION,
  stageColumns,
  stageParts,
  stageRow,
  stepRules,
  testsSection,
} from '../messages/en/catalogue/protocol.ts';
import { stageOption } from '../messages/en/catalogue/library.ts';
import { section, table, type Section } from '../messages/shapes.ts';
import { ladderOf } from './ladder.ts';
import type { Measured } from './measured.ts';
import { settingTables } from './settings.ts';
import { stageFacet } from './uses.ts';
import type { Origin, ProtocolView, SlotView, StageView } from './view.ts';

export function protocolView(
  protocol: Protocol,
  library: Library,
  measured: ReadonlyMap<string, Measured>,
  origin: Origin,
): ProtocolView {
  const { ladder, note } = ladderOf(protocol, measured);
  return {
    id: protocol.id,
    title: protocol.title,
    origin,
    tendon: protocol.tendon,
    guard: guardText(protocol),
    why: protocol.why,
    body: protocol.body,
    stageTable: {
      caption: STAGE_CAPTION,
      columns: stageColumns(cappedAngleOf(protocol.angle)),
      rows: protocol.stages.map(stageRow),
    },
    stages: protocol.stages.map((stage, index): StageView => ({
      facet: stageFacet(protocol.id, index),
      heading: stageOption(index, stage.name),
      parts: stageParts(stage),
      slots: stage.slots.map((slot) => slotView(slot, library)),
    })),
    ladder,
    ladderNote: note,
    sections: [stepRules(protocol), testsSection(protocol), activities(protocol)],
    settings: settingTables(protocol),
    sources: protocol.sources,
  };
}

function slotView(slot: Slot, { exercises }: Library): SlotView {
  const best = slot.cards.map((id) => exercises.get(id)).find((card) => card !== undefined);
  return {
    heading: slotHeading(slot),
    sentences: slotSentences(slot, best === undefined ? 'repetition' : countedAs(best)),
    cards: slot.cards.map((id) => ({ id, title: exercises.get(id)?.title ?? id })),
    source: slot.doseSource,
  };
}

function activities({ activities: rows }: Protocol): Section {
  return section('activities', ACTIVITIES_HEADING, [
    table(
      ACTIVITIES_HEADING,
      ACTIVITY_COLUMNS,
      rows.map(({ what, fromStage, how, until }) => [what, String(fromStage), how, until]),
    ),
  ]);
}
