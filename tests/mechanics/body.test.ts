import { describe, expect, it } from 'vitest';
import { bodyProblem, REFERENCE_BODY } from '../../src/mechanics/body.ts';

describe('bodies the model may be asked about: 1.2 to 2.2 m, 30 to 250 kg', () => {
  it.each([
    ['the reference body', REFERENCE_BODY, null],
    ['the smallest', { heightM: 1.2, massKg: 30 }, null],
    ['the largest', { heightM: 2.2, massKg: 250 }, null],
    ['too short', { heightM: 1.19, massKg: 70 }, { figure: 'heightM', found: 1.19, from: 1.2, to: 2.2 }],
    ['centimetres', { heightM: 175, massKg: 70 }, { figure: 'heightM', found: 175, from: 1.2, to: 2.2 }],
    ['too light', { heightM: 1.75, massKg: 29.9 }, { figure: 'massKg', found: 29.9, from: 30, to: 250 }],
    ['too heavy', { heightM: 1.75, massKg: 251 }, { figure: 'massKg', found: 251, from: 30, to: 250 }],
    [
      'no number',
      { heightM: 1.75, massKg: Number.NaN },
      { figure: 'massKg', found: Number.NaN, from: 30, to: 250 },
    ],
  ])('%s', (_title, body, expected) => expect(bodyProblem(body)).toEqual(expected));
});
