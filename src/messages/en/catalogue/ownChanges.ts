/** What the public page of a protocol says of the values a clinic changed in it. */
import { listText } from '../plain.ts';

export const OWN_CHANGES = {
  heading: 'What is changed here',
  caption: 'Values that are changed',
  columns: ['Value', 'As it was', 'Here', 'Mark', 'Source'],
  none: '–',
} as const;

/** @example changedLead('Hamstring tendon', true) // => 'The shipped protocol with the changes below; all else is as it was.' */
export function changedLead(title: string, isSame: boolean): string {
  const what = isSame ? 'The shipped protocol' : `The protocol “${title}”`;
  return `${what} with the changes below; all else is as it was.`;
}

/** @example changedText('Sets in a session.', 'Holds, Calf') // => 'Holds, Calf: Sets in a session.' */
export function changedText(sentence: string, where: string): string {
  return where === '' ? sentence : `${where}: ${sentence}`;
}

export function addedText(card: string, slot: string): string {
  return `${card} may fill a slot, too: ${slot}.`;
}

export function leftOutText(cards: readonly string[]): string {
  return `Left out of every slot: ${listText(cards)}.`;
}
