/** Advice follows the person (house rules 11.11): nothing that needs what is not there, nothing that contradicts what to heed. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { CannotDo } from '../../src/content/schema/words.ts';
import { CIRCUMSTANCES } from '../../src/content/schema/advice.ts';
import { proseTexts } from '../../src/content/prose/plainText.ts';
import { fitted } from '../../src/decisions/person/personalAdvice.ts';
import { leafletLines, ownLines, sectionLines } from './leafletText.ts';
import { ALL_CLEAR, day, NO_KIT, person, RUNNER } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

/** With every card that fits, not the first few. */
const made = (different: Partial<Consult>) => programmeOf(person(different));
const CLEARED = (flag: Consult['clearances'][number]['flag']): Partial<Consult> => ({
  screen: { ...ALL_CLEAR, [flag]: 'yes' },
  clearances: [{ flag, by: 'doctor', on: person().seenOn, decision: 'light holds may go on' }],
});

const adviceText = (...holds: (typeof CIRCUMSTANCES)[number][]) =>
  [...shipped.advice.values()]
    .flatMap((card) => fitted(card, new Set(holds)) ?? [])
    .flatMap(({ title, body }) => [title, ...proseTexts(body).map(({ text }) => text)]);

describe('no advice of the library', () => {
  it.each([
    ['no-weights', /\bbags?\b|litre|kilogram|\bkg\b|rucksack|dumbbell|less weight|light weights/i],
    ['kneel', /kneel/i],
    ['get-to-the-floor', /\bkneel on\b/i],
    ['stand-on-one-leg', /swing/i],
    ['lie-supine', /on your back|while you lie down/i],
    ['gentle', /\bstrong|heav/i],
    ['no-running', /run easy|walk in place of running|hops|anything fast/i],
    ['pregnant', /fast running/i],
  ] as const)('says to someone with %s: %s', (holds, words) => {
    expect(adviceText(holds).filter((text) => words.test(text))).toEqual([]);
  });

  it('says other than the plan does: of weight where the bend opens, of days after fast work, of the way back', () => {
    const said = adviceText().join('\n');
    expect(said).not.toMatch(/less weight when you go deeper|clear days after fast work|one level easier/);
    expect(said).toMatch(/with the weight on your plan/);
    expect(said).toContain('Start again with the easier numbers');
  });

  it('is left without an entry, and some of it is there for everybody', () => {
    for (const holds of CIRCUMSTANCES) {
      expect(adviceText(holds).length).toBeGreaterThan(40);
      for (const card of shipped.advice.values())
        for (const { blocks } of fitted(card, new Set([holds]))?.body ?? [])
          expect(blocks, `${card.id}, ${holds}`).not.toEqual([]);
    }
  });
});

describe("a clinic's own card that asks for heavy work", () => {
  const [some] = shipped.advice.values();
  if (some === undefined) throw new Error('there must be advice');
  const own = (text: string) => ({
    ...some,
    notWhen: [],
    givesWay: [],
    body: [{ heading: 'In short', blocks: [{ kind: 'paragraph', text: [{ kind: 'text', text }] }] }] as const,
  });

  it.each(['Strong work pays.', 'Lift a little heavier each week.', 'Do a strong session.'])(
    '"%s" is left out for someone who takes care',
    (text) => {
      expect(fitted(own(text), new Set(['gentle']))).toBeNull();
      expect(fitted(own(text), new Set(['kneel']))).not.toBeNull();
    },
  );
});

describe('what to heed is said, and nothing says otherwise', () => {
  const BREATH = /Breathe out as you push\. Never hold your breath/;
  const CASES: readonly (readonly [string, Partial<Consult>, readonly RegExp[]])[] = [
    [
      'blood pressure',
      { screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes' } },
      [BREATH, /blood pressure is not under control/, /Stop at headache or dizziness/, /15 seconds at most/],
    ],
    [
      'blood pressure, not asked',
      { screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'notAsked' } },
      [BREATH, /not asked about your blood pressure yet/, /Stop at headache or dizziness/],
    ],
    [
      'blood pressure on the cannot-do list',
      { cannotDo: ['uncontrolled-blood-pressure'] },
      [BREATH, /blood pressure is not under control/],
    ],
    [
      'hernia',
      { screen: { ...ALL_CLEAR, hernia: 'yes' } },
      [BREATH, /You have a hernia/, /bulge grows or hurts/],
    ],
    [
      'steroid tablets',
      CLEARED('oralSteroid'),
      [/You take steroid tablets/, /plan is light/, /Ask the doctor who prescribed/, /stop, and be seen/],
    ],
    ['fluoroquinolone', CLEARED('fluoroquinolone'), [/fluoroquinolone/, /plan is light/, /Ask the doctor/]],
    ['injection', CLEARED('recentInjection'), [/an injection near the tendon/, /plan is light/]],
    [
      'pregnant',
      { pregnancy: { weeks: 12 } },
      [BREATH, /Ask your midwife or doctor/, /at once for these: bleeding/],
    ],
    ['after birth', { afterBirth: { weeks: 3 } }, [BREATH, /first 12 weeks after birth/, /you leak urine/]],
  ];

  it.each(CASES)('%s', (_, different, said) => {
    for (const running of [RUNNER, person().running]) {
      const programme = made({ ...different, running });
      const text = ownLines(programme).join('\n');
      for (const words of said) expect(text).toMatch(words);
      const lines = [
        ...programme.opening,
        ...programme.advice.flatMap(({ body }) => proseTexts(body).map((one) => one.text)),
      ];
      expect(lines.filter((line) => /\bstrong|heav/i.test(line))).toEqual([]);
    }
  });

  it('cleared blood pressure is still said, without the short holds', () => {
    const programme = made(CLEARED('uncontrolledBloodPressure'));
    expect(programme.precautions.parts.length).toBe(1);
    const text = ownLines(programme).join('\n');
    expect(text).toContain('has been high. It has been looked at since');
    expect(text).not.toMatch(/not under control yet|15 seconds at most/);
  });

  it('nothing is said where nothing is to be heeded', () => {
    expect(made({}).precautions.parts).toEqual([]);
    expect(made({ afterBirth: { weeks: 30 } }).opening.join(' ')).toContain('strong work');
  });
});

