import { cellsFor } from '../../../src/decisions/session/cells/angleCell.ts';
import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { labelsOf } from '../../../src/messages/en/labels.ts';
import { type Programme } from '../../../src/programme/programme.ts';
import type { Section } from '../../../src/messages/shapes.ts';
import { assets } from './assets.ts';
import { programmes, reworded } from './programmes.ts';
import { squeezed, tagsOf, wordsOf } from './readBack.ts';
import { SECTIONS } from '../../programme/leafletText.ts';

describe.each(programmes)('the leaflet of %s', (_, programme) => {
  const markup = leafletHtml(programme, assets);
  const tags = tagsOf(markup);

  it('has every dosage cell of every step once, with its value and its words', () => {
    const shown = tags
      .filter(({ attributes }) => 'data-cell' in attributes)
      .map(({ attributes: a, text }) => [
        a['data-step'],
        a['data-card'],
        a['data-cell'],
        a['data-value'],
        text,
      ]);
    const wanted = programme.steps.flatMap(({ prescriptions }) =>
      prescriptions.flatMap(({ cells }) =>
        cells.map(({ step, card, cell, value, text }) => [`${step}`, card, cell, `${value ?? ''}`, text]),
      ),
    );
    expect(shown.map(String).sort()).toEqual(wanted.map(String).sort());
    expect(wanted.length).toBe(
      cellsFor('hipFlexion').length * programme.steps.flatMap(({ prescriptions }) => prescriptions).length,
    );
  });

  it('shows the mark of its make in the foot, and none without one', () => {
    const foot = leafletHtml({ ...programme, mark: '0a1b2c3d' }, assets).split('<footer')[1] ?? '';
    expect(squeezed(foot)).toContain('<p data-mark="0a1b2c3d">Mark 0a1b2c3d</p>');
    expect(markup).not.toContain('data-mark');
  });

  it('names each amount of a coming step, and sets no list of nothing', () => {
    const lists = markup.match(/<dl[^>]*>[^]*?<\/dl>/g) ?? [];
    expect(lists.length).toBeGreaterThan(2);
    for (const list of lists) {
      const shown = list.replace(/<(d[td]) hidden[^>]*><\/\1>/g, '');
      expect(list).toMatch(/<dd/);
      expect(shown.match(/<dt>[^<]+<\/dt>\s<dd [^>]+>[^<]+<\/dd>/g) ?? []).toHaveLength(
        shown.split('<dd').length - 1,
      );
    }
  });

  it('has them all when a coming exercise is new in all its numbers', () => {
    const steps = programme.steps.map(({ prescriptions, ...step }) => ({
      ...step,
      prescriptions: prescriptions.map((one) => ({
        ...one,
        news: one.cells.flatMap(({ cell, text }) => (text === '' ? [] : [cell])),
      })),
    }));
    const cellsIn = (page: string) => tagsOf(page).filter(({ attributes }) => 'data-cell' in attributes);
    expect(cellsIn(leafletHtml({ ...programme, steps }, assets))).toHaveLength(cellsIn(markup).length);
  });

  it('shows every word the programme has for the patient', () => {
    const words = wordsOf(markup);
    expect(textsOf(programme).filter((text) => !words.includes(squeezed(text)))).toEqual([]);
  });

  it('shows no word but those and the fixed labels', () => {
    const known = [...textsOf(programme), ...labelTexts(programme)]
      .filter((text) => text !== '')
      .map(squeezed)
      .sort((a, b) => b.length - a.length);
    let rest = ` ${squeezed(
      markup
        .replace(/<(style|script)\b[^>]*>[^]*?<\/\1>/g, '')
        .replace(/<svg[^]*?<\/svg>/g, '')
        .replace(/<\/?(span|bdi|a)\b[^>]*>/g, '')
        .replace(/<[^>]*>/g, '\n'),
    )} `;
    for (const text of known) rest = rest.replaceAll(escapedLike(text), ' ');
    expect(rest.replace(/[\s,]+/g, '')).toBe('');
  });

  it('lets run only what its policy has the hash of', () => {
    const policy = tags.find(({ attributes }) => attributes['http-equiv'] === 'Content-Security-Policy')!
      .attributes['content']!;
    for (const [name, count] of [
      ['style', 1],
      ['script', 3],
    ] as const) {
      const hashes = [...markup.matchAll(new RegExp(`<${name}>([^]*?)</${name}>`, 'g'))].map(
        ([, text]) => `'sha256-${createHash('sha256').update(text!, 'utf8').digest('base64')}'`,
      );
      expect(hashes).toHaveLength(count);
      expect(policy.split('; ')).toContain(`${name}-src ${hashes.join(' ')}`);
    }
    expect(policy).toContain(`default-src 'none'`);
    expect(policy).not.toContain('unsafe');
    expect(policy.split('; ')).toEqual(expect.arrayContaining([`form-action 'none'`, `base-uri 'none'`]));
  });

  it('asks for nothing, sends nothing, styles nothing by attribute', () => {
    expect(markup).not.toMatch(/\sstyle="|url\(\s*['"]?http|\son\w+="|<(iframe|form|object|embed|base)\b/);
    const addresses = tags
      .flatMap(({ attributes }) => [attributes['href'], attributes['src']])
      .filter((a) => a !== undefined);
    expect(addresses.filter((address) => !/^(#|data:|https:|mailto:|tel:)/.test(address))).toEqual([]);
    const named = Object.fromEntries(tags.map(({ attributes: a }) => [a['name'], a['content']]));
    expect(named['robots']).toContain('noindex');
    expect(named['referrer']).toBe('no-referrer');
    expect(tags.find(({ name }) => name === 'html')!.attributes['lang']).toBe(programme.language);
  });

  it('has every address it leads to, and no id twice', () => {
    const ids = tags.map(({ attributes }) => attributes['id']).filter((id) => id !== undefined);
    expect(ids.length).toBe(new Set(ids).size);
    const leads = tags.map(({ attributes }) => attributes['href']).filter((href) => href?.startsWith('#'));
    expect(leads.filter((href) => !ids.includes(href!.slice(1)))).toEqual([]);
  });

  it('has headings in order, one of the first level', () => {
    const levels = tags.flatMap(({ name }) => (/^h[1-6]$/.test(name) ? [Number(name[1])] : []));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
  });

  it('wraps the names in bdi', () => {
    const names = tags.filter(({ name }) => name === 'bdi').map(({ text }) => text);
    expect(names).toEqual(expect.arrayContaining([programme.clinic.name, programme.clinician]));
  });

  it('stays under 220 KB, and 80 KB packed', () => {
    expect(Buffer.byteLength(markup)).toBeLessThan(220_000);
    expect(gzipSync(markup).byteLength).toBeLessThan(80_000);
  });

  it('gives the same text again', () => {
    expect(leafletHtml(programme, assets)).toBe(markup);
  });

  it('keeps its elements whatever the words are', () => {
    const naughty = leafletHtml(
      reworded(programme, (text) => `${text} </td><script>1</script>"'&`),
      assets,
    );
    const harmless = leafletHtml(
      reworded(programme, (text) => `${text} 1 harmless words`),
      assets,
    );
    expect(shape(naughty)).toEqual(shape(harmless));
  });

  it('is not made when a dose is missing', () => {
    const broken = { ...programme, exercises: [{ ...programme.exercises[0], doseSign: undefined }] };
    expect(() => leafletHtml(broken as unknown as Programme, assets)).toThrow(TypeError);
    expect(() => leafletHtml({ ...programme, steps: [] }, assets)).toThrow(/no step is the present one/);
  });
});

function shape(markup: string): string[] {
  return tagsOf(markup).map(({ name, attributes }) => [name, ...Object.keys(attributes)].join(' '));
}

/** Everything a patient must be able to read, as the programme words it. */
function textsOf(programme: Programme): string[] {
  const { exercises, steps, named, advice, log, nextSession, emergency, clinic } = programme;
  return [
    programme.title, programme.runningLine, programme.dates, programme.clinician, clinic.name, ...clinic.contact,
    ...programme.opening, ...programme.notice, nextSession.heading, nextSession.when, nextSession.minutes,
    emergency.heading, emergency.call, ...emergency.lines, ...emergency.then,
    ...exercises.flatMap((one) => [
      one.title, one.side, one.dose, one.doseWords, ...one.howFar, ...one.cautions,
      ...[...one.facts, ...(one.between === null ? [] : [one.between])].flatMap(({ label, text }) => [label, text]),
      ...(one.figures === null ? [] : [one.figures.alt, ...one.figures.captions, ...(one.figures.legend === null ? [] : [one.figures.legend])]), ...proseTexts(one.body),
    ]),
    ...steps.flatMap((step) => [
      ...(step.present ? [] : [step.heading, step.caption, step.change, ...step.goOnWhen]),
      ...step.prescriptions.flatMap(({ title, cells }) => [title, ...cells.map(({ text }) => text)]),
    ]),
    ...SECTIONS.flatMap((name) => sectionTexts(programme[name])),
    ...named.exercises.flatMap((one) => [
      named.heading, one.title, one.where, one.side, ...one.cautions, ...proseTexts(one.body),
      ...(one.figures === null ? [] : [one.figures.alt, ...one.figures.captions.slice(-1)]),
    ]),
    ...advice.flatMap(({ heading, body }) => [heading, ...proseTexts(body)]),
    log.heading, log.hint, ...log.columns, ...log.days.flatMap(({ label, planned }) => [label, planned]),
  ]; // prettier-ignore
}

function labelTexts(programme: Programme): string[] {
  const labels = Object.values(labelsOf(programme.language).leaflet) as string[];
  return [...labels, ...programme.steps.flatMap(({ columns }) => Object.values(columns))];
}

function sectionTexts({ heading, parts }: Section): string[] {
  if (parts.length === 0) return [];
  return [
    heading,
    ...parts.flatMap((part) => {
      if (part.kind === 'paragraph') return [part.text];
      if (part.kind === 'list') return part.entries;
      return [part.table.caption, ...part.table.columns, ...part.table.rows.flat()];
    }),
  ];
}

/** The text pieces of a block tree, read without the page's own walk: every `text` that is a string. */
function proseTexts(body: unknown): string[] {
  if (Array.isArray(body)) return body.flatMap(proseTexts);
  if (typeof body !== 'object' || body === null) return [];
  return Object.entries(body).flatMap(([key, value]) =>
    typeof value === 'string' ? (key === 'text' || key === 'heading' ? [value] : []) : proseTexts(value),
  );
}

function escapedLike(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
