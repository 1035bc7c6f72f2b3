/** Words that a figure must bear out: where a hand is, and what moves. Common practice of the house's cards, no source. */
import type { Touched } from '../../../mechanics/seen.ts';

export interface HeldWords {
  readonly phrase: RegExp;
  readonly name: string;
  readonly touches: readonly Touched[];
}

const HAND = String.raw`\b(?:hands?|fingertips|forearms?)\b[^.]*\b(?:on|at|against|to)\b[^.]*`;

/** The first that matches a sentence counts; narrower ones come first. */
export const HELD: readonly HeldWords[] = [
  {
    phrase: new RegExp(`${HAND}\\b(?:worktop|table|counter)|\\bworktop with your fingertips`, 'i'),
    name: 'the worktop',
    touches: ['table'],
  },
  {
    phrase: /\bhold (?:on to )?a chair or a table\b/i,
    name: 'a chair or a table',
    touches: ['chair', 'table'],
  },
  {
    phrase: new RegExp(`${HAND}\\bchair|\\bhold (?:on to )?(?:a|the) chair`, 'i'),
    name: 'the chair',
    touches: ['chair'],
  },
  { phrase: new RegExp(`${HAND}\\bhips\\b`, 'i'), name: 'the hips', touches: ['hips'] },
  { phrase: new RegExp(`${HAND}\\bthighs?\\b`, 'i'), name: 'the thighs', touches: ['thighs'] },
  { phrase: /\bhold the straps\b/i, name: 'the straps', touches: ['strap'] },
  { phrase: /\bhold the grips\b/i, name: 'the grips', touches: ['grip'] },
  { phrase: /\bhold the\s+band with both hands\b/i, name: 'the band', touches: ['band'] },
  { phrase: /\bhold a kettlebell\b/i, name: 'the kettlebell', touches: ['weight'] },
  { phrase: /\bforehead on your hands\b/i, name: 'the forehead', touches: ['forehead'] },
  {
    phrase: /\brest (?:on your (?:fore)?arms?|your arms (?:flat )?beside)\b/i,
    name: 'the floor',
    touches: ['floor'],
  },
];

/** What is said to move: the ball or a foot, and with the leg the foot that its arrow stands at. */
export interface MovedWords {
  readonly phrase: RegExp;
  readonly name: string;
  readonly moves: 'ball' | 'foot' | 'leg';
}

/** Subjects of a movement. */
export const MOVED: readonly MovedWords[] = [
  { phrase: /\b(?:pull|roll|push)(?:ing)? the ball\b/i, name: 'ball', moves: 'ball' },
  {
    phrase: /\b(?:slide|draw) (?:the |your )?(?:working |one )?(?:heels?|foot)\b/i,
    name: 'foot',
    moves: 'foot',
  },
  {
    phrase: /\b(?:draw|take|lift|swing|raise) the (?:working |free |top )?leg\b/i,
    name: 'leg',
    moves: 'leg',
  },
  { phrase: /\bbend the working knee\b|\bcurl the heel\b/i, name: 'heel', moves: 'foot' },
];
