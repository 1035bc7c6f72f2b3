/** Words of a card in a second language: its own file beside the card, in which nothing but words may differ. */
import { describe, expect, it } from 'vitest';
import { figuresIn } from '../../src/content/inLanguage/figures.ts';
import { languageFile } from '../../src/content/inLanguage/languageFile.ts';
import { libraryIn } from '../../src/content/inLanguage/libraryIn.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { filesBelow } from '../programme/shipped.ts';

// English stands for the second language: the reader knows no other yet, and takes the words of its file before the card's.
const HINGE = 'exercises/hip-hinge.en.md';
const SITTING = 'advice/sitting-well.en.md';

const file = (name: string, text: string): SourceFile => ({
  file: name,
  bytes: new TextEncoder().encode(text),
  link: 'no',
});
const FEW = ['clinic.md', 'exercises/hip-hinge.md', 'exercises/front-plank.md', 'advice/sitting-well.md'];
const few = filesBelow('content', 'consults/').filter((one) => FEW.includes(one.file));
const textOf = (name: string) => new TextDecoder().decode(few.find((one) => one.file === name)?.bytes);

const WORDS = `---
title: Korte buiging met rechte rug
cautions:
  - Neem het gewicht van een werkblad en zet het daar terug, nooit op de vloer.
  - Buig minder ver als de pijnlijke plek zich meldt.
withWeight:
  - Neem het gewicht van een werkblad en zet het daar terug, nooit op de vloer.
---

## Set up

Sta met je voeten op heupbreedte.

## Move

Duw je heupen recht naar achteren.

## Look out for

Houd je rug lang.
`;

const ADVICE = `---
title: Zitten met minder druk
---

## In short

Zitten drukt op de pijnlijke plek.

## What to do

- Leg een dik, zacht kussen op harde stoelen.
`;

const read = (...own: readonly SourceFile[]) => readLibrary([...few, ...own]);
const shipped = read().library!;
const problems = (...own: readonly SourceFile[]) =>
  read(...own).problems.map(({ file: at, line, code, path, found, expected }) => ({
    at,
    line,
    code,
    path,
    found,
    expected,
  }));

describe('a card with words in a second language', () => {
  const { library } = read(file(HINGE, WORDS), file(SITTING, ADVICE));
  const inLanguage = libraryIn(library!, 'en');
  const [own, base] = [inLanguage, library!].map(({ exercises }) => exercises.get('hip-hinge')!);

  it('has its words', () => {
    expect(own!.title).toBe('Korte buiging met rechte rug');
    expect(JSON.stringify(own!.body)).toContain('Duw je heupen');
    expect(inLanguage.advice.get('sitting-well')!.title).toBe('Zitten met minder druk');
  });

  it('keeps its id and every number, kit and source', () => {
    const words = { title: '', cautions: [], withWeight: [], body: [] };
    expect({ ...own, ...words }).toEqual({ ...base, ...words });
    expect(base!.title).toBe('Short bow with straight back');
    const advice = inLanguage.advice.get('sitting-well')!;
    expect(advice.showWhen).toEqual(shipped.advice.get('sitting-well')!.showWhen);
  });

  it('stands where the card stands, and leaves the others in the language of the library', () => {
    expect([...inLanguage.exercises.keys()]).toEqual([...shipped.exercises.keys()]);
    expect(inLanguage.exercises.get('front-plank')).toEqual(shipped.exercises.get('front-plank'));
    expect(libraryIn(shipped, 'en')).toBe(shipped);
  });

  it('may repeat the whole card', () => {
    const whole = textOf('exercises/hip-hinge.md').replace('Short bow with straight back', 'Korte buiging');
    expect(problems(file(HINGE, whole))).toEqual([]);
  });

  it('makes another library', () => {
    expect(library!.version).not.toBe(shipped.version);
  });
});

