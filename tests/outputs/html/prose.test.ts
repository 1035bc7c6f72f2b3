import { describe, expect, it } from 'vitest';
import type { Inline } from '../../../src/content/prose/block.ts';
import { proseHtml } from '../../../src/outputs/html/parts/prose.ts';
import { html } from '../../../src/outputs/html/html.ts';

const linkTo = (href: string): Inline => ({ kind: 'link', href, children: [{ kind: 'text', text: 'more' }] });

function shown(href: string, up: string | null): string {
  const blocks = [{ kind: 'paragraph', text: [linkTo(href)] }] as const;
  return html`${proseHtml([{ heading: '', blocks }], 3, up)}`.markup.trim();
}

describe('a link in prose', () => {
  it.each([
    ['advice/sitting.md', '../', '<p><a href="../advice/sitting.html">more</a></p>'],
    ['exercises/bridges/low.md', '../', '<p><a href="../exercises/low.html">more</a></p>'],
    ['clinic.md', '../', '<p><a href="../index.html">more</a></p>'],
    ['advice/sitting.md', null, '<p>more</p>'],
    ['tel:112', null, '<p><a href="tel:112" rel="noreferrer noopener">more</a></p>'],
    [
      'https://a.example/x.md',
      '../',
      '<p><a href="https://a.example/x.md" rel="noreferrer noopener">more</a></p>',
    ],
  ])('to %s, with the public folder at %s', (href, up, markup) => {
    expect(shown(href, up)).toBe(markup);
  });
});
