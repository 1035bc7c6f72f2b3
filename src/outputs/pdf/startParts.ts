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
import { safetyIn, type Safety } from './safety.ts';
import { sessionBlock } from './session.ts';
import type { TextStyle } from './sheet.ts';
import { looseTag, open, type Tag } from './tag.ts';

/** What page one is made from. */
export interface Start {
  readonly programme: Programme;
  readonly exercises: readonly Pictured[];
  readonly logo: Uint8Array | null;
  readonly labels: LeafletLabels;
}

/** One way to set page one. */
export interface Way {
  readonly detail: Detail;
  readonly safety: TextStyle;
  readonly opening: TextStyle;
  /** White around rules, points. */
  readonly gapPt: number;
}

export interface Parts {
  readonly masthead: Block;
  readonly session: Block;
  readonly cells: readonly ExerciseCell[];
  readonly safety: Safety;
  readonly emergency: Block;
  /** Their tags in reading order, loose until this way is chosen. */
  readonly loose: readonly Tag[];
}

/** Gives the parts for a way; what two ways share is composed once. */
export function composer(pen: Pen, { programme, exercises, logo, labels }: Start): (way: Way) => Parts {
  const widthPt = columnWidthPt(pen, 1);
  const masthead = remembered((opening: TextStyle) => {
    const loose = looseTag('Sect');
    return { block: mastheadBlock(pen, loose, programme, logo, opening, widthPt), loose };
  });
  const safety = remembered((text: TextStyle) => safetyIn(pen, programme, text));
  const session = remembered((detail: Detail) => {
    const loose = looseTag('Sect');
    const tag = open(loose, 'Sect');
    const block = sessionBlock(pen, tag, programme.nextSession, widthPt);
    const cellPt = columnWidthPt(pen, detail.abreast);
    const cells = exercises.map((one) => exerciseCell(pen, tag, one, labels.howFar, detail, cellPt));
    return { block, cells, loose };
  });
  const emergency = remembered((text: TextStyle) => {
    const loose = looseTag('Sect');
    return { block: emergencyBlock(pen, loose, programme.emergency, text, widthPt), loose };
  });
  return (way) => {
    const [top, middle] = [masthead(way.opening), session(way.detail)];
    const [texts, box] = [safety(way.safety), emergency(way.detail.text)];
    return {
      masthead: top.block,
      session: middle.block,
      cells: middle.cells,
      safety: texts,
      emergency: box.block,
      loose: [top.loose, middle.loose, texts.loose, box.loose],
    };
  };
}

/** The answer for each question, kept. */
function remembered<Question extends object, Answer>(
  ask: (question: Question) => Answer,
): (question: Question) => Answer {
  const answers = new Map<Question, Answer>();
  return (question) => {
    const known = answers.get(question);
    if (known !== undefined) return known;
    const answer = ask(question);
    answers.set(question, answer);
    return answer;
  };
}