describe('a Problem', () => {
  const with_ = (was: string, is: string) => file(HINGE, WORDS.replace(was, is));
  const head = (line: string) => with_('cautions:', `${line}\ncautions:`);
  it.each<[what: string, file: SourceFile, wanted: object]>([
    [
      'another hip angle',
      head('end:\n  trunk: 40\n  arms: hang\n  work:\n    hip: 70\n    knee: 20\n    pitch: 0'),
      { code: 'does-not-fit', path: 'end.work.hip', found: '70', expected: '60, as in the card' },
    ],
    [
      'another tempo',
      head('tempo:\n  go: 2\n  hold: 0\n  back: 3'),
      { code: 'does-not-fit', path: 'tempo.go', expected: '3, as in the card' },
    ],
    [
      'another place of the weight',
      head('loadAt: shoulder'),
      { code: 'does-not-fit', path: 'loadAt', found: 'shoulder', expected: 'hands, as in the card' },
    ],
    [
      'a fixed range',
      head('range: fixed'),
      { code: 'does-not-fit', path: 'range', expected: 'continuous, as in the card' },
    ],
    ['a key the card does not have', head('fewAtFirst: yes'), { code: 'does-not-fit', path: 'fewAtFirst' }],
    [
      'a mark made surer',
      head("evidence:\n  - cite: 'Goom'\n    mark: read"),
      { code: 'does-not-fit', path: 'evidence' },
    ],
    [
      'one caution less',
      with_('  - Buig minder ver als de pijnlijke plek zich meldt.\n', ''),
      { code: 'does-not-fit', path: 'cautions', expected: 'as long as in the card: 2' },
    ],
    ['no title', with_('title: Korte buiging met rechte rug\n', ''), { code: 'missing-key', path: 'title' }],
    [
      'no cautions',
      file(HINGE, WORDS.replace(/cautions:\n(?: {2}.*\n){2}/, '')),
      { code: 'missing-key', path: 'cautions' },
    ],
    [
      'a number the card does not say',
      with_('Duw je heupen recht', 'Duw je heupen 5 keer recht'),
      {
        code: 'does-not-fit',
        line: 16,
        found: 'figures under Move that are 5',
        expected: 'those of the card: none',
      },
    ],
    [
      'a number in a caution',
      with_('Buig minder ver', 'Buig 10 cm minder ver'),
      { code: 'does-not-fit', line: 4 },
    ],
    [
      'words about a weight that stand nowhere',
      with_('withWeight:\n  - Neem het', 'withWeight:\n  - Pak het'),
      { code: 'wrong-word', path: 'withWeight[0]' },
    ],
    ['a heading of its own', with_('## Move', '## Bewegen'), { code: 'heading' }],
    ['a key nobody knows', head('hide: yes'), { code: 'unknown-key', path: 'hide' }],
    [
      'a language there is none of',
      file('exercises/hip-hinge.nl.md', WORDS),
      {
        code: 'wrong-file-name',
        found: 'a file called hip-hinge.nl.md',
        expected: expect.stringContaining('with a language between them: en'),
      },
    ],
    [
      'words without a card',
      file('exercises/hop.en.md', WORDS),
      { code: 'wrong-file-name', found: 'the words of hop.md, which is not there' },
    ],
    ['words of a protocol', file('protocols/proximal-hamstring.en.md', WORDS), { code: 'wrong-file-name' }],
    [
      'advice for other people',
      file(SITTING, ADVICE.replace('title', 'showWhen:\n  - always\ntitle')),
      { code: 'does-not-fit', path: 'showWhen[0]', expected: 'sits, as in the card' },
    ],
  ])('%s', (_, own, wanted) => {
    expect(problems(own)).toEqual(
      expect.arrayContaining([expect.objectContaining({ at: own.file, ...wanted })]),
    );
    expect(read(own).library).toBeNull();
  });

  it('of the card is told there, once', () => {
    const broken = file(
      'exercises/hip-hinge.md',
      textOf('exercises/hip-hinge.md').replace('go: 3', 'go: 99'),
    );
    const others = few.filter((one) => one.file !== broken.file);
    expect(readLibrary([...others, broken, file(HINGE, WORDS)]).problems.map((one) => one.file)).toEqual([
      broken.file,
    ]);
  });
});

describe('folders one over the other', () => {
  const below = [...few, file(HINGE, WORDS)];
  const titleOf = (...upper: readonly SourceFile[]) => {
    const { library, problems: found } = readLibrary(below, [
      file('clinic.md', textOf('clinic.md')),
      ...upper,
    ]);
    return library === null ? found : libraryIn(library, 'en').exercises.get('hip-hinge')?.title;
  };
  const own = (title: string) =>
    file(
      'exercises/hip-hinge.md',
      textOf('exercises/hip-hinge.md').replace('Short bow with straight back', title),
    );

  it.each<[what: string, upper: readonly SourceFile[], title: string]>([
    ['words below are kept', [], 'Korte buiging met rechte rug'],
    [
      'words above replace those below',
      [file(HINGE, WORDS.replace('Korte', 'Kleine'))],
      'Kleine buiging met rechte rug',
    ],
    ['a card above takes the words below with it', [own('Our bow')], 'Our bow'],
    [
      'and has its own',
      [own('Our bow'), file(HINGE, WORDS.replace('Korte', 'Onze'))],
      'Onze buiging met rechte rug',
    ],
  ])('%s', (_, upper, title) => expect(titleOf(...upper)).toBe(title));
});

describe('the name of a file', () => {
  it.each([
    ['exercises/hip-hinge.nl.md', { base: 'exercises/hip-hinge.md', language: 'nl' }],
    ['advice/sleep.pt-BR.md', { base: 'advice/sleep.md', language: 'pt-BR' }],
    ['exercises/hip-hinge.md', null],
    ['exercises/hip.hinge.md', null],
    ['protocols/proximal-hamstring.nl.md', null],
    ['consults/otter-r1.nl.md', null],
  ])('%s', (name, wanted) => expect(languageFile(name)).toEqual(wanted));
});

it.each([
  ['no number', []],
  ['Hold 30 s, 5 times', ['30', '5']],
  ['1,5 m or 1.5 m', ['1.5', '1.5']],
])('the figures of: %s', (text, figures) => expect(figuresIn(text)).toEqual(figures));
