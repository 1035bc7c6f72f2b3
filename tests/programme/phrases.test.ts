/** Sentences that carry numbers or are put together from parts. */
import { describe, expect, it } from 'vitest';
import { beganTexts, besideTexts } from '../../src/messages/en/patient/began.ts';
import { countedAs, type Counted } from '../../src/decisions/session/counted.ts';
import { doseSign, doseWords, feelText, tempoText } from '../../src/messages/en/patient/dose.ts';
import { landmarkText } from '../../src/messages/en/patient/landmarks.ts';
import { whatComesNextText } from '../../src/messages/en/patient/next.ts';
import { madeText } from '../../src/messages/en/patient/kit.ts';
import { changeText } from '../../src/messages/en/patient/steps.ts';
import type { StepChange, Rung } from '../../src/dosing/rung.ts';
import {
  clearDaysText,
  dayAndYear,
  listText,
  numberText,
  secondsText,
  shortDay,
  timesText,
  weekdayAndDay,
} from '../../src/messages/en/plain.ts';
import { day } from './person.ts';

describe('why it began', () => {
  it.each([
    [[], ['What changed before it began has not been written down. Tell us if something comes to mind.']],
    [['nothing-known'], ['No one thing started it, as far as we know; that is common.']],
    [
      ['hills'],
      ['In the weeks before it began, one thing was new: more hills. The tendon was not used to that yet.'],
    ],
    [
      ['speed', 'new-shoes'],
      [
        'In the weeks before it began, these were new: faster running and new shoes. Together that was more than the tendon was used to.',
      ],
    ],
    [['long-drives'], ['Long drives pressed the tendon on the bone more than before.']],
  ] as const)('%j', (changes, expected) => expect(beganTexts(changes)).toEqual(expected));

  it('is never more than three sentences of different kinds', () => {
    expect(beganTexts(['hills', 'stretching', 'break', 'stress', 'poor-sleep'])).toHaveLength(3);
  });
});

describe('what was new beside a sudden start', () => {
  it.each([
    [[], ['What changed before it began has not been written down. Tell us if something comes to mind.']],
    [['nothing-known'], ['As far as we know, nothing was new in the weeks before it.']],
    [
      ['hills'],
      ['In the weeks before it, one thing was new: more hills. Nobody can say whether it had a part in it.'],
    ],
    [
      ['speed', 'long-drives', 'break', 'stress'],
      [
        'In the weeks before it, these were new: faster running, long drives, a break and stress. Nobody can say whether they had a part in it.',
      ],
    ],
  ] as const)('%j', (changes, expected) => expect(besideTexts(changes)).toEqual(expected));
});

describe('how far the hands go', () => {
  it.each([
    ['handsAboveKnee', 12, 'Hands no lower than 12 cm above the knee'],
    ['handsBelowKnee', 7, 'Hands no lower than 7 cm below the knee'],
    ['handsAboveKnee', 0, 'Hands no lower than your knees'],
    ['handsBelowKnee', 0, 'Hands no lower than your knees'],
  ] as const)('%s, %d cm', (kind, cm, expected) => {
    expect(landmarkText({ kind, cm }, 'together', false)).toBe(expected);
  });
});

describe('a pace', () => {
  const tempo = { goSeconds: 3, holdSeconds: 2, backSeconds: 4 };

  it('rests at the turning point where that is the gentle end', () => {
    expect(tempoText(tempo, 'up', 'turn')).toBe('3 seconds up, stay 2 seconds, 4 seconds down');
  });

  it('rests back at the start where the turning point is the squeezed end', () => {
    expect(tempoText(tempo, 'down', 'return')).toBe('3 seconds down, 4 seconds up, stay 2 seconds');
  });
});

describe('a dose', () => {
  const dose = {
    kind: 'slow',
    sets: 3,
    repetitions: 8,
    holdSeconds: null,
    tempo: null,
    restSeconds: 60,
    timesPerDay: 1,
    reserve: 3,
  } as const;

  const signText = (one: Parameters<typeof doseSign>[0]) =>
    Object.values(doseSign(one, 'repetition')).join('');

  it('in signs and in words', () => {
    expect([signText(dose), doseWords(dose, 'repetition')]).toEqual(['3 × 8', '3 sets of 8 repetitions']);
    const hold = { ...dose, repetitions: null, holdSeconds: 30 };
    expect([signText(hold), doseWords(hold, 'repetition')]).toEqual(['3 × 30 s', '3 holds of 30 seconds']);
    expect(doseWords({ ...dose, repetitions: 1 }, 'repetition')).toBe('3 sets of 1 repetition');
  });

  it('counts jumps by landings and drills by steps', () => {
    expect(countedAs({ kind: 'energy-storage', positions: ['ballistic'] })).toBe('landing');
    expect(countedAs({ kind: 'energy-storage', positions: ['ballistic', 'hinge'] })).toBe('repetition');
    expect(countedAs({ kind: 'running-drill', positions: ['ballistic'] })).toBe('step');
  });

  it('of a weight that is felt for begins with none', () => {
    expect(feelText(2, null)).toBe(
      'none at first, a little more each session until you could do just 2 more',
    );
    expect(feelText(1, { thing: 'kettlebell', eachKg: 12 })).toBe(
      'none at first, a little more each session until you could do just 1 more; at most a kettlebell of 12 kg',
    );
  });
});

