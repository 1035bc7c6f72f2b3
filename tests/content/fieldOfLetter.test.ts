import { describe, expect, it } from 'vitest';
import { fieldOfLetter } from '../../src/content/fieldOfLetter.ts';
import { fileOf } from './sample.ts';

const file = fileOf(
  'consults/otter-r1.md',
  [
    '---',
    'alias: otter',
    'painArea: the 腰',
    'goals:',
    '  - what: a walk',
    '  - what: "up the \\u8170 hill"',
    'clinician: Zoe\u0308 ب',
    '---',
    'A 橋 in the notes.',
  ].join('\n'),
);

describe('the field a printed letter came from', () => {
  it.each([
    // letter  printed                          path                     offset
    ['腰', 'What you want: up the 腰 hill.', ['goals', 1, 'what'], 7],
    ['腰', 'It hurts at the 腰.', ['painArea'], 4],
    ['腰', '腰', ['painArea'], 4],
    ['腰', 'in other words 腰', ['painArea'], 4],
    ['ب', 'Zoë ب', ['clinician'], 5],
    ['ë', 'Zoë', ['clinician'], 0],
    ['橋', 'A 橋', null, 0],
  ])('%s in %j stands at %j', (letter, printed, path, offset) => {
    expect(fieldOfLetter(file, letter, printed)).toEqual(path === null ? null : { path, offset });
  });
});
