import { describe, expect, it } from 'vitest';
import { isKeepStage, keepStageOf, numberedStages } from '../../src/content/keepStage.ts';

const [hold, slow, keep] = [{ name: 'Holds' }, { name: 'Slow strength' }, { name: 'Keep going' }];

describe('the keep stage', () => {
  it.each([
    ['keep', true],
    ['Keep going', true],
    ['Keeper training', false],
    ['Hold and keep', false],
  ])('%s: %s', (name, is) => expect(isKeepStage({ name })).toBe(is));

  it('stands apart from the numbered ones', () => {
    expect(numberedStages([hold, slow, keep])).toEqual([hold, slow]);
    expect(keepStageOf([hold, slow, keep])).toBe(keep);
  });

  it('need not be there', () => {
    expect(numberedStages([hold, slow])).toEqual([hold, slow]);
    expect(keepStageOf([hold, slow])).toBeNull();
    expect(numberedStages([])).toEqual([]);
  });
});
