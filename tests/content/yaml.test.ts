import { describe, expect, it } from 'vitest';
import { sourceText } from '../../src/content/sourceText.ts';
import { readYaml } from '../../src/content/yaml.ts';

const read = (text: string) => readYaml(sourceText('a.md', text), text, 0);
const codes = (text: string) => read(text).problems.map(({ code, path }) => `${code} ${path}`);

describe('readYaml', () => {
  it('never makes an object with another prototype', () => {
    const { value } = read('a: { __proto__: { b: 1 }, c: 2 }');
    expect(value).toEqual({ a: { c: 2 } });
    expect(Object.getPrototypeOf((value as { a: object }).a)).toBe(Object.prototype);
  });

  it('takes constructor and toString for keys like any other', () => {
    expect(read('constructor: 1\ntoString: 2').value).toEqual({ constructor: 1, toString: 2 });
  });

  it('tells a key written twice in two ways', () => {
    expect(codes('1: a\n"1": b\n')).toEqual(['duplicate-key 1']);
  });

  it('has no value where an alias would have to be resolved', () => {
    expect(read('a: &x 1\nb: *x').value).toBeUndefined();
    expect(codes('a: &x 1\nb: *x')).toEqual(['alias a', 'alias b']);
  });

  it('reads 4,000 keys in a moment', () => {
    const keys = Array.from({ length: 4_000 }, (_, index) => `k${index}: 1`).join('\n');
    expect(Object.keys(read(keys).value as object)).toHaveLength(4_000);
  });

  it.each([
    ['brackets', '['.repeat(1000)],
    ['braces', '{a: '.repeat(1000)],
    ['marks of lists in a line', `${'- '.repeat(1000)}x`],
    ['marks of keys in a line', '? '.repeat(60_000)],
    ['indents', Array.from({ length: 300 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
  ])('refuses deep %s without parsing them', (_, text) => {
    expect(codes(text)).toEqual(['yaml ']);
    expect(read(text).contents).toBeNull();
  });

  it('reads what real files nest', () => {
    expect(read('a:\n  - b:\n      c: [{ d: { e: [1] } }]\n').value).toEqual({
      a: [{ b: { c: [{ d: { e: [1] } }] } }],
    });
  });
});
