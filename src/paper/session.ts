/** The heading of the next session with its day and length. */
import type { NextSession } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { styleDropPt, type Pen } from './pen.ts';
import type { Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';
import { naturalWidthPt, type Run } from './wrap.ts';

/** Heading and day on one line where they fit, the heading by far the larger. */
export function sessionBlock(pen: Pen, parent: Tag, session: NextSession, widthPt: number): Block {
  const { look } = pen;
  const [large, body] = [look.style('heading2'), look.style('body')];
  const heading = headingBlock(pen, parent, 2, session.heading, large, widthPt, 0);
  const when: readonly Run[] = [
    { text: `${session.when} `, style: { ...body, cut: 'bold' } },
    { text: session.minutes, style: { ...body, colour: look.colour.quiet } },
  ];
  const headingPt = naturalWidthPt(plain(session.heading, large), pen.fonts) + 1.2 * large.sizePt;
  const beside = headingPt + naturalWidthPt(when, pen.fonts) <= widthPt;
  const day = textBlock(pen, parent, 'P', when, beside ? widthPt - headingPt : widthPt, 0);
  return {
    heightPt: heading.heightPt + (beside ? 0 : day.heightPt),
    gapPt: 0,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      heading.draw(xPt, yPt);
      // On one baseline with the heading.
      if (beside) day.draw(xPt + headingPt, yPt + styleDropPt(large) - styleDropPt(body));
      else day.draw(xPt, yPt + heading.heightPt);
    },
  };
}
