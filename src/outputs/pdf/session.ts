/** The heading of the next session with its day and length. */
import type { NextSession } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { styleDropPt, type Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import type { Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';
import { naturalWidthPt } from './wrap.ts';

/** Heading and day on one line where they fit, the heading by far the larger. */
export function sessionBlock(pen: Pen, parent: Tag, session: NextSession, widthPt: number): Block {
  const { look } = pen;
  const large = look.style('heading2');
  const heading = headingBlock(pen, parent, 2, session.heading, large, widthPt, 0);
  const headingPt = naturalWidthPt(plain(session.heading, large), pen.measurer) + 0.9 * large.sizePt;
  const fitting = [look.style('body'), look.style('small')].find(
    (style) => headingPt + naturalWidthPt(whenRuns(pen, session, style), pen.measurer) <= widthPt,
  );
  const style = fitting ?? look.style('body');
  const day = textBlock(
    pen,
    parent,
    'P',
    whenRuns(pen, session, style),
    fitting ? widthPt - headingPt : widthPt,
    0,
  );
  return {
    heightPt: heading.heightPt + (fitting ? 0 : day.heightPt),
    gapPt: 0,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      heading.draw(xPt, yPt);
      // On one baseline with the heading.
      if (fitting) day.draw(xPt + headingPt, yPt + styleDropPt(large) - styleDropPt(style));
      else day.draw(xPt, yPt + heading.heightPt);
    },
  };
}

function whenRuns({ look }: Pen, { when, minutes }: NextSession, style: TextStyle): readonly Run[] {
  return [
    { text: `${when} `, style: { ...style, cut: 'bold' } },
    { text: minutes, style: { ...style, colour: look.colour.quiet } },
  ];
}
