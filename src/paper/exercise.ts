/** One exercise of the next session: title, figures, the dose in big type, how far, and what else must be known. */
import type { Drawing } from '../figure/drawing.ts';
import type { CellName, Exercise } from '../programme/programme.ts';
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { areWide, figuresOf } from './figures.ts';
import type { Pen } from './pen.ts';
import type { TextStyle } from './sheet.ts';
import { openList, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';
import type { Run } from './wrap.ts';

/** An exercise measured for a width; how high it is depends on how high its drawings may be. */
export interface ExerciseCell {
  heightPt(drawingPt: number): number;
  draw(xPt: number, yPt: number, drawingPt: number): void;
}

/** How much of an exercise stands on page one, and how large. */
export interface Detail {
  readonly text: TextStyle;
  /** Captions under the figures; otherwise the figures stand with them overleaf. */
  readonly captions: boolean;
  /** All of how far and all facts; otherwise what one cannot start without, the whole standing overleaf. */
  readonly whole: boolean;
  /** Share of the width that figures and how far take. */
  readonly figures: number;
}

/** What one cannot start without, beside sets and repetitions: weight, pace, and when a set ends. */
const TO_START: readonly CellName[] = ['loadKg', 'tempo', 'reserve'];

/** White between figures and dose, points. */
const GUTTER_PT = 12;

/** Measures one exercise; its elements are hung into `parent` now, in reading order. */
export function exerciseCell(
  pen: Pen,
  parent: Tag,
  exercise: Exercise,
  drawings: readonly Drawing[],
  howFarLabel: string,
  detail: Detail,
  widthPt: number,
): ExerciseCell {
  const tag = parent.open('Sect');
  const wide = areWide(drawings);
  const leftPt = wide ? (widthPt - GUTTER_PT) / 2 : widthPt * detail.figures;
  const rightPt = widthPt - leftPt - GUTTER_PT;
  const title = headingBlock(pen, tag, 3, exercise.title, pen.look.style('heading3'), widthPt, 0);
  const figures =
    exercise.figures &&
    figuresOf(pen, tag, exercise.figures, drawings, detail.captions, wide ? widthPt : leftPt);
  const dose = doseBlocks(pen, tag, exercise, detail, wide ? leftPt : rightPt);
  const list = openList(tag, 'None');
  const howFar = factBlocks(pen, list, howFarOf(exercise, howFarLabel, detail), detail.text, leftPt);
  const facts = factBlocks(pen, list, factsOf(exercise, detail), detail.text, rightPt);
  const [left, right] = wide ? shorter(dose, howFar, facts) : [howFar, [...dose, ...facts]];
  const figurePt = (drawingPt: number) => (figures ? figures.heightPt(drawingPt) + FIGURE_GAP_PT : 0);
  const rightDownPt = (drawingPt: number) => (wide ? figurePt(drawingPt) + FACTS_DROP_PT : 0);
  return {
    heightPt: (drawingPt) =>
      title.heightPt +
      TITLE_GAP_PT +
      Math.max(figurePt(drawingPt) + stackHeightPt(left), rightDownPt(drawingPt) + stackHeightPt(right)),
    draw: (xPt, yPt, drawingPt) => {
      const topPt = yPt + title.heightPt + TITLE_GAP_PT;
      title.draw(xPt, yPt);
      figures?.draw(xPt, topPt, drawingPt);
      drawStack(left, xPt, topPt + figurePt(drawingPt));
      drawStack(right, xPt + leftPt + GUTTER_PT, topPt + rightDownPt(drawingPt));
    },
  };
}

/** Under wide figures how far stands with the dose or with the facts, whichever makes the longer column shorter. */
function shorter(
  dose: readonly Block[],
  howFar: readonly Block[],
  facts: readonly Block[],
): readonly [readonly Block[], readonly Block[]] {
  const withDose = Math.max(stackHeightPt([...dose, ...howFar]), stackHeightPt(facts) + FACTS_DROP_PT);
  const withFacts = Math.max(stackHeightPt(dose), stackHeightPt([...howFar, ...facts]) + FACTS_DROP_PT);
  return withDose <= withFacts ? [[...dose, ...howFar], facts] : [dose, [...howFar, ...facts]];
}

/** White below a title, below figures, and above facts beside a dose, whose digits stand lower in their line. */
const FIGURE_GAP_PT = 3;
const FACTS_DROP_PT = 4;
const TITLE_GAP_PT = 3;

function doseBlocks(
  pen: Pen,
  tag: Tag,
  { dose, doseWords, side }: Exercise,
  { text }: Detail,
  widthPt: number,
): readonly Block[] {
  const { colour } = pen.look;
  const quiet = { ...text, colour: colour.quiet };
  const bold = { ...text, cut: 'bold' as const, colour: colour.accent };
  return [
    textBlock(pen, tag, 'P', doseRuns(pen, dose), widthPt, 0),
    textBlock(pen, tag, 'P', plain(doseWords, quiet), widthPt, 0),
    textBlock(pen, tag, 'P', plain(side, bold), widthPt, 0),
  ];
}

/** The numbers of a dose big, its words small: `5 × 30 seconds`. */
export function doseRuns({ look }: Pen, dose: string): readonly Run[] {
  const [numbers = ''] = /^[\d\s×–,.½-]*/u.exec(dose) ?? [];
  const big = look.style('dose');
  const small = { ...look.style('heading3'), leadingPt: big.leadingPt };
  return [
    { text: numbers, style: big },
    { text: dose.slice(numbers.length), style: small },
  ].filter((run) => run.text !== '');
}

interface Fact {
  readonly label: string;
  readonly text: string;
}

function howFarOf({ howFar }: Exercise, label: string, { whole }: Detail): readonly Fact[] {
  return howFar
    .slice(0, whole ? howFar.length : 1)
    .map((text, at) => ({ label: at === 0 ? label : '', text }));
}

function factsOf({ facts }: Exercise, { whole }: Detail): readonly Fact[] {
  return facts.filter(({ cell }) => whole || TO_START.includes(cell));
}

/** Each a line or more, its label bold before it: entries of a list whose labels are words. */
export function factBlocks(
  pen: Pen,
  list: Tag,
  facts: readonly Fact[],
  style: TextStyle,
  widthPt: number,
): readonly Block[] {
  return facts.map(({ label, text }) => {
    const entry = list.open('LI');
    const runs: Run[] =
      label === '' ? [] : [{ text: `${label} `, style: { ...style, cut: 'bold' }, tag: entry.open('Lbl') }];
    const body = entry.open('LBody');
    return textBlock(pen, body, 'P', [...runs, { text, style }], widthPt, FACT_GAP_PT);
  });
}

const FACT_GAP_PT = 1.5;
