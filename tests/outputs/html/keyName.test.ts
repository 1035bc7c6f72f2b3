import { describe, expect, it } from 'vitest';
import { withKeyNames } from '../../../src/outputs/html/parts/keyName.ts';
import { html } from '../../../src/outputs/html/html.ts';

const shown = (text: string) => html`${withKeyNames(text)}`.markup;

describe('a name of a key parts where a word of it begins', () => {
  it.each([
    ['runDaysInRowBelowStage', 'run<wbr />Days<wbr />In<wbr />Row<wbr />Below<wbr />Stage'],
    ['picture.frames[].offGroundCm', 'picture.<wbr />frames[].<wbr />off<wbr />Ground<wbr />Cm'],
    ['emergency.<name>.urgentAdvice', 'emergency.<wbr />&lt;name&gt;.<wbr />urgent<wbr />Advice'],
    ['one of tests.0 and hipFlexionDeg', 'one of tests.0 and hip<wbr />Flexion<wbr />Deg'],
  ])('%s', (text, markup) => {
    expect(shown(text)).toBe(markup);
  });

  it.each(['Wednesday', 'walk-run. Then easy', 'a < b', 'McConnell 2004, PubMed 15207508', '2026-11-24'])(
    'a sentence stays as it is: %s',
    (text) => {
      expect(shown(text)).not.toContain('<wbr />');
      expect(shown(text)).toBe(html`${text}`.markup);
    },
  );
});
