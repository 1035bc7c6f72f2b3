/** The clinician's two signs as data: the range ruler of an exercise and the ladder of all cards by squeeze. */
import type { Messages } from '../../messages/messages.ts';
import { numberedStages } from '../../content/keepStage.ts';
import type { Protocol } from '../../content/library.ts';
import { brackets } from '../../mechanics/bracket.ts';
import { roundTo } from '../../units/round.ts';
import { isPosed } from '../../decisions/person/model.ts';
import { cardOf, type Person } from '../../decisions/person/person.ts';
import type { Prescription } from '../../decisions/session/prescribe.ts';

import type { CompressionLadder, RangeRuler } from '../programme.ts';

/** 0 to 120 degrees of hip flexion with the part that is used now and the caps of the stages; null without a pose. */
export function rulerOf(
  say: Messages,
  { card, at, estimate }: Prescription,
  protocol: Protocol,
): RangeRuler | null {
  if (!isPosed(card) || estimate === null) return null;
  const { start, end } = card.movement;
  const used = at.rangeDeg ?? Math.max(start.work.hip, end?.work.hip ?? start.work.hip);
  const fromDeg = Math.max(0, Math.min(start.work.hip, end?.work.hip ?? start.work.hip, used));
  const toDeg = Math.max(fromDeg, used);
  const ticks = protocol.stages.flatMap(({ caps, opensToDeg }, index) => {
    const capDeg = opensToDeg ?? caps.angleDeg;
    return capDeg === null ? [] : [{ stage: flagOf(say, protocol, index), capDeg }];
  });
  return {
    fromDeg,
    toDeg: roundTo(toDeg, 1),
    ticks,
    alt: say.recordRulerAlt(roundTo(fromDeg, 1), roundTo(toDeg, 1), ticks),
  };
}

/** What a stage is called on a flag in a chart, where its name has no room. */
function flagOf(say: Messages, { stages }: Protocol, index: number): string {
  return index < numberedStages(stages).length ? String(index + 1) : say.KEEP_GOING_FLAG;
}

/** Every posed card of the protocol by its squeeze without a weight, over its whole movement; prescribed ones at their range and load. */
export function compressionLadder(
  say: Messages,
  prescriptions: readonly Prescription[],
  person: Person,
): CompressionLadder {
  const ids = [
    ...new Set(person.protocol.stages.flatMap(({ slots }) => slots.flatMap(({ cards }) => cards))),
  ];
  const rows = ids.flatMap((id) => {
    const card = cardOf(person, id);
    const prescribed = prescriptions.find((one) => one.card.id === id);
    const compressionBw =
      prescribed?.estimate?.compressionBw ??
      (isPosed(card) ? person.model.sweepTo(card, null, 0, card.tempo)?.peak.compressionBw : undefined);
    if (compressionBw === undefined) return [];
    return [
      {
        card: id,
        title: card.title,
        compressionBw: roundTo(compressionBw, 0.01),
        prescribed: prescribed !== undefined,
      },
    ];
  });
  rows.sort((a, b) => a.compressionBw - b.compressionBw || (a.card < b.card ? -1 : 1));
  const bracket = brackets(rows.map(({ compressionBw }) => compressionBw));
  const caps = person.protocol.stages.flatMap(({ caps: { compressionBw } }, index) =>
    compressionBw === null ? [] : [{ stage: flagOf(say, person.protocol, index), compressionBw }],
  );
  return {
    rungs: rows.map((row, index) => ({ ...row, bracket: bracket[index] ?? 0 })),
    caps,
    alt: say.recordLadderAlt(rows.length, rows[0]?.compressionBw ?? 0, rows.at(-1)?.compressionBw ?? 0),
  };
}
