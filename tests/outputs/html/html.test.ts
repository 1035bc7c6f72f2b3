import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { html, join, trusted } from '../../../src/outputs/html/html.ts';
import { tagsOf } from './readBack.ts';

// Shapes of the OWASP cross-site scripting prevention sheet: text and quoted attributes (common practice).
const NAUGHTY = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</style><script>alert(1)</script>',
  '<!-- --> <![CDATA[ ]]>',
  '&lt;b&gt; &amp;amp; &#60;script&#62;',
  '{{constructor}} ${1} `x`',
  '\u202egnp.exe \u2066x\u2069',
];

describe('html', () => {
  it.each(NAUGHTY)('keeps %j as text between tags and in quotes', (text) => {
    const { markup } = html`<p title="${text}">${text}</p>`;
    expect(tagsOf(markup)).toEqual([{ name: 'p', attributes: { title: text }, text }]);
  });

  it('gives back every text it was given, and no tag from it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const shown = text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g, '\ufffd');
        expect(tagsOf(html`<p title="${text}">${text}</p>`.markup)).toEqual([
          { name: 'p', attributes: { title: shown }, text: shown },
        ]);
      }),
      { seed: 5 },
    );
  });

  it('writes a control character, an error in HTML, as the replacement character', () => {
    expect(html`${'a\u0000b\u001bc\u0085d\te\nf'}`.markup).toBe('a\ufffdb\ufffdc\ufffdd\te\nf');
  });

  it('takes numbers, markup and lists of markup as they are', () => {
    const items = ['a', '<b>'].map((text) => html`<li>${text}</li>`);
    // prettier-ignore
    const { markup } = html`<ul id="x-${7}">${items}</ul>${trusted('<hr>')}`;
    expect(markup).toBe('<ul id="x-7"><li>a</li><li>&lt;b&gt;</li></ul><hr>');
    expect(join(items, ' & ').markup).toBe('<li>a</li> &amp; <li>&lt;b&gt;</li>');
  });

  it('shortens the indentation of its own text, never that of a value', () => {
    // prettier-ignore
    const { markup } = html`<p>
      ${'two\n   lines'}
    </p>`;
    expect(markup).toBe('<p>\ntwo\n   lines\n</p>');
  });

  it('leaves no white space where none is shown, and keeps it where it parts words', () => {
    // prettier-ignore
    const { markup } = html`<table>
      <tr>
        <th>${'a'}</th>
        <td>
          <b>b</b>
          <i>c</i>
        </td>
      </tr>
    </table>
    <p>d</p>
    <p>${'\n<div>\n'}</p>`;
    expect(markup).toBe(
      '<table><tr><th>a</th><td><b>b</b>\n<i>c</i></td></tr></table><p>d</p>\n<p>\n&lt;div&gt;\n</p>',
    );
  });

  it.each([
    ['undefined', undefined],
    ['null', null],
    ['true', true],
    ['NaN', Number.NaN],
    ['an object', { markup: '<b>' }],
    ['a list of plain text', ['a']],
  ])('throws where the value is %s', (_, value) => {
    expect(() => html`<td>${value as unknown as string}</td>`).toThrow(
      /instead of text or markup after: <td>/,
    );
  });

  it('throws where an attribute has no quotes', () => {
    expect(() => html`<p id=${'x'}>y</p>`).toThrow(/without quotes: <p id=/);
  });
});