describe('why it hurts', () => {
  const hurtsLittle = { tests: [{ test: 'hip-hinge', pain: 1 }], usualMorningPain: 1 };
  it.each<[string, Partial<Consult>, string]>([
    [
      'a stage that holds the bend small',
      { stage: 3 },
      'So the way back begins with strong work and little bending.',
    ],
    ['a stage that does so no more', { ...hurtsLittle, stage: 4 }, 'It can take bending again.'],
    [
      'somebody who takes care',
      { pregnancy: { weeks: 20 }, stage: 2 },
      'So the way back begins with calm work and little bending.',
    ],
  ])('is true in %s', (_, different, expected) => {
    const said = made(different).opening.join(' ');
    expect(said).toContain(expected);
    expect(/little bending/.test(said)).not.toBe(/can take bending/.test(said));
    expect(said).not.toContain('still work');
  });
});

describe('whole leaflets', () => {
  it('say to bend less only in a stage that holds the bend small', () => {
    const tests = [{ test: 'hip-hinge', pain: 1 }];
    for (const stage of [1, 2, 3, 4] as const) {
      const said = leafletLines(made({ stage, tests, usualMorningPain: 1 })).join('\n');
      expect(said.includes('Bend only as far as your plan says'), String(stage)).toBe(stage < 4);
      expect(said.includes('Bend as far as your plan says'), String(stage)).toBe(stage === 4);
    }
  });

  it('ask for short sitting in a flare only where somebody can choose', () => {
    const sitting = { toleranceMinutes: 12 };
    const flare = (blocks: Partial<Consult['sitting']>) =>
      ownLines(made({ stage: 1, sitting: { ...sitting, ...blocks } })).join('\n');
    expect(flare({ fixedBlocksMinutes: [110] })).toContain('minutes at a time, wherever you can choose.');
    expect(flare({})).toMatch(/Sit for at most \d minutes at a time\./);
  });

  it('of someone who cannot kneel never say kneel', () => {
    const cannot: CannotDo[] = ['kneel'];
    for (const stage of [1, 2, 3] as const)
      for (const protocol of ['proximal-hamstring', 'gluteal-tendon']) {
        const tests =
          protocol === 'gluteal-tendon' ? [{ test: 'week-one-exercises', pain: 2 }] : person().tests;
        const doesNow = [{ what: 'gardening', times: 2 }];
        const programme = made({ protocol, tests, stage, cannotDo: cannot, doesNow });
        expect(leafletLines(programme).filter((line) => /kneel/i.test(line))).toEqual([]);
      }
  });

  it('of someone with nothing at home never ask to hang, fill or weigh anything', () => {
    for (const stage of [1, 2] as const) {
      const lines = leafletLines(made({ stage, kit: NO_KIT }));
      expect(lines.filter((line) => /hang a|fill a|kilogram|litre|rucksack/i.test(line))).toEqual([]);
    }
  });

  it('of a driver lean the seat back and plan stops, with each tendon', () => {
    for (const protocol of ['proximal-hamstring', 'gluteal-tendon']) {
      const tests =
        protocol === 'gluteal-tendon' ? [{ test: 'week-one-exercises', pain: 2 }] : person().tests;
      const programme = made({
        protocol,
        tests,
        sitting: { toleranceMinutes: 20, fixedBlocksMinutes: [240] },
        doesNow: [{ what: 'driving a van', times: 5 }],
      });
      const text = leafletLines(programme).join('\n');
      expect(text).toMatch(/back rest lean back a little/);
      expect(text).toMatch(/at each stop|stop often to walk/);
      expect(text).not.toMatch(/seat back fairly upright|back rest fairly upright/);
    }
  });
});

describe('sitting at the end of treatment', () => {
  const said = (sitting: Consult['sitting']) =>
    sectionLines(
      programmeOf(
        person({
          stage: 'keepGoing',
          discharge: { decidedBy: 'R. Sample', on: day('2026-11-23') },
          irritability: 'low',
          usualMorningPain: 0,
          tests: [{ test: 'hip-hinge', pain: 0 }],
          sitting,
        }),
      ).sitting,
    ).join('\n');

  it('is not as one likes where minutes are still counted', () => {
    expect(said({ toleranceMinutes: 30, goalMinutes: 90 })).toContain('up to 20 minutes');
    expect(said({ toleranceMinutes: 30, goalMinutes: 90 })).not.toContain('Sit as you like');
    expect(said({ toleranceMinutes: 120, goalMinutes: 60 })).toContain('Sit as you like, and get up often.');
  });
});
