/** Reading text and YAML against what the standards print. */
import { describe, expect, it } from 'vitest';
import { badCharacters } from '../../src/content/badCharacter.ts';
import { decode } from '../../src/content/source.ts';
import { sourceText } from '../../src/content/sourceText.ts';
import { readYaml } from '../../src/content/yaml.ts';

function valueOf(yaml: string): unknown {
  return readYaml(sourceText('a.md', yaml), yaml, 0).value;
}

describe('YAML 1.2.2, Example 10.9 Core Tag Resolution [secondary: seen in test suites that quote it]', () => {
  const EXAMPLE = `A null: null
Also a null: # Empty
Not a null: ""
Booleans: [ true, True, false, FALSE ]
Integers: [ 0, 0o7, 0x3A, -19 ]
Floats: [ 0., -0.0, .5, +12e03, -2E+05 ]
Also floats: [ .inf, -.Inf, +.INF, .NAN ]
`;

  it('reads each scalar as the specification does', () => {
    expect(valueOf(EXAMPLE)).toEqual({
      'A null': null,
      'Also a null': null,
      'Not a null': '',
      Booleans: [true, true, false, false],
      Integers: [0, 7, 58, -19],
      Floats: [0, -0, 0.5, 12_000, -200_000],
      'Also floats': [Infinity, -Infinity, Infinity, NaN],
    });
  });
});

describe('YAML 1.2.2, 10.3.2: words that were no text in YAML 1.1 are text [memory]', () => {
  it.each(['no', 'on', 'Yes', 'y', '1:30', '2026-11-25', '1_000', '<<'])('%s', (word) => {
    expect(valueOf(`a: ${word}`)).toEqual({ a: word });
  });
});

describe('RFC 3629, sections 3, 4 and 10: sequences that are not UTF-8 [memory]', () => {
  //  what                                     bytes after "ab\n"          line:column
  it.each([
    ['a continuation byte alone', [0x80], '2:1'],
    ['a first byte without its second', [0xc3], '2:1'],
    ['a third byte missing before a letter', [0x61, 0xe2, 0x82, 0x62], '2:2'],
    ['overlong NUL (C0 80)', [0xc0, 0x80], '2:1'],
    ['overlong "/" (C0 AF)', [0xc0, 0xaf], '2:1'],
    ['overlong in three bytes (E0 80 AF)', [0xe0, 0x80, 0xaf], '2:1'],
    ['a UTF-16 surrogate (ED A0 80)', [0xed, 0xa0, 0x80], '2:1'],
    ['beyond U+10FFFF (F4 90 80 80)', [0xf4, 0x90, 0x80, 0x80], '2:1'],
    ['a byte that never occurs (FF)', [0x61, 0x62, 0xff], '2:3'],
    ['the beginning of U+FFFD and no more (EF BF)', [0xef, 0xbf], '2:2'],
  ])('%s', (_, bytes, place) => {
    const { source, problems } = decode({
      file: 'a.md',
      bytes: Uint8Array.from([0x61, 0x62, 0x0a, ...bytes]),
      link: 'no',
    });
    expect(source).toBeNull();
    expect(problems.map(({ code, line, column }) => `${code} ${line}:${column}`)).toEqual([
      `not-utf8 ${place}`,
    ]);
  });

  it('takes U+FFFD itself, and characters of two, three and four bytes', () => {
    const { source } = decode({
      file: 'a.md',
      bytes: new TextEncoder().encode('\ufffd é 語 🦦'),
      link: 'no',
    });
    expect(source?.text).toBe('\ufffd é 語 🦦');
  });
});

describe('Unicode PropList, Bidi_Control [secondary]', () => {
  const BIDI_CONTROL = [
    0x061c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069,
  ];

  it('is refused whole, and nothing beside it', () => {
    const all = Array.from({ length: 0x2100 }, (_, code) => code).filter((code) =>
      badCharacters(String.fromCodePoint(code)).some(({ name }) => name.endsWith('the direction of text')),
    );
    expect(all).toEqual(BIDI_CONTROL);
  });
});
