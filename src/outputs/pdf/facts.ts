/** How far, weight, pace and the like: entries of a list whose labels are words. */
import type { Exercise } from '../../programme/programme.ts';
import type { CellName } from '../../decisions/terms/cell.ts';
import type { Block } from './block.ts';
import { FURNITURE, type Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { openList, type Tag, open } from './tag.ts';
import { runsBlock } from './text.ts';

/** How much of an exercise stands on page one, and how large. */
export interface Detail {
  readonly text: TextStyle;
  /** Full: all pictures with captions. Close: one picture, the facts in a run of words; all pictures stand overleaf. */
  readonly setting: 'full' | 'close';
  /** Exercises in a row. */
  readonly abreast: 2 | 3;
  /** All of how far and all facts; otherwise what one cannot start without, the whole standing overleaf. */
  readonly whole: boolean;
}

export interface Fact {
  /** Empty where the entry goes on with what the one before began. */
  readonly label: string;
  readonly text: string;
}

/** What one cannot start without, beside sets and repetitions: weight, pace, and when a set ends. */
const TO_START: readonly CellName[] = ['loadKg', 'tempo', 'reserve'];

/** The landmarks page one shows. */
export function howFarOf({ howFar }: Exercise, label: string, { whole }: Detail): readonly Fact[] {
  return howFar
    .slice(0, whole ? howFar.length : 1)
    .map((text, at) => ({ label: at === 0 ? label : '', text }));
}

/** The facts page one shows. */
export function factsOf({ between, facts }: Exercise, { whole }: Detail): readonly Fact[] {
  const days = between === null ? [] : [between];
  return [...days, ...facts.filter(({ cell }) => whole || TO_START.includes(cell))];
}

/** White between two facts, points. */
const FACT_GAP_PT = 1.5;

/** Each fact a block of its own, its label bold before it. */
export function factBlocks(
  pen: Pen,
  list: Tag,
  facts: readonly Fact[],
  style: TextStyle,
  widthPt: number,
): readonly Block[] {
  return facts.map((fact) => {
    const entry = open(list, 'LI');
    const labels = labelRuns(entry, fact, style);
    return runsBlock(
      pen,
      open(entry, 'LBody'),
      [...labels, { text: fact.text, style }],
      widthPt,
      FACT_GAP_PT,
    );
  });
}

/** All facts in one paragraph, dots between them; none when there are no facts. */
export function factsInARun(
  pen: Pen,
  parent: Tag,
  facts: readonly Fact[],
  style: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (facts.length === 0) return [];
  const list = openList(parent, 'None');
  const dot: Run = { text: '\u00a0· ', style, tag: FURNITURE };
  const runs = facts.flatMap((fact, at): readonly Run[] => {
    const entry = open(list, 'LI');
    const labels = labelRuns(entry, fact, style);
    return [...(at === 0 ? [] : [dot]), ...labels, { text: fact.text, style, tag: open(entry, 'LBody') }];
  });
  return [runsBlock(pen, list, runs, widthPt, 0)];
}

function labelRuns(entry: Tag, { label }: Fact, style: TextStyle): readonly Run[] {
  return label === ''
    ? []
    : [{ text: `${label} `, style: { ...style, cut: 'bold' }, tag: open(entry, 'Lbl') }];
}
