/** A card that was tried is held to the house's ceiling, however high usual is. */
import { describe, expect, it } from 'vitest';
import { limitsOf, triedAtMost } from '../../src/decisions/screen/painLimits.ts';
import { person } from './person.ts';
import { shipped } from './shipped.ts';

const protocol = shipped.protocols.get('proximal-hamstring');
if (protocol === undefined) throw new Error('the protocol must be there');

describe('pain up to which a card that was tried is used', () => {
  it.each([
    // usual  irritability  during exercise  tried
    [0, 'low', 3, 3],
    [3, 'low', 4, 4],
    [4, 'low', 4, 4],
    [6, 'low', 6, 5],
    [8, 'low', 8, 5],
    [1, 'high', 1, 3],
    [5, 'high', 5, 5],
  ] as const)('usual %d, irritability %s', (usualMorningPain, irritability, during, tried) => {
    const consult = person({ usualMorningPain, irritability });
    expect(limitsOf(consult, protocol).atMost).toBe(during);
    expect(triedAtMost(consult, protocol)).toBe(tried);
  });
});
