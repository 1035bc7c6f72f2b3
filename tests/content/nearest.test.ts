import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/content/nearest.ts';

const KNOWN = ['alias', 'massKg', 'heightM', 'side', 'long-lever-bridge', 'long-lever-bridge-hold'];

describe('nearest', () => {
  it.each([
    ['masKg', 'massKg'],
    ['MASSKG', 'massKg'],
    ['mass_kg', 'massKg'],
    ['alais', 'alias'],
    ['sied', 'side'],
    ['longlever-bridge', 'long-lever-bridge'],
    ['long-lever-brigde-hold', 'long-lever-bridge-hold'],
    ['weight', null],
    ['weightKg', null],
    ['as', null],
    ['mark', null],
    ['', null],
    ['colour', null],
    ['x'.repeat(5000), null],
  ])('%s is %s', (written, meant) => {
    expect(nearest(written, KNOWN)).toBe(meant);
  });
});
