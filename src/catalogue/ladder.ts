/** The ladder of a protocol: its cards by squeeze for the reference body, with the caps of its stages. */
import type { Messages } from '../messages/messages.ts';
import type { Protocol } from '../content/library.ts';
import { brackets } from '../mechanics/bracket.ts';
import { roundTo } from '../units/round.ts';

import type { CompressionLadder } from '../programme/programme.ts';
import type { Measured } from './measured.ts';

export interface ProtocolLadder {
  /** Null for a protocol that caps no squeeze. */
  readonly ladder: CompressionLadder | null;
  readonly note: string;
}

export function ladderOf(
  say: Messages,
  protocol: Protocol,
  measured: ReadonlyMap<string, Measured>,
): ProtocolLadder {
  const caps = protocol.stages.flatMap(({ caps: { compressionBw } }, index) =>
    compressionBw === null ? [] : [{ stage: say.stageTick(index), compressionBw }],
  );
  const ids = [...new Set(protocol.stages.flatMap(({ slots }) => slots.flatMap(({ cards }) => cards)))];
  const cards = ids.flatMap((id) => measured.get(id) ?? []);
  const rows = cards.flatMap(({ card, squeezeBw }) =>
    squeezeBw === null
      ? []
      : [
          {
            card: card.id,
            title: card.title,
            compressionBw: roundTo(squeezeBw, 0.01),
            prescribed: false,
          },
        ],
  );
  if (caps.length === 0 || rows.length === 0) return { ladder: null, note: '' };
  rows.sort((a, b) => a.compressionBw - b.compressionBw || (a.title < b.title ? -1 : 1));
  const bracket = brackets(rows.map(({ compressionBw }) => compressionBw));
  const values = rows.map(({ compressionBw }) => compressionBw);
  return {
    ladder: {
      rungs: rows.map((row, index) => ({ ...row, bracket: bracket[index] ?? 0 })),
      caps,
      alt: say.ladderAlt(rows.length, Math.min(...values), Math.max(...values)),
    },
    note: say.ladderNote(cards.length - rows.length),
  };
}
