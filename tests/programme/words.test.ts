/**
 * The words of the leaflet (house rules 9): none of the trade's, all of what must be said, and no harder to read than
 * school grade 8 by two published formulas, reckoned by libraries that are not ours.
 */
import { fleschKincaid } from 'flesch-kincaid';
import { smogFormula } from 'smog-formula';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import type { Programme } from '../../src/programme/programme.ts';
import { leafletLines, labelLines, ownLines } from './leafletText.ts';
import { NO_KIT, person, RUNNER, testedSet, ALL_CLEAR, FULL_KIT } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

const leaflets: readonly (readonly [name: string, programme: Programme])[] = [
  ['stage 1, nothing at home', programmeOf(person({ stage: 1, kit: NO_KIT }))],
  ['stage 2', programmeOf(person({ running: RUNNER, testedSets: [testedSet('hip-hinge', 8, 10, 4)] }))],
  [
    'stage 3 by feel, both sides',
    programmeOf(person({ stage: 3, side: 'both', worseSide: 'left', running: RUNNER })),
  ],
  [
    'stage 4, hills and speed',
    programmeOf(person({ stage: 4, running: { ...RUNNER, hills: true, speed: true } })),
  ],
  [
    'end of treatment',
    programmeOf(
      person({
        stage: 'keepGoing',
        tests: [{ test: 'single-leg-hinge', pain: 1 }],
        goals: [{ what: 'run', doneTimes: 2 }],
      }),
    ),
  ],
  [
    'a runner without pain',
    programmeOf(
      person({
        protocol: 'runner-strength',
        usualMorningPain: 0,
        tests: [{ test: 'single-leg-hinge', pain: 0 }],
        running: RUNNER,
      }),
    ),
  ],
  [
    'light holds, no sitting',
    programmeOf(
      person({
        screen: { ...ALL_CLEAR, oralSteroid: 'yes', hernia: 'yes' },
        clearances: [
          { flag: 'oralSteroid', by: 'doctor', on: person().seenOn, decision: 'light holds may go on' },
        ],
        sitting: { toleranceMinutes: 3, fixedBlocksMinutes: [50] },
        doesNow: [
          { what: 'yoga', times: 1 },
          { what: 'rowing', times: 1 },
          { what: 'choir', times: 1 },
        ],
        changedBefore: ['hills', 'stretching', 'poor-sleep', 'break'],
      }),
    ),
  ],
  [
    'under 18',
    programmeOf(
      person({
        ageYears: 16,
        clearances: [
          {
            flag: 'suddenOnsetUnder18',
            by: 'doctor',
            on: person().seenOn,
            decision: 'growth plate considered',
          },
        ],
      }),
    ),
  ],
  [
    'irritable, blood pressure, hernia not asked',
    programmeOf(
      person({
        stage: 1,
        irritability: 'high',
        usualMorningPain: 5,
        screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes', hernia: 'notAsked' },
      }),
    ),
  ],
  [
    'tablets, antibiotic and injection',
    programmeOf(
      person({
        screen: { ...ALL_CLEAR, oralSteroid: 'yes', fluoroquinolone: 'yes', recentInjection: 'notAsked' },
        clearances: (['oralSteroid', 'fluoroquinolone', 'recentInjection'] as const).map((flag) => ({
          flag,
          by: 'doctor',
          on: person().seenOn,
          decision: 'light holds may go on',
        })),
      }),
    ),
  ],
  ['30 weeks pregnant', programmeOf(person({ pregnancy: { weeks: 30 }, stage: 2, running: RUNNER }))],
  ['8 weeks after birth', programmeOf(person({ afterBirth: { weeks: 8 }, stage: 2, running: RUNNER }))],
  [
    'pregnant or after birth, weeks not recorded',
    programmeOf(person({ cannotDo: ['pregnant-or-postpartum'], stage: 1 })),
  ],
  [
    'a driver who cannot kneel, no kit',
    programmeOf(
      person({
        stage: 1,
        cannotDo: ['kneel'],
        kit: NO_KIT,
        sitting: { toleranceMinutes: 20, fixedBlocksMinutes: [180] },
        doesNow: [
          { what: 'driving', times: 5 },
          { what: 'gardening', times: 1 },
        ],
      }),
    ),
  ],
  ['walk and run', programmeOf(person({ running: { ...RUNNER, decision: 'walk-run' }, kit: FULL_KIT }))],
  [
    'the gluteal protocol',
    programmeOf(person({ protocol: 'gluteal-tendon', tests: [{ test: 'week-one-exercises', pain: 2 }] })),
  ],
];

describe('words that are not for patients', () => {
  // House rules 9, word for word, and what a sheet of the trade would say instead of a sentence.
  const BANNED = [
    'stage',
    'cap',
    'compression',
    'demand',
    'reserve',
    'RM',
    'damaged',
    'torn',
    'safe',
    'dangerous',
    'risk',
    'BW',
    'NaN',
    'undefined',
    'null',
    'notAsked',
  ];

  it.each(leaflets)('stand nowhere on: %s', (_, programme) => {
    const found = [...leafletLines(programme), ...labelLines(programme)].flatMap((line) =>
      BANNED.filter((word) =>
        new RegExp(`\\b${word}s?\\b`, word === word.toUpperCase() ? '' : 'i').test(line),
      ).map((word) => `${word}: ${line}`),
    );
    expect(found).toEqual([]);
  });

  it.each(leaflets)('no percentages and no share of body weight on: %s', (_, programme) => {
    expect(ownLines(programme).filter((line) => /%|body weight/i.test(line))).toEqual([]);
  });
});

