/** The forms in which banned and trade words are met, and words that only look like them. */
import { describe, expect, it } from 'vitest';
import { bannedIn } from '../../src/lint/bannedWords.ts';
import { tradeIn } from '../../src/lint/tradeWords.ts';

const words = (hits: readonly { readonly word: string }[]) => hits.map(({ word }) => word);

// House rules 9 names: stage, cap, compression, demand, reserve, RM, damaged, torn, safe, dangerous, risk.
// prettier-ignore
const BANNED = [
  'stage', 'Stages', 'cap', 'compression', 'compresses', 'demand', 'demanding', 'reserve', '1RM', '8RM',
  '10-RM', 'damaged', 'damage', 'torn', 'tear', 'ruptured', 'safe', 'safely', 'unsafe', 'safety',
  'dangerous', 'danger', 'risk', 'risky', '70 %', '5%', 'per cent', 'percent', 'body weight', 'bodyweight',
  'body-weight',
];

// prettier-ignore
const TRADE = [
  'flexion', 'Flexed', 'extension', 'hyperextension', 'abduction', 'adductors', 'dorsiflexion',
  'plantar flexion', 'pronation', 'valgus', 'prone', 'supine', 'unilaterally', 'distal', 'lateral',
  'ischial tuberosity', 'glutes', 'gluteus maximus', 'hamstrings', 'quads', 'gastrocnemius', 'pelvis',
  'pelvic tilt', 'sacrum', 'core', 'neutral spine', 'isometric', 'eccentrics', 'plyometric',
  'proprioception', 'reps', 'ROM', 'DOMS', 'cadence', 'gait', 'tendinopathy', 'enthesis', 'irritability',
  'contraindicated', 'oedema', 'inflammation', 'progressions', 'biomechanics',
];

describe('banned words', () => {
  it.each(BANNED)('%s', (word) => {
    expect(words(bannedIn(`Mind the ${word} here.`))).toEqual([word]);
  });

  it.each([
    'Bend until the knee cap points down.',
    'Put your hand on the kneecap.',
    'Fill the bottle up to the bottle cap.',
    'Capture the moment.',
    'The storm was reserved.',
    'Take a firm grip.',
  ])('none in: %s', (text) => {
    expect(bannedIn(text)).toEqual([]);
  });
});

describe('trade words', () => {
  it.each(TRADE)('%s', (word) => {
    const found = words(tradeIn(`Mind the ${word} here.`));
    expect(found).toHaveLength(1);
    expect(word).toContain(found[0]);
  });

  it.each([
    'The hamstring tendon joins the sit bone.',
    'The gluteal tendon lies on the outside of the hip.',
    'Keep your score, and stay flexible.',
    'It is a matter of progress.',
    'Tilt the chair.',
    'Repeat it.',
  ])('none in: %s', (text) => {
    expect(tradeIn(text)).toEqual([]);
  });
});
