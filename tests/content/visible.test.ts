import { describe, expect, it } from 'vitest';
import { visible, visibleInLine, visibleJson } from '../../src/content/visible.ts';

describe('a text that is sent to a terminal', () => {
  it.each([
    // what                    as it comes                 as it is sent
    ['an escape that clears', 'a\u001b[2Jb', 'a<U+001B>[2Jb'],
    ['the bell', '\u0007', '<U+0007>'],
    ['eight-bit controls', '\u009b31m', '<U+009B>31m'],
    ['a turn of direction', 'fdp.\u202egpj', 'fdp.<U+202E>gpj'],
    ['isolates of direction', '\u2066a\u2069', '<U+2066>a<U+2069>'],
    ['a carriage return', 'good\rbad', 'good<U+000D>bad'],
    ['half a character', 'a\ud800b', 'a<U+D800>b'],
    ['plain words of any script', 'Łódź 橋 🦦 مركز', 'Łódź 橋 🦦 مركز'],
    ['lines', 'a\n\tb', 'a\n\tb'],
  ])('shows %s', (_, text, sent) => {
    expect(visible(text)).toBe(sent);
  });

  it('stays in its line, and on its screen', () => {
    expect(visibleInLine('a\nFix: b')).toBe('a<U+000A>Fix: b');
    const long = visibleInLine('x'.repeat(1_000_000));
    expect(long.length).toBeLessThan(1700);
    expect(long).toContain(' … ');
  });

  it('is the same value as JSON', () => {
    const value = { 'a\u202e\u0085': ['\u007f', 'é🦦', '\u2028'] };
    const sent = visibleJson(JSON.stringify(value));
    expect(JSON.parse(sent)).toEqual(value);
    expect(sent).not.toMatch(/[\u007f-\u009f\u2028\u202e]/);
  });
});
