/**
 * House rules 2: what was not asked acts like yes. Nobody can clear an item that nobody asked about, so a clearance
 * beside `notAsked` lifts nothing: neither a block nor what else the item holds back.
 */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { SCREEN_ITEMS, type ScreenItem } from '../../src/content/schema/consult.ts';
import { screenEffects } from '../../src/decisions/screen/screen.ts';
import { ALL_CLEAR, day, person } from './person.ts';
import { refusalsOf, shipped } from './shipped.ts';

const clearanceOf = (flag: ScreenItem): Consult['clearances'][number] => ({
  flag,
  by: 'Dr Example',
  on: day('2026-11-20'),
  decision: 'seen and settled; exercise may go on',
});

const answered = (item: ScreenItem, answer: 'yes' | 'notAsked', isCleared: boolean): Consult =>
  person({
    screen: { ...ALL_CLEAR, [item]: answer },
    clearances: isCleared ? [clearanceOf(item)] : [],
  });

/** What the screen does with an answer, told apart by effect and items. */
const effectOf = (consult: Consult) => {
  const effects = screenEffects(consult, shipped.clinic);
  return 'refusals' in effects ? effects.refusals.map(({ path }) => path.join('.')) : effects;
};

describe('an item that was not asked', () => {
  it('is not cleared: fever with a clearance beside it stops the programme', () => {
    expect(refusalsOf(answered('fever', 'notAsked', true))).toEqual(['screen-block screen.fever']);
  });

  it('is cleared once it was asked and answered', () => {
    expect(refusalsOf(answered('fever', 'yes', true))).toEqual([]);
    expect(refusalsOf(answered('fever', 'yes', false))).toEqual(['screen-block screen.fever']);
  });

  // Light holds ask for a decision rather than a clearance and stay whatever it says; the growth plate is asked by age.
  it.each(SCREEN_ITEMS.filter((item) => item !== 'suddenOnsetUnder18' && !isLightHolds(item)))(
    '%s acts the same with a clearance beside it as without, and as yes does',
    (item) => {
      const notAsked = effectOf(answered(item, 'notAsked', false));
      expect(effectOf(answered(item, 'notAsked', true))).toEqual(notAsked);
      expect(effectOf(answered(item, 'yes', false))).toEqual(notAsked);
      expect(notAsked).not.toEqual(effectOf(person()));
    },
  );

  it.each(SCREEN_ITEMS.filter(isLightHolds))('%s holds to light holds with a decision beside it', (item) => {
    expect(effectOf(answered(item, 'notAsked', true))).toMatchObject({ lightHolds: [item] });
  });
});

function isLightHolds(item: ScreenItem): boolean {
  return item === 'fluoroquinolone' || item === 'oralSteroid' || item === 'recentInjection';
}
