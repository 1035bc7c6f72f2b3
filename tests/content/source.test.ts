import { describe, expect, it } from 'vitest';
import { decode } from '../../src/content/source.ts';
import { placeAt, sourceText } from '../../src/content/sourceText.ts';
import { fileOf } from './sample.ts';

describe('decode', () => {
  it('takes off the byte order mark and ends lines with a line feed', () => {
    expect(decode(fileOf('a.md', '\ufeffone\r\ntwo\tthree\r\n')).source?.text).toBe('one\ntwo\tthree\n');
  });

  it('refuses a carriage return alone, a byte order mark inside, and separators of lines', () => {
    const { problems } = decode(fileOf('a.md', 'a\rb\n\ufeffc\n\u2028d'));
    expect(problems.map(({ code, line, column }) => `${code} ${line}:${column}`)).toEqual([
      'bad-character 1:2',
      'bad-character 2:1',
      'bad-character 3:1',
    ]);
  });

  it('takes 256 kB and no byte more', () => {
    expect(decode(fileOf('a.md', 'a'.repeat(256 * 1024))).problems).toEqual([]);
    expect(decode(fileOf('a.md', 'a'.repeat(256 * 1024 + 1))).problems[0]?.code).toBe('too-large');
  });

  it('sees UTF-16 without a byte order mark', () => {
    const bytes = Uint8Array.from(Buffer.from('---\n', 'utf16le'));
    expect(decode({ file: 'a.md', bytes, link: 'no' }).problems[0]?.found).toBe('UTF-16');
  });

  it('stops counting bad characters at twenty', () => {
    expect(decode(fileOf('a.md', '\u0007'.repeat(1000))).problems).toHaveLength(20);
  });
});

describe('placeAt', () => {
  const source = sourceText('a.md', 'ab\n\n🦦c');

  it.each([
    [0, '1:1'],
    [2, '1:3'],
    [3, '2:1'],
    [4, '3:1'],
    [6, '3:3'],
    [7, '3:4'],
    [99, '3:4'],
    [-1, '1:1'],
  ])('offset %i is %s', (offset, place) => {
    const { line, column } = placeAt(source, offset);
    expect(`${line}:${column}`).toBe(place);
  });
});
