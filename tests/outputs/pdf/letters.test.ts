import { describe, expect, it } from 'vitest';
import { leafletPdf } from '../../../src/outputs/pdf/leaflet.ts';
import { letterRefusals, lettersMissing } from '../../../src/outputs/pdf/letters.ts';
import { otter } from '../../fixtures/programme.ts';
import { assets, fonts } from './make.ts';

describe('letters the typeface lacks', () => {
  it.each([
    ['plain words', 'Push the heels away: 3–4 × 8 at 45°, 20 % less', []],
    ['Latin letters with marks', 'Ångström Łódź Şahin naïve Zoë', []],
    ['signs that are drawn', 'go on → ☐ ☑ ✓ ✔ ← ↑ ↓', []],
    ['white space of any kind', 'a\u00a0b\u202fc\u2003d\te\nf', []],
    ['marks that join their letter', 'cafe\u0301', []],
    ['a mark that joins nothing', 'x\u0301', ['\u0301']],
    ['other scripts, each letter once', 'מָה 你好好', ['מ', '\u05b8', 'ה', '你', '好']],
    ['pictures', 'well done 🏃', ['🏃']],
    ['marks of direction', 'a\u202eb', ['\u202e']],
    ['controls', 'a\u0007b', ['\u0007']],
    ['the micro sign, which is not the Greek letter', '5 µm, 5 μm', ['µ']],
  ])('%s', (_, text, missing) => {
    expect(lettersMissing([text], fonts)).toEqual(missing);
  });

  it('refuses nothing in a programme that can be set', () => {
    expect(letterRefusals(otter, fonts)).toEqual([]);
  });

  it('names the file and the key a letter stands in, before anything is drawn', async () => {
    const programme = {
      ...otter,
      clinic: { ...otter.clinic, name: 'مركز' },
      clinician: 'ד"ר לוי',
      exercises: otter.exercises.map((one, at) => (at === 0 ? { ...one, title: '橋' } : one)),
      advice: otter.advice.map((one) => ({ ...one, heading: `${one.heading} 😀` })),
    };
    expect(
      letterRefusals(programme, fonts).map(({ code, kind, id, path }) => [code, kind, id, path]),
    ).toEqual([
      ['letter-not-in-font', 'clinic', 'clinic', ['name']],
      ['letter-not-in-font', 'consult', 'otter', []],
      ['letter-not-in-font', 'exercise', 'long-lever-bridge-hold', ['title']],
      ['letter-not-in-font', 'advice', 'why-it-hurts', []],
      ['letter-not-in-font', 'advice', 'sleep', []],
    ]);
    await expect(leafletPdf(programme, assets)).rejects.toThrow(
      'letter-not-in-font: U+0645, U+0631, U+0643, U+0632 in "مركز"',
    );
  });

  it('leaves alone what no leaflet prints', () => {
    const record = { ...otter.record, heading: '記録', note: ['🏃'] };
    expect(letterRefusals({ ...otter, record }, fonts)).toEqual([]);
  });
});
