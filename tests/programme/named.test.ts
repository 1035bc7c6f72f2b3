/** Every exercise the leaflet names can be done from the leaflet: picture, words and an address of its own. */
import { describe, expect, it } from 'vitest';
import { proseTexts } from '../../src/content/prose/plainText.ts';
import { leafletHtml } from '../../src/outputs/html/leaflet.ts';
import { whereText } from '../../src/messages/en/patient/named.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { assets } from '../outputs/html/assets.ts';
import { squeezed, tagsOf } from '../outputs/html/readBack.ts';
import { namelessTitles } from './leafletText.ts';
import { day, NO_KIT, person, RUNNER, testedSet } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

const titles = [...shipped.exercises.values()].map(({ title }) => title);

const CASES: readonly (readonly [string, Programme])[] = [
  ['stage 1', programmeOf(person({ stage: 1, usualMorningPain: 3 }))],
  [
    'stage 2 with runs',
    programmeOf(person({ running: RUNNER, testedSets: [testedSet('hip-hinge', 8, 10, 4)] })),
  ],
  ['stage 2, nothing at home', programmeOf(person({ stage: 2, kit: NO_KIT }))],
  ['stage 2, a harder version coming', programmeOf(person({ stage: 2, step: 3, minutesPerDay: 25 }))],
  ['stage 3, a harder version coming', programmeOf(person({ stage: 3, step: 7, minutesPerDay: 25 }))],
  ['stage 3', programmeOf(person({ stage: 3 }))],
  ['who cannot lie on the back', programmeOf(person({ stage: 1, cannotDo: ['lie-supine', 'lie-prone'] }))],
  ['30 weeks pregnant', programmeOf(person({ stage: 2, pregnancy: { weeks: 30 } }))],
  [
    'the gluteal protocol',
    programmeOf(person({ protocol: 'gluteal-tendon', tests: [{ test: 'week-one-exercises', pain: 2 }] })),
  ],
  [
    'keeping on',
    programmeOf(
      person({
        stage: 'keepGoing',
        discharge: { decidedBy: 'R. Sample', on: day('2026-11-20') },
        usualMorningPain: 0,
        tests: [{ test: 'hip-hinge', pain: 0 }],
      }),
    ),
  ],
];

describe.each(CASES)('the leaflet of %s', (_, programme) => {
  it('has the words of every exercise it names', () => {
    expect(namelessTitles(programme, titles)).toEqual([]);
  });

  it('has an address, a picture where there is one to draw, and how to begin and move', () => {
    const tags = tagsOf(leafletHtml(programme, assets));
    const ids = tags.flatMap(({ attributes }) => attributes['id'] ?? []);
    for (const { card, title, figures, body } of programme.named.exercises) {
      expect(ids, title).toContain(`named-${card}`);
      expect(figures !== null, title).toBe(shipped.exercises.get(card)?.movement !== null);
      expect(
        body.map(({ heading }) => heading),
        title,
      ).toEqual(expect.arrayContaining(['Set up', 'Move']));
    }
    const places = new Map([
      ...programme.named.exercises.map(({ title, card }): [string, string] => [title, `#named-${card}`]),
      ...programme.exercises.map(({ title }, at): [string, string] => [title, `#exercise-${at + 1}`]),
    ]);
    const links = tags.filter(
      ({ name, attributes }) => name === 'a' && attributes['href']?.startsWith('#named-'),
    );
    expect(links.map(({ attributes }) => attributes['href'])).toEqual(
      links.map(({ text }) => places.get(squeezed(text))),
    );
    for (const { card } of programme.named.exercises)
      expect(links.map(({ attributes }) => attributes['href'])).toContain(`#named-${card}`);
  });

  it('names no present exercise twice', () => {
    const present = programme.exercises.map(({ card }) => card);
    const named = programme.named.exercises.map(({ card }) => card);
    expect(named.filter((card) => present.includes(card))).toEqual([]);
    expect(new Set(named).size).toBe(named.length);
  });
});

describe('where an exercise is named', () => {
  it.each([
    [[{ kind: 'morning-check' }], 'For the morning check.'],
    [
      [{ kind: 'flare' }, { kind: 'step', step: 3 }, { kind: 'step', step: 2 }],
      'In a flare and later, from step 2 on.',
    ],
    [[{ kind: 'step', step: 2 }], 'Later, from step 2 on.'],
  ] as const)('%j', (places, text) => expect(whereText(places)).toBe(text));
});

it('what comes later is told shortly, what is done now in full', () => {
  const { named } = programmeOf(person({ stage: 2 }));
  const now = named.exercises.find(({ where }) => where.includes('morning check'));
  expect(now?.body.map(({ heading }) => heading)).toContain('Do it well');
  const shorter = CASES.flatMap(([, programme]) => programme.named.exercises).filter(({ where }) =>
    where.startsWith('Later'),
  );
  expect(shorter.length).toBeGreaterThan(0);
  for (const { body, cautions } of shorter) {
    expect(body.map(({ heading }) => heading)).toEqual(['Set up', 'Move']);
    expect(cautions).toEqual([]);
  }
});

describe('the words of a card', () => {
  const cards = [...shipped.exercises.values()];
  const wordsOf = ({ body, cautions }: (typeof cards)[number]) =>
    [...proseTexts(body).map(({ text }) => text), ...cautions].join('\n').toLowerCase();

  it('name no other card, for that one need not be on the leaflet', () => {
    const naming = cards.flatMap((card) =>
      cards
        .filter(({ id, title }) => id !== card.id && wordsOf(card).includes(title.toLowerCase()))
        .map(({ id }) => `${card.id} names ${id}`),
    );
    expect(naming).toEqual([]);
  });

  it('speak of taking a weight only where the sentence goes when there is none', () => {
    const always = cards.flatMap(({ id, cautions, withWeight }) =>
      cautions
        .filter((caution) => /\b(take|lift|hang|handed|fasten)\b.*\bweight\b/i.test(caution))
        .filter((caution) => !withWeight.some((sentence) => caution.includes(sentence)))
        .map((caution) => `${id}: ${caution}`),
    );
    expect(always).toEqual([]);
  });
});