describe('what must be said', () => {
  const SAID: readonly (readonly [what: string, pattern: RegExp])[] = [
    ['bending is normal and comes back', /Bending is normal, and it comes back/],
    ['sore is not harmed', /Sore is not the same as harmed/],
    ['turning the volume down is no ban', /turn the volume down.*not a ban/],
    ['tingling in the leg stops an exercise', /Tingling or numbness down the leg: stop/],
    ['the first week shows what is usual, and the table holds in it', /Use this table from day one/],
  ];

  it.each(leaflets)('stands on: %s', (_, programme) => {
    const text = ownLines(programme).join('\n');
    expect(SAID.filter(([, pattern]) => !pattern.test(text)).map(([what]) => what)).toEqual([]);
  });

  it('hard seats are not banned for ever, whatever is tolerated', () => {
    for (const toleranceMinutes of [0, 4, 5, 30, 300]) {
      const text = ownLines(programmeOf(person({ sitting: { toleranceMinutes } }))).join('\n');
      expect(text).toContain('Hard seats are not banned for ever');
    }
  });

  it('with nothing at home: what to use instead', () => {
    const advice = ({ kit }: { kit: typeof NO_KIT }) =>
      programmeOf(person({ kit })).advice.map(({ id }) => id);
    expect(advice({ kit: NO_KIT })).toContain('nothing-at-home');
    expect(advice({ kit: FULL_KIT })).not.toContain('nothing-at-home');
    expect(advice({ kit: { ...NO_KIT, rucksack: true } })).not.toContain('nothing-at-home');
  });
});

describe('how far', () => {
  it.each(leaflets)('is something a patient can see alone, on: %s', (_, programme) => {
    for (const { title, howFar } of programme.exercises) {
      expect(howFar[0], title).toBeTruthy();
      expect(
        howFar.filter((text) => /°|-\d/.test(text)),
        title,
      ).toEqual([]);
    }
  });
});

describe('reading grade', () => {
  const MOST_GRADE = 8;

  // A point ends a sentence, a colon or a semicolon does not.
  function grades(lines: readonly string[]) {
    const sentences = lines
      .flatMap((line) => line.replace(/^[#\s-]+/, '').split(/[.!?](?:\s|$)/))
      .map((sentence) => sentence.match(/[A-Za-z][A-Za-z'’]*/g) ?? [])
      .filter((words) => words.length > 0);
    const words = sentences.flat();
    const syllables = words.map((word) => Math.max(1, syllable(word)));
    return {
      fleschKincaid: fleschKincaid({
        sentence: sentences.length,
        word: words.length,
        syllable: syllables.reduce((sum, count) => sum + count, 0),
      }),
      smog: smogFormula({
        sentence: sentences.length,
        polysillabicWord: syllables.filter((count) => count >= 3).length,
      }),
    };
  }

  // Running prose alone, where a point is a point: headings, tables, labels and single words left out.
  function prose(programme: Programme): string[] {
    return leafletLines(programme).filter(
      (line) => /[.!?]$/.test(line) && !/[|·]|^#|^- Hold|kg|\d{4}/.test(line) && line.split(' ').length > 4,
    );
  }

  it.each(leaflets)('Flesch-Kincaid and SMOG of the prose at most 8: %s', (_, programme) => {
    const lines = prose(programme);
    expect(lines.length).toBeGreaterThan(60);
    const { fleschKincaid: grade, smog } = grades(lines);
    expect(grade).toBeLessThanOrEqual(MOST_GRADE);
    expect(smog).toBeLessThanOrEqual(MOST_GRADE);
  });

  it('the judges tell easy from hard', () => {
    const hard =
      'Progressive mechanotherapeutic rehabilitation necessitates individualised optimisation of tendinous loading parameters.';
    expect(grades([hard]).fleschKincaid).toBeGreaterThan(MOST_GRADE);
    expect(grades(['Bend your knees. Go slow. Stop if it hurts.']).fleschKincaid).toBeLessThan(3);
  });

  it('no long sentence of ours: 25 words at most', () => {
    const long = leaflets.flatMap(([, programme]) =>
      prose(programme).flatMap((line) =>
        line.split(/[.!?;:]\s/).filter((sentence) => sentence.split(/\s+/).length > 25),
      ),
    );
    expect([...new Set(long)]).toEqual([]);
  });

  it('is tried on every protocol of the library', () => {
    expect(new Set(leaflets.map(([, { record }]) => record.versions.protocol))).toEqual(
      new Set(shipped.protocols.keys()),
    );
  });
});

describe('what is said of the way', () => {
  it.each([3, 4] as const)("is no beginner's talk in stage %d", (stage) => {
    const text = leafletLines(programmeOf(person({ stage, running: RUNNER }))).join('\n');
    expect(text).not.toMatch(/we start with|still work|bend less for now/i);
    expect(text).toMatch(stage === 3 ? /the way back begins with/ : /It can take bending again/);
    expect(text).toMatch(/You need not do them all/);
  });
});
