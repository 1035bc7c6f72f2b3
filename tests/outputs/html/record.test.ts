import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { sheets } from './sheets.ts';
import { keyWords } from '../../../src/outputs/html/record/keyWords.ts';
import { recordHtml } from '../../../src/outputs/html/record.ts';
import { assets } from './assets.ts';
import { programmes, reworded } from './programmes.ts';
import { squeezed, tagsOf, wordsOf } from './readBack.ts';

describe.each(programmes)('the record of %s', (_, programme) => {
  const markup = recordHtml(programme, assets);
  const tags = tagsOf(markup);
  const words = wordsOf(markup);
  const { record } = programme;

  it('has every dosage cell of every step once, with its value, rule and source', () => {
    const cells = programme.steps.flatMap(({ prescriptions }) => prescriptions.flatMap((one) => one.cells));
    const shown = tags
      .filter(({ attributes }) => 'data-cell' in attributes)
      .map(({ attributes: a, text }) => [
        a['data-step'],
        a['data-card'],
        a['data-cell'],
        a['data-value'],
        text,
      ]);
    const wanted = cells.map(({ step, card, cell, value, text }) => [
      `${step}`,
      card,
      cell,
      `${value ?? ''}`,
      text,
    ]);
    expect(shown.map(String).sort()).toEqual(wanted.map(String).sort());
    expect(
      cells.filter(({ rule, source }) => !words.includes(squeezed(rule)) || !words.includes(source.cite)),
    ).toEqual([]);
  });

  it('says what was found, what was decided, what was passed over and why', () => {
    const texts = [
      record.heading, ...programme.stage.because, ...record.effects, ...record.remarks, ...record.changes, ...record.note,
      ...record.week.gaveUp, ...record.week.days.flatMap(({ entries }) => entries),
      ...record.exercises.flatMap(({ title, because, remarks }) => [title, because, ...remarks]),
      ...record.passedOver.flatMap(({ title, slot, because }) => [title, slot, because]),
      ...[...record.findings, record.screen, record.cert].flatMap(({ columns, rows }) => [...columns, ...rows.flat()]),
      ...Object.values(record.versions), programme.emergency.call, ...programme.emergency.lines, ...programme.emergency.then, ...programme.notice,
      ...record.settings.columns, ...record.settings.rows.flatMap(([key = '', ...others]) => [keyWords(key), ...others]),
    ]; // prettier-ignore
    expect(texts.filter((text) => !words.includes(squeezed(text)))).toEqual([]);
  });

  it('says every reason in words', () => {
    expect(words).not.toContain('[object');
  });

  it('shows the estimates rounded, with the sentence that they are estimates', () => {
    const estimates = record.exercises.flatMap(({ estimate }) => (estimate === null ? [] : [estimate]));
    expect(estimates.length).toBeGreaterThan(0);
    for (const { compressionBw, hipMomentNm } of estimates) {
      expect(words).toContain(compressionBw.toFixed(2));
      expect(words).toContain(hipMomentNm.toFixed(0));
    }
    expect(words).toContain('What hurt overrides them.');
  });

  it('lets run only what its policy has the hash of, and asks for nothing', () => {
    for (const name of ['style', 'script']) {
      const hashes = [...markup.matchAll(new RegExp(`<${name}>([^]*?)</${name}>`, 'g'))].map(
        ([, text]) => `&#39;sha256-${createHash('sha256').update(text!, 'utf8').digest('base64')}&#39;`,
      );
      expect(markup).toContain(`${name}-src ${hashes.join(' ')};`);
    }
    expect(markup).not.toMatch(/\sstyle="|url\(\s*['"]?http|\son\w+="/);
  });

  it('has no id twice and its headings in order', () => {
    const ids = tags.map(({ attributes }) => attributes['id']).filter((id) => id !== undefined);
    expect(ids.length).toBe(new Set(ids).size);
    const levels = tags.flatMap(({ name }) => (/^h[1-6]$/.test(name) ? [Number(name[1])] : []));
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
  });

  it('keeps its elements whatever the words are; a chart only breaks its lines elsewhere', () => {
    const naughty = recordHtml(
      reworded(programme, (text) => `${text} </td><script>1</script>"'&`),
      assets,
    );
    const harmless = recordHtml(
      reworded(programme, (text) => `${text} 1 harmless words`),
      assets,
    );
    expect(shape(naughty)).toEqual(shape(harmless));
    const drawn = [...naughty.matchAll(/<svg[^]*?<\/svg>/g)].flatMap(([svg]) => tagsOf(svg));
    expect([...new Set(drawn.map(({ name }) => name))].sort()).toEqual(['path', 'svg', 'text']);
  });

  it('is not made when its exercises are not those of the step', () => {
    const broken = { ...programme, record: { ...record, exercises: [...record.exercises].reverse() } };
    expect(() => recordHtml(broken, assets)).toThrow(/the record's exercise 1 is/);
  });
});

function shape(markup: string): string[] {
  return tagsOf(markup.replace(/<svg[^]*?<\/svg>/g, '')).map(({ name, attributes }) =>
    [name, ...Object.keys(attributes)].join(' '),
  );
}

describe('keys as words', () => {
  it.each([
    ['stage 1.hipFlexionDeg', 'stage 1: hip flexion, °'],
    ['sitting.hardMinutes', 'sitting: hard minutes'],
    ['tensionBw', 'tension, body weights'],
    ['Pain in exercise at most', 'Pain in exercise at most'],
  ])('%s: %s', (key, words) => {
    expect(keyWords(key)).toBe(words);
  });

  it('leave no dotted name in the record', () => {
    for (const [, record] of sheets.filter(([name]) => name.includes('record')))
      expect(record.replace(/<(style|script)>[^]*?<\/\1>/g, '')).not.toMatch(/>[a-z0-9 -]+\.[a-z]+[A-Z]\w*</);
  });
});
