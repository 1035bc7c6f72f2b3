import { describe, expect, it } from 'vitest';
import { firstPlace, problemOf } from '../../src/content/place.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { Refusal } from '../../src/units/refusal.ts';
import { filesWith, SAMPLE } from './sample.ts';

const files = filesWith({
  'consults/otter-r2.md': SAMPLE['consults/otter-r1.md'].replace('revision: 1', 'revision: 2'),
});
const library = readLibrary(files);
const consults = readConsults(files, library.library);

const text = (place: { file: string; line: number; column: number } | null) =>
  place === null ? null : `${place.file}:${place.line}:${place.column}`;

describe('placeOf', () => {
  it.each([
    ['exercise', 'bridge', ['start', 'work', 'hip'], 'exercises/bridge.md:7:35'],
    ['exercise', 'bridge', ['positions', 1], 'exercises/bridge.md:4:20'],
    ['exercise', 'bridge', ['landmark'], 'exercises/bridge.md:2:1'],
    ['exercise', 'bridge', ['tempo', 'rest'], 'exercises/bridge.md:14:8'],
    ['exercise', 'bridge', [], 'exercises/bridge.md:2:1'],
    ['protocol', 'hamstring', ['stages', 0, 'slots', 0, 'dose', 'sets'], 'protocols/hamstring.md:23:35'],
    ['advice', 'sitting', ['showWhen', 0], 'advice/sitting.md:3:12'],
    ['clinic', 'clinic', ['emergency', 'GB'], 'clinic.md:8:5'],
    ['exercise', 'no-such', ['title'], null],
    ['consult', 'otter-r1', ['alias'], null],
  ] as const)('%s %s %j', (kind, id, path, place) => {
    expect(text(library.placeOf(kind, id, path))).toBe(place);
  });

  it('finds a consult by its id, and by its alias the newest', () => {
    expect(text(consults.placeOf('consult', 'otter-r1', ['screen', 'fever']))).toBe(
      'consults/otter-r1.md:21:10',
    );
    expect(text(consults.placeOf('consult', 'otter', ['screen', 'hernia']))).toBe(
      'consults/otter-r2.md:19:3',
    );
    expect(consults.placeOf('consult', 'badger', [])).toBeNull();
  });
});

describe('firstPlace', () => {
  const placeOf = firstPlace(library.placeOf, consults.placeOf);

  it('finds what either knows', () => {
    expect(text(placeOf('clinic', 'clinic', ['paper']))).toBe('clinic.md:5:8');
    expect(text(placeOf('consult', 'otter-r1', ['alias']))).toBe('consults/otter-r1.md:2:8');
    expect(placeOf('consult', 'badger', [])).toBeNull();
  });
});

describe('problemOf', () => {
  const refusal: Refusal = {
    code: 'screen-block',
    kind: 'consult',
    id: 'otter-r1',
    path: ['screen', 'fever'],
    found: 'yes',
    expected: 'no',
    fix: 'see the person first',
  };

  it('places a refusal', () => {
    expect(problemOf(refusal, consults.placeOf)).toEqual({
      code: 'screen-block',
      severity: 'error',
      file: 'consults/otter-r1.md',
      line: 21,
      column: 10,
      path: 'screen.fever',
      found: 'yes',
      expected: 'no',
      fix: 'see the person first',
    });
  });

  it('throws for a refusal without a place or with a code of its own, which are our defects', () => {
    expect(() => problemOf({ ...refusal, id: 'badger' }, consults.placeOf)).toThrow(
      'there is no consult badger',
    );
    expect(() => problemOf({ ...refusal, code: 'oops' }, consults.placeOf)).toThrow('found oops');
  });
});
