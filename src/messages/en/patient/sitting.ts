/** Sitting and stretching in plain words. */
import type { Protocol } from '../../../content/library.ts';
import { type Part, type Section, list, paragraph, section } from '../../shapes.ts';
import type { IsoDate } from '../../../units/date.ts';
import { countText, listText, weekdayAndDay } from '../plain.ts';
import { TENDON_SITES } from './tendonSite.ts';

export interface SittingWords {
  /** Two numbers in minutes; null when sitting hurts too soon for any, or none is needed. */
  readonly now: { readonly uprightMinutes: number; readonly hardMinutes: number } | null;
  /** As much is tolerated as was wished for: nothing is counted. */
  readonly free: boolean;
  /** False where sitting never was the matter: nothing has to come back then. */
  readonly mayHurt: boolean;
  readonly stepMinutes: number;
  readonly goalMinutes: number | null;
  /** What the dated plan lets it grow to before the review. */
  readonly later: readonly DatedSitting[];
  /** There is more to come after that. */
  readonly moreToCome: boolean;
  /** Fixed blocks longer than the budget, minutes each. */
  readonly tooLongBlocks: readonly number[];
  /** So there are stops on the way. */
  readonly drives: boolean;
  readonly stageWords: string;
}

export interface DatedSitting {
  readonly from: IsoDate;
  readonly uprightMinutes: number;
  readonly hardMinutes: number;
}

/** How long to sit, on what, and how it grows. */
export function sittingText(words: SittingWords): Section {
  return section('sitting', 'Sitting', [
    ...nowParts(words),
    ...blockParts(words),
    // Where minutes are counted nobody sits as they like, whatever the stage says.
    ...(words.free || !words.stageWords.includes(FREE) ? [paragraph(words.stageWords)] : []),
  ]);
}

/** Nothing is counted any more, and no seat is banned. */
const FREE = 'Sit as you like';
const HARD_SEATS = 'Hard seats are not banned for ever. They come back like everything else.';

function nowParts(words: SittingWords): Part[] {
  const { now, free, mayHurt, stageWords } = words;
  // A stage may say it itself.
  if (free) return mayHurt && !stageWords.includes(FREE) ? [paragraph(`${FREE}.`, 'strong')] : [];
  if (now === null)
    return [
      paragraph(
        'Sitting hurts too soon just now to set a time. Stand, walk, or lie on your side instead.',
        'strong',
      ),
      list([
        'When you must sit, use a cushion with the part under the sore spot cut out.',
        'Lean back a little, and get up as soon as you can.',
        ...(mayHurt ? [HARD_SEATS] : []),
      ]),
    ];
  return [
    paragraph(
      `Upright on a cushion: up to ${countText(now.uprightMinutes, 'minute')}, then stand up and walk a little.`,
      'strong',
    ),
    paragraph(`On a hard seat, or leaning forward: up to ${countText(now.hardMinutes, 'minute')}.`, 'strong'),
    ...listParts([...growthTexts(words), ...(mayHurt ? [HARD_SEATS] : [])]),
  ];
}

function listParts(entries: readonly string[]): Part[] {
  return entries.length === 0 ? [] : [list(entries)];
}

function growthTexts({ later, moreToCome, stepMinutes, goalMinutes }: SittingWords): string[] {
  const goal = goalMinutes === null ? '' : `, up to your goal of ${countText(goalMinutes, 'minute')}`;
  return [
    ...later.map(
      ({ from, uprightMinutes, hardMinutes }) =>
        `From ${weekdayAndDay(from)}, if your mornings are settled: up to ${countText(uprightMinutes, 'minute')} upright. On a hard seat, or leaning forward: up to ${countText(hardMinutes, 'minute')}.`,
    ),
    ...(moreToCome
      ? [
          `After the review it ${later.length === 0 ? 'grows' : 'goes on'} by ${countText(stepMinutes, 'minute')} at a time${goal}.`,
        ]
      : []),
  ];
}

function blockParts({ tooLongBlocks, drives }: SittingWords): Part[] {
  if (tooLongBlocks.length === 0) return [];
  const blocks = listText(tooLongBlocks.map((minutes) => countText(minutes, 'minute')));
  const stops = drives ? ', and at each stop on the way' : '';
  return [
    paragraph(
      `You told us of ${blocks} of sitting that cannot be cut short. Use a cushion, lean back a little, and shift your weight often. Walk for two minutes before and after it${stops}.`,
    ),
  ];
}

export interface StretchingWords {
  readonly stageWords: string;
  /** What the protocol holds small: it says where the sore spot is and what presses it. */
  readonly angle: Protocol['angle'];
  /** Long deep stretches are still out. */
  readonly gentle: boolean;
  /** So somebody may ask what it is good for. */
  readonly stretchesNow: boolean;
}

// A stage may say it itself; once is enough.
const NO_SHIELD = 'It does not keep you from getting hurt.';

/** What to leave out for now, and what is welcome instead. */
export function stretchingText({ stageWords, angle, gentle, stretchesNow }: StretchingWords): Section {
  const { pressing, leaveAlone } = TENDON_SITES[angle];
  const still = [
    pressing,
    'If you like to move, swing or stretch gently for less than 10 seconds, without force.',
  ];
  return section('stretching', 'Stretching', [
    paragraph(stageWords),
    list([...(gentle ? still : []), leaveAlone]),
    ...(stretchesNow && !stageWords.includes(NO_SHIELD)
      ? [paragraph(`Stretching often feels good at the time. ${NO_SHIELD}`, 'quiet')]
      : []),
  ]);
}
