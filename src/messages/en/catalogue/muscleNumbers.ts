/** Words of the page 'How the numbers are made' on body size, on hamstrings that work along, and on friction. */
import { numberText, kgText } from '../plain.ts';

export const BODY_SIZE = {
  heading: 'Body size and strength',
  text: [
    'Muscle volume follows body mass times height (Handsfield et al. 2014, J Biomech 47:631-638, secondary). Over a length that follows height this makes force follow mass. So the greatest force of every muscle is that of the published body times the mass of the person over the mass of that body.',
    'One factor for all muscles changes no pull and no squeeze, for only the ratios of their areas share a moment out. Only the share of strength changes. Pull at rest is not scaled: people differ by more than their size explains.',
    'With one force for everybody the same pull in body weights read as easy for a light person and as beyond strength for a heavy one.',
  ],
} as const;

export function strengthTable(card: string) {
  return {
    caption: `Share of strength of one movement by body mass, without a weight: ${card}`,
    columns: [
      'Body mass',
      'Times the published force',
      'Pull, body weights',
      'Share of strength, one force for everybody',
      'Share of strength, as counted',
    ],
  } as const;
}

/** @example weightedCard('Step up', 8) // => 'Step up, 8 kg' */
export function weightedCard(title: string, loadKg: number): string {
  return `${title}, ${kgText(loadKg)}`;
}

export const SETTINGS_OF_MUSCLES = 'House numbers of the muscles';

export function leastShareText(share: number): string {
  return `Least effort lets the hamstrings off where the knee must straighten: on a high step with weights at the sides it would leave them next to nothing of the turning effect at the hip. People's hamstrings work along. So they are counted with at least ${numberText(100 * share)} % of it. This is a house choice without a source.`;
}

export const TOGETHER = {
  heading: 'Hamstrings that work along',
  text: [
    'It can only raise pull and squeeze, never lower them: what is above that share stays as it is. The push between two supports is still the one of least effort. Where bench or bed carries the thigh, and in stretches, nothing changes.',
  ],
  caption: 'Cards that it changes, for the reference body: by least effort → as counted',
  columns: [
    'Card and weight',
    'Largest squeeze, body weights',
    'Largest pull, body weights',
    'Squeeze over a repetition, body weights × seconds',
    'Pull over a repetition, body weights × seconds',
  ],
  none: 'Of the cards of this library that the knee leads, it changes none.',
} as const;

export function usedFrictionText(coefficient: number): string {
  return `Estimates everywhere else use a coefficient of ${numberText(coefficient)}. Caps are held against them times the protocol’s factor for two supports.`;
}

export const FRICTIONS = {
  heading: 'What friction does to a lunge',
  text: [
    'In a lunge both feet stand on the floor and can push against each other as far as friction holds. How much of that is used is the person’s own. It is the largest uncertainty of such cards: with more friction the front hamstrings have less to do. A floor that gives nothing is the upper estimate.',
  ],
  caption: 'Largest squeeze of a lunge without a weight, body weights, by the coefficient of friction',
  card: 'Card',
  none: 'No card of this library is a lunge on two supports.',
} as const;
