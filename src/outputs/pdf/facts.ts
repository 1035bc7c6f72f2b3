/** How far, weight, pace and the like: entries of a list whose labels are words. */
import type { Exercise } from '../../programme/programme.ts';
import type { CellName } from '../../decisions/terms/cell.ts';
import type { Block } from './block.ts';
import type { Pen } from './pen.ts';
import type { TextStyle } from './sheet.ts';
import { open, openList, type Tag } from './tag.ts';
import { plain, runsBlock, stuck, textBlock } from './text.ts';

/** How an exercise stands on page one. */
export interface Detail {
  readonly text: TextStyle;
  /** Exercises in a row. */
  readonly abreast: 2 | 3;
}

export interface Fact {
  readonly label: string;
  readonly text: string;
}

/** What one cannot start without, beside sets and repetitions: weight, pace, and when a set ends. */
const TO_START: readonly CellName[] = ['loadKg', 'tempo', 'reserve'];

/** The facts page one shows: the first landmark, days of its own, and what one cannot start without. */
export function factsToStart({ howFar, between, facts }: Exercise, howFarLabel: string): readonly Fact[] {
  return [
    ...howFar.slice(0, 1).map((text) => ({ label: howFarLabel, text })),
    ...(between === null ? [] : [between]),
    ...facts.filter(({ cell }) => TO_START.includes(cell)),
  ];
}

/** White between two facts, points. */
const FACT_GAP_PT = 1.5;

/** Each fact a block of its own, its label bold before it; a caption names what they are facts of. */
export function factBlocks(
  pen: Pen,
  parent: Tag,
  facts: readonly Fact[],
  style: TextStyle,
  widthPt: number,
  gapPt: number,
  caption = '',
): readonly Block[] {
  if (facts.length === 0) return [];
  const list = openList(parent, 'None');
  if (caption !== '') {
    const head = textBlock(pen, list, 'Caption', plain(caption, { ...style, cut: 'bold' }), widthPt, gapPt);
    return [stuck(head), ...entryBlocks(pen, list, facts, style, widthPt, 0)];
  }
  return entryBlocks(pen, list, facts, style, widthPt, gapPt);
}

function entryBlocks(
  pen: Pen,
  list: Tag,
  facts: readonly Fact[],
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): readonly Block[] {
  return facts.map(({ label, text }, at) => {
    const entry = open(list, 'LI');
    const bold: TextStyle = { ...style, cut: 'bold' };
    const runs = [
      { text: `${label} `, style: bold, tag: open(entry, 'Lbl') },
      { text, style, tag: open(entry, 'LBody') },
    ];
    return runsBlock(pen, entry, runs, widthPt, at === 0 ? gapPt : FACT_GAP_PT);
  });
}
