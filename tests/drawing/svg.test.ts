import { describe, expect, it } from 'vitest';
import { PAINTS, type Drawing, type Paint } from '../../src/drawing/drawing.ts';
import { drawScene } from '../../src/drawing/scene.ts';
import { classesOf, paintRules, svgOf } from '../../src/drawing/svg.ts';
import { sceneOf } from './scenes.ts';

const small: Drawing = {
  viewBox: { x: 0, y: 0, width: 100, height: 50 },
  shapes: [
    { d: 'M0 0L100 0', fill: null, stroke: 'floor', width: 4, dash: [6, 3], cap: 'butt' },
    { d: 'M0 0L9 0L9 9Z', fill: 'body', stroke: 'paperWhite', width: 2, dash: null, cap: 'round' },
  ],
  labels: [
    { text: '< 5° & "straight"', x: 50, y: 20, anchor: 'middle', size: 12, paint: 'arc', weight: 'bold' },
  ],
};

describe('SVG text', () => {
  it('is the drawing, class by class', () => {
    expect(svgOf(small, 'Standing on one leg')).toBe(
      [
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50" role="img" aria-label="Standing on one leg" stroke-width="4">',
        '<path class="ln" stroke-dasharray="6 3" d="M0 0L100 0"/>',
        '<path class="fb lp" stroke-width="2" d="M0 0L9 0L9 9Z"/>',
        '<text class="fe" x="50" y="20" font-size="12" text-anchor="middle" font-weight="700">&lt; 5° &amp; &quot;straight&quot;</text>',
        '</svg>',
      ].join(''),
    );
  });

  it('keeps a name with a quote in it one attribute', () => {
    expect(svgOf(small, 'a "b" <c> & d')).toContain('aria-label="a &quot;b&quot; &lt;c&gt; &amp; d"');
  });

  it('is hidden from assistive technology when its text stands elsewhere', () => {
    expect(svgOf(small, null)).toContain('aria-hidden="true"');
    expect(svgOf(small, null)).not.toContain('role=');
  });

  it('stands alone when it is given its colours', () => {
    const colours = Object.fromEntries(PAINTS.map((paint) => [paint, `#${paint.length}00`])) as Record<
      Paint,
      string
    >;
    expect(svgOf(small, null, colours)).toContain('fill="#400" stroke="#1000" stroke-width="2"');
  });

  it('has a rule for every class, and none where nothing is filled', () => {
    const rules = paintRules((paint) => `var(--${paint})`);
    for (const paint of PAINTS) {
      expect(rules).toContain(`.${classesOf(paint, null)}{fill:var(--${paint})}`);
      expect(rules).toContain(`.${classesOf(null, paint)}{stroke:var(--${paint})}`);
    }
    expect(new Set(PAINTS.map((paint) => classesOf(paint, null))).size).toBe(PAINTS.length);
    expect(rules).toContain('path[class^=l]{fill:none}');
  });

  it('carries no style, id or script, so that a strict content policy admits it', () => {
    const text = drawScene(sceneOf('Split squat'))
      .map((drawing) => svgOf(drawing, 'x'))
      .join('');
    expect(text).not.toMatch(/ (style|id|on\w+)=|<script|<style|url\(/);
  });
});
