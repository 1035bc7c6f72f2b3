import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { firstPlace, problemOf } from '../../src/content/place.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { Refusal } from '../../src/units/refusal.ts';
import { proseTexts } from '../../src/content/prose/plainText.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from './sample.ts';

const files = filesWith({
  'consults/otter-r2.md': SAMPLE['consults/otter-r1.md'].replace('revision: 1', 'revision: 2'),
});
const library = readLibrary(files);
const consults = readConsults(files, library.known);

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

describe('placeOf a word', () => {
  const BRIDGE = 'exercises/bridge.md';
  const words = spoilt(
    BRIDGE,
    'cautions: [Keep the pelvis level.]',
    "cautions: ['It''s time to keep, to keep level.']",
  )
    .replace('title: Bridge from the floor', 'title: >-\n  Bridge from\n  the floor')
    .replace('Lift the pelvis for', 'Lift a [lift](../clinic.md) \\* &amp;\n  lift for');
  const { placeOf } = readLibrary([fileOf(BRIDGE, words)]);

  // Each row: the path, the text there as it is read, the word asked for, and where an editor shows it.
  it.each([
    [['cautions', 0], "It's time to keep, to keep level.", 'level', '18:41'],
    [['cautions', 0], "It's time to keep, to keep level.", 'keep level', '18:36'],
    [['title'], 'Bridge from the floor', 'floor', '4:7'],
    [['body', 0, 'blocks', 0], 'Lie on your back with both feet flat.', 'feet', '27:28'],
    [['body', 1, 'blocks', 0], 'Lift a lift * & lift for three seconds', 'lift *', '31:9'],
    [['body', 1, 'blocks', 0], 'Lift a lift * & lift for three seconds', '* &', '31:29'],
    [['body', 1, 'blocks', 0], 'Lift a lift * & lift for three seconds', '& lift', '31:32'],
    [['body', 1, 'blocks', 0], 'Lift a lift * & lift for three seconds', 'lift for', '32:3'],
    [['body', 1, 'blocks', 0], 'Lift a lift * & lift for three seconds', 'seconds', '32:20'],
    [['body', 2, 'blocks', 0, 'entries', 0], 'A pull at the sit bone', 'sit', '36:17'],
    [['body', 2, 'blocks', 0, 'entries', 0, 'entries', 1], 'or stop for today', 'stop', '38:9'],
  ] as const)('%j in “%s”: %s at %s', (path, read, word, place) => {
    expect(text(placeOf('exercise', 'bridge', path, read.indexOf(word)))).toBe(`${BRIDGE}:${place}`);
  });

  it('of every body of the shipped library stands where the file has it', () => {
    const shipped = readdirSync('content', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.md'))
      .map((file) => fileOf(file.replaceAll('\\', '/'), readFileSync(`content/${file}`, 'utf8')));
    const reading = readLibrary(shipped);
    const wrong: string[] = [];
    let words = 0;
    for (const [kind, cards] of [
      ['exercise', reading.library?.exercises],
      ['advice', reading.library?.advice],
      ['protocol', reading.library?.protocols],
    ] as const) {
      for (const { id, body } of cards?.values() ?? []) {
        for (const { path, text: read } of proseTexts(body)) {
          for (const { index, 0: word } of read.matchAll(/[A-Za-z']+/g)) {
            const place = reading.placeOf(kind, id, ['body', ...path], index);
            const file = shipped.find((one) => one.file === place?.file);
            const line = new TextDecoder().decode(file?.bytes).split('\n')[(place?.line ?? 0) - 1] ?? '';
            if (!line.slice((place?.column ?? 0) - 1).startsWith(word)) wrong.push(`${id}: ${word}`);
            words += 1;
          }
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(words).toBeGreaterThan(5000);
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
