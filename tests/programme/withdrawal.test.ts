/** Which leaflet must go because of what a newer file says of the screen. */
import { describe, expect, it } from 'vitest';
import type { Draft } from '../../src/content/draft.ts';
import { wordedWithdrawal } from '../../src/programme/worded.ts';
import { withdrawals, type Withdrawal } from '../../src/decisions/screen/withdrawal.ts';
import { day } from './person.ts';
import { shipped } from './shipped.ts';

const IN_USE = new Map([['vole', 2]]);

function draft(said: Partial<Draft['said']>, revision: number | null = 3): Draft {
  const nothing = { yes: [], screen: null, clearances: [], cannotDo: [], ageYears: 40, country: 'GB' };
  return {
    alias: 'vole',
    revision,
    file: 'consults/vole-r3.md',
    consult: null,
    said: { ...nothing, ...said },
  };
}

const fixOf = (withdrawal: Withdrawal | undefined) =>
  withdrawal === undefined ? '' : wordedWithdrawal(withdrawal.refusal).fix;
const items = (file: Draft) => withdrawals([file], IN_USE, shipped.clinic).map(({ item }) => item);

const cleared = (flag: 'popBruise' | 'fever' | 'saddleNumbness' | 'oralSteroid', imaging = false) => ({
  flag,
  by: 'family doctor',
  on: day('2026-11-20'),
  decision: 'looked into',
  ...(imaging ? { imaging: { kind: 'MRI', on: day('2026-11-19'), result: 'whole' } } : {}),
});

describe('a yes in a newer file', () => {
  it.each<[string, Partial<Draft['said']>, readonly string[]]>([
    ['of an emergency withdraws', { yes: ['saddleNumbness'] }, ['saddleNumbness']],
    [
      'of an emergency withdraws whatever is recorded',
      { yes: ['saddleNumbness'], clearances: [cleared('saddleNumbness')] },
      ['saddleNumbness'],
    ],
    ['of a block withdraws', { yes: ['fever'] }, ['fever']],
    ['of a block that was cleared does not', { yes: ['fever'], clearances: [cleared('fever')] }, []],
    [
      'of a pop cleared by words alone withdraws',
      { yes: ['popBruise'], clearances: [cleared('popBruise')] },
      ['popBruise'],
    ],
    [
      'of a pop cleared by a picture does not',
      { yes: ['popBruise'], clearances: [cleared('popBruise', true)] },
      [],
    ],
    ['of tablets nobody has decided on withdraws', { yes: ['oralSteroid'] }, ['oralSteroid']],
    [
      'of a sudden start under 18 withdraws',
      { yes: ['suddenOnsetUnder18'], ageYears: 15 },
      ['suddenOnsetUnder18'],
    ],
    [
      'of a sudden start at an unknown age withdraws',
      { yes: ['suddenOnsetUnder18'], ageYears: 0 },
      ['suddenOnsetUnder18'],
    ],
    ['of what only stops running does not', { yes: ['hopPain'] }, []],
    ['is missing', {}, []],
  ])('%s', (_, said, expected) => {
    expect(items(draft(said))).toEqual(expected);
  });

  it('counts in a file of the same revision or of none that can be told, not in an older one', () => {
    const counts = [1, 2, 3, null].map((revision) => items(draft({ yes: ['fever'] }, revision)).length);
    expect(counts).toEqual([0, 1, 1, 1]);
  });

  it('names the file, and says what to do now with the number of the country', () => {
    const [withdrawal] = withdrawals([draft({ yes: ['footDrop'] })], IN_USE, shipped.clinic);
    expect(withdrawal).toMatchObject({ alias: 'vole', file: 'consults/vole-r3.md', revision: 3 });
    expect(withdrawal?.refusal).toMatchObject({
      code: 'screen-block',
      id: 'vole-r3',
      path: ['screen', 'footDrop'],
    });
    expect(fixOf(withdrawal)).toContain('call 999');
    expect(fixOf(withdrawal)).toContain('The leaflet in use is withdrawn meanwhile.');
  });

  it('withdraws where the clinic file cannot be read', () => {
    const [withdrawal] = withdrawals([draft({ yes: ['footDrop'] })], IN_USE, null);
    expect(fixOf(withdrawal)).toContain('call the local emergency number');
  });
});
