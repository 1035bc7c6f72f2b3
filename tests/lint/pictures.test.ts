/** Words of a card beside its figure: the shipped figures bear their words out, and each seeded fault is found. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { seenIn } from '../../src/drawing/seen.ts';
import type { Look, SeenFrame } from '../../src/mechanics/seen.ts';
import { againstPictures, drawnFaults, saidFaults } from '../../src/lint/pictures.ts';
import { fileOf } from '../content/sample.ts';

const TEXTS = new Map(
  readdirSync('content', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md') && !file.startsWith('consults'))
    .map((file) => [file.replaceAll('\\', '/'), readFileSync(`content/${file}`, 'utf8')] as const),
);

/** The shipped library with one card's text changed in places; throws when a place is not there. */
function libraryWith(id: string, ...changes: readonly (readonly [from: string, to: string])[]) {
  const name = `exercises/${id}.md`;
  const changed = changes.reduce(
    (text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`${name} has no "${from}"`);
      return text.replace(from, to);
    },
    TEXTS.get(name) ?? '',
  );
  const files = [...TEXTS].map(([file, text]) => fileOf(file, file === name ? changed : text));
  const { library, placeOf, problems } = readLibrary(files);
  if (library === null) throw new Error(problems.map(({ code, found }) => `${code} ${found}`).join('\n'));
  return { library, placeOf, lineOf: lineFinder(files) };
}

function codesWith(id: string, ...changes: readonly (readonly [string, string])[]): string[] {
  const { library, placeOf } = libraryWith(id, ...changes);
  return againstPictures(library, seenIn, placeOf).map(({ file, code }) => `${file.slice(10, -3)} ${code}`);
}

describe('the shipped figures', () => {
  it('bear out what their cards say', () => {
    const { library, placeOf, lineOf } = libraryWith('hip-hinge');
    const printed = againstPictures(library, seenIn, placeOf).map((one) =>
      problemText(one, lineOf(one.file, one.line)),
    );
    expect(printed.join('\n\n')).toBe('');
  });
});

// prettier-ignore
const SEEDED: readonly (readonly [fault: string, card: string, from: string, to: string, code: string])[] = [
  ['no picture at all',                 'strides',               TEXTS.get('exercises/strides.md')!.match(/picture:\n(?: .*\n)+/)![0], '', 'figure-missing'],
  ['no worktop under the hand',         'single-leg-calf-raise', 'props:\n  - table', 'props:\n  - floor',     'hand-in-the-air'],
  ['hands away from the thighs',        'hip-hinge',             'hands: thighs\n', 'hands: chest\n',            'hand-in-the-air'],
  ['no machine to hold on to',          'machine-prone-curl',    '  - machine\nrange', 'range',                  'hand-in-the-air'],
  ['hands not on the hips',             'side-step',             'hands: hips', 'hands: sides',                  'hand-in-the-air'],
  ['a ball that is not there',          'slow-ball-curl',        '  - mat\n  - ball', '  - mat\n  - step',       'said-to-move-stays'],
  ['a foot that hangs over its ground', 'hurdle-walk-overs',     'work: { hip: 22, knee: 8, pitch: 12 }', 'work: { hip: 62, knee: 40, pitch: 0 }', 'foot-off-the-ground'],
];

describe('a seeded fault', () => {
  it.each(SEEDED)('%s (%s)', (_, card, from, to, code) => {
    expect(codesWith(card, [from, to])).toContain(`${card} ${code}`);
  });
});

const FINE: SeenFrame = {
  hands: [],
  entered: [],
  heel: { x: 0, y: 0 },
  ball: null,
  arrowAt: null,
  arcDeg: null,
  shownDeg: null,
  floatsM: 0,
  drawn: [],
};

// prettier-ignore
const DRAWN: readonly (readonly [what: string, frame: Partial<SeenFrame>, codes: readonly string[]])[] = [
  ['nothing wrong',                           {},                                                          []],
  ['a foot 3 cm in a step',                   { entered: [{ part: 'foot', prop: 'step', depthM: 0.03 }] },  ['body-enters-thing']],
  ['a foot that touches a step',              { entered: [{ part: 'foot', prop: 'step', depthM: 0.015 }] }, []],
  ['an arc beside 0°',                        { arcDeg: 9, shownDeg: 0 },                                  ['arc-against-number']],
  ['a hook beside 5°',                        { arcDeg: 5, shownDeg: 5 },                                  ['arc-against-number']],
  ['5° without an arc',                       { arcDeg: null, shownDeg: 5 },                               []],
  ['an arc of 60° beside 60°',                { arcDeg: 59, shownDeg: 60 },                                []],
  ['an arc of 60° beside 70°',                { arcDeg: 60, shownDeg: 70 },                                ['arc-against-number']],
  ['70° without an arc',                      { arcDeg: null, shownDeg: 70 },                              ['arc-against-number']],
  ['a standing foot 5 cm over the ground',    { floatsM: 0.05 },                                           ['foot-off-the-ground']],
];

describe('what a drawing alone shows', () => {
  it.each(DRAWN)('%s', (_, frame, codes) => {
    expect(drawnFaults({ ...FINE, ...frame }).map(({ code }) => code)).toEqual(codes);
  });
});

describe('what is said to move', () => {
  const card = libraryWith('slow-standing-hip-extension').library.exercises.get(
    'slow-standing-hip-extension',
  )!;
  const seen = (change: Partial<SeenFrame>): ReturnType<Look> => [
    { ...FINE, hands: ['table'] },
    { ...FINE, hands: ['table'], heel: { x: -0.3, y: 0.1 }, ...change },
  ];

  it('moves with its arrow beside it', () => {
    expect(saidFaults(card, seen({ arrowAt: 'foot' }))).toEqual([]);
  });

  it.each([
    ['an arrow at the head while the leg goes back', { arrowAt: 'head' as const }],
    ['a leg that stays', { heel: { x: 0, y: 0 } }],
  ])('is missed: %s', (_, change) => {
    expect(saidFaults(card, seen(change)).map(({ code }) => code)).toEqual(['said-to-move-stays']);
  });
});

describe('the rear foot of a step-up', () => {
  it('is seen when it reaches into the step', () => {
    const { library } = libraryWith('high-step-up', [
      '    hip: 23.5\n    knee: 4\n',
      '    hip: 42\n    knee: 4\n',
    ]);
    const faults = againstPictures(library, seenIn, libraryWith('high-step-up').placeOf);
    expect(faults.map(({ code, file }) => `${file} ${code}`)).toContain(
      'exercises/high-step-up.md body-enters-thing',
    );
  });
});
