import { describe, expect, it } from 'vitest';
import type { Run } from '../../../src/outputs/pdf/run.ts';
import type { TextStyle } from '../../../src/outputs/pdf/sheet.ts';
import { naturalWidthPt, widestWordPt, wrap } from '../../../src/outputs/pdf/wrap.ts';
import { measurer } from './make.ts';

const style: TextStyle = {
  cut: 'regular',
  sizePt: 10,
  leadingPt: 13.5,
  colour: '#000000',
  tabular: false,
};
const bold: TextStyle = { ...style, cut: 'bold' };
const linesOf = (runs: readonly Run[], roomPt: number) =>
  wrap(runs, roomPt, measurer).map(({ pieces }) => pieces.map(({ text }) => text).join(''));
const plain = (text: string): readonly Run[] => [{ text, style }];

describe('where lines break', () => {
  it.each([
    ['at spaces, which stay at the end of the line', 'Push the heels away', 60, ['Push the ', 'heels away']],
    ['after a hyphen in a word', 'a single-leg bridge', 50, ['a single-', 'leg bridge']],
    ['after a slash between letters', 'Monday/Tuesday', 50, ['Monday/', 'Tuesday']],
    ['never in a span of numbers', 'hold 30–45 s', 40, ['hold ', '30–45 s']],
    ['never at a space that holds', '45\u00a0° of\u00a0bend', 40, ['45\u00a0° ', 'of\u00a0bend']],
    ['between letters where a word is too long', 'proximalproximal', 40, ['proximal', 'proximal']],
    ['with white space made one', '  a \n\t b  ', 100, ['a b ']],
    ['nothing from nothing', '', 100, []],
    ['nothing from white space', ' \n ', 100, []],
  ])('%s', (_, text, roomPt, lines) => {
    expect(linesOf(plain(text), roomPt)).toEqual(lines);
  });

  it('keeps a word whole that changes its style within', () => {
    const runs = [
      { text: 'Push it ', style },
      { text: 'away', style: bold },
      { text: ', slowly', style },
    ];
    expect(linesOf(runs, naturalWidthPt(runs, measurer) - 1)).toEqual(['Push it away, ', 'slowly']);
  });

  it('sets a drawn sign as a piece of its own', () => {
    const [line] = wrap(plain('go → on'), 200, measurer);
    expect(line?.pieces.map(({ text }) => text)).toEqual(['go ', '→', ' on']);
  });

  it('says how wide the widest word is', () => {
    expect(widestWordPt(plain('a proximal b'), measurer)).toBeCloseTo(
      naturalWidthPt(plain('proximal'), measurer),
      0,
    );
  });
});