describe('things and numbers', () => {
  it.each([
    [{ thing: 'nothing' }, 'no weight'],
    [{ thing: 'dumbbell', count: 2, eachKg: 4 }, 'two dumbbells of 4 kg'],
    [{ thing: 'bar', barKg: 20, pairsKg: [10, 2.5] }, 'bar of 20 kg with 2 × 10 kg and 2 × 2.5 kg'],
    [{ thing: 'rucksack', litres: 1, bottlesL: [1] }, 'rucksack with 1 litre of water'],
    [{ thing: 'bottles', count: 2, eachL: 1.5 }, 'two bottles of 1.5 litres'],
    [{ thing: 'band', band: 'light-loop', newtons: 30 }, 'light loop band'],
  ] as const)('%j', (made, expected) => expect(madeText(made)).toBe(expected));

  it('lists, counts and dates', () => {
    expect(listText(['a', 'b', 'c'])).toBe('a, b and c');
    expect(numberText(7.5)).toBe('7.5');
    expect([60, 90, 120, 150, 1].map(secondsText)).toEqual([
      '60 seconds',
      '90 seconds',
      '2 minutes',
      '2 minutes 30 seconds',
      '1 second',
    ]);
    expect([0, 1, 2, 3, 7].map(timesText)).toEqual(['not at all', 'once', 'twice', 'three times', '7 times']);
    expect([1, 2].map(clearDaysText)).toEqual(['one clear day', '2 clear days']);
    expect(dayAndYear(day('2026-03-03'))).toBe('3 March 2026');
    expect(weekdayAndDay(day('2026-11-24'))).toBe('Tuesday 24 November');
    expect(shortDay(day('2026-11-24'))).toBe('Tue 24 Nov');
  });
});

describe('the steps ahead', () => {
  it.each([
    [30, false, 'This part goes on in small steps, one new thing at a time. You need not do them all'],
    [1, false, 'After this step there is one more in this part.'],
    [0, false, 'This is the last step of this part.'],
    [0, true, 'The next steps stand above with their dates.'],
  ])('%i of them, dated: %j', (stepsAhead, dated, expected) => {
    const [first] = whatComesNextText({
      course: 'treatment',
      stepsAhead,
      dated,
      months: { from: 1, to: 1 },
      openEnd: null,
      reviewOn: day('2026-12-15'),
      goals: [],
      sameStepUnder: 7,
      oneBackUpTo: 14,
      runs: false,
      fastWork: false,
      angle: 'hipFlexion',
    }).parts;
    expect(JSON.stringify(first)).toContain(expected);
    expect(JSON.stringify(first)).not.toMatch(/\d/);
  });
});

describe('one more set', () => {
  const at = (exercise: string, dose: object) => ({
    exercise,
    card: exercise,
    dose: { kind: 'slow', sets: 4, repetitions: 8, holdSeconds: null, ...dose },
    rangeDeg: null,
    loadKg: 0,
    daysPerWeek: 2,
  });
  const moved = (exercise: string, eased: StepChange['eased'] = []) => ({
    exercise,
    from: 3,
    to: 4,
    wished: 4,
    stoppedBy: null,
    eased,
  });

  it('is a set, a hold or a stride, and landings are landings', () => {
    const rung = {
      step: 2,
      exercises: [
        at('curl', {}),
        at('side push', { repetitions: null, holdSeconds: 15 }),
        at('strides', { repetitions: 1 }),
        at('hops', { repetitions: 39 }),
      ],
      change: 'sets',
      changed: [
        moved('curl'),
        moved('side push'),
        moved('strides'),
        moved('hops', [{ change: 'repetitions', from: 40, to: 39 }]),
      ],
      stopped: [],
    } as unknown as Rung;
    const counted: Record<string, Counted> = { strides: 'step', hops: 'landing' };
    expect(
      changeText(rung, {
        titleOf: (slot) => slot,
        countedOf: (card) => counted[card] ?? 'repetition',
        cardTitleOf: null,
      }),
    ).toBe(
      'New: one more set for curl and hops, and one more hold for side push, and one more stride for strides. hops then has 39 landings instead of 40. That keeps the step small. All else stays.',
    );
  });

  it('names what a harder version takes the place of, and why it begins with less', () => {
    const rung = {
      step: 2,
      exercises: [{ ...at('springs', { repetitions: 8 }), card: 'bounding' }],
      change: 'lever',
      changed: [
        {
          ...moved('springs', [{ change: 'repetitions', from: 40, to: 8 }]),
          from: 'pogo-hops',
          to: 'bounding',
        },
      ],
      stopped: [],
    } as unknown as Rung;
    const titles: Record<string, string> = { 'pogo-hops': 'Small hops', bounding: 'Bounding' };
    expect(
      changeText(rung, {
        titleOf: () => 'Bounding',
        countedOf: () => 'landing',
        cardTitleOf: (card) => titles[card] ?? card,
      }),
    ).toBe(
      'New: Bounding in place of Small hops, a harder version. Bounding then has 8 landings instead of 40. That keeps the step small. All else stays.',
    );
  });
});
