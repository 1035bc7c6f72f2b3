/** The parts of page one, composed for any way of setting it, each part once for every style it is asked for in. */
import type { LeafletLabels } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { emergencyBlock } from './emergency.ts';
import { exerciseCell, type ExerciseCell, type Pictured } from './exercise.ts';
import type { Detail } from './facts.ts';
import { mastheadBlock } from './masthead.ts';
import { columnWidthPt } from './pages.ts';
import type { Pen } from './pen.ts';
import { safetyBlocks } from './safety.ts';
import { sessionBlock } from './session.ts';
import { looseTag, open, type Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';

/** What page one is made from. */
export interface Start {
  readonly programme: Programme;
  readonly exercises: readonly Pictured[];
  readonly logo: Uint8Array | null;
  readonly labels: LeafletLabels;
}

/** Blocks with their tags, loose until it is known where they come in reading order. */
export interface Loose<Content> {
  readonly content: Content;
  readonly tag: Tag;
}

/** The next session: its heading with day and length, its exercises. */
export interface Session {
  readonly heading: Block;
  readonly cells: readonly ExerciseCell[];
}

export function looseMasthead(pen: Pen, { programme, logo }: Start): Loose<Block> {
  return loose((tag) => mastheadBlock(pen, tag, programme, logo, columnWidthPt(pen, 1)));
}

/** For whom and why. */
export function looseOpening(pen: Pen, { programme }: Start): Loose<Block> {
  const { look } = pen;
  const words = plain(programme.opening.join(' '), look.style('body'));
  return loose((tag) => textBlock(pen, tag, 'P', words, columnWidthPt(pen, 1), look.space.smallPt));
}

export function looseSession(
  pen: Pen,
  { programme, exercises, labels }: Start,
  detail: Detail,
): Loose<Session> {
  return loose((root) => {
    const tag = open(root, 'Sect');
    const heading = sessionBlock(pen, tag, programme.nextSession, columnWidthPt(pen, 1));
    const cellPt = columnWidthPt(pen, detail.abreast);
    const cells = exercises.map((one) => exerciseCell(pen, tag, one, labels.howFar, detail, cellPt));
    return { heading, cells };
  });
}

export function looseSafety(pen: Pen, { programme }: Start): Loose<readonly Block[]> {
  return loose((tag) => safetyBlocks(pen, tag, programme));
}

export function looseEmergency(pen: Pen, { programme }: Start): Loose<Block> {
  return loose((tag) => emergencyBlock(pen, tag, programme.emergency, columnWidthPt(pen, 1)));
}

function loose<Content>(compose: (tag: Tag) => Content): Loose<Content> {
  const tag = looseTag('Sect');
  return { content: compose(tag), tag };
}
