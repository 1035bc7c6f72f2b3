/** Pregnancy and the time after birth (house rules 11.14): what they allow by week, recorded or not. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { cannotDoOf, maternityOf } from '../../src/decisions/screen/maternity.ts';
import { ownLines } from './leafletText.ts';
import { ALL_CLEAR, day, FULL_KIT, person, RUNNER } from './person.ts';
import { programmeOf, shipped } from './shipped.ts';

const protocol = shipped.protocols.get('proximal-hamstring');
if (protocol === undefined) throw new Error('the protocol must be there');

// Seen on 23 November, from 24 November to the day before 15 December: three weeks later.
const CLEARANCE = { by: 'R. Doctor', on: day('2026-11-20'), decision: 'may run, no complaints' };
const WORD = 'pregnant-or-postpartum' as const;

describe('what is allowed', () => {
  it.each([
    // recorded                                    kind           weeks  flat   jumps  runs at most
    [{ pregnancy: { weeks: 10 } }, 'pregnant', 13, true, false, 'easy'],
    [{ pregnancy: { weeks: 16 } }, 'pregnant', 19, true, false, 'easy'],
    [{ pregnancy: { weeks: 17 } }, 'pregnant', 20, false, false, 'easy'],
    [{ pregnancy: { weeks: 30 } }, 'pregnant', 33, false, false, 'easy'],
    [{ afterBirth: { weeks: 8 } }, 'after-birth', 8, true, false, 'none'],
    [{ afterBirth: { weeks: 11 } }, 'after-birth', 11, true, false, 'none'],
    [{ afterBirth: { weeks: 12 } }, 'after-birth', 12, true, true, null],
    [{ afterBirth: { weeks: 8, clearance: CLEARANCE } }, 'after-birth', 8, true, true, null],
    [{ cannotDo: [WORD] }, 'not-recorded', null, false, false, 'none'],
  ] as const)('%j', (recorded, kind, weeks, liesFlat, jumps, runMost) => {
    expect(maternityOf(person(recorded as Partial<Consult>), protocol)).toMatchObject({
      kind,
      weeks,
      liesFlat,
      jumps,
      runMost,
    });
  });

  it('nothing is held back where neither is recorded', () => {
    expect(maternityOf(person(), protocol)).toBeNull();
    expect(cannotDoOf(person({ cannotDo: ['grip'] }), null)).toEqual(['grip']);
  });

  it('a cleared person is held to what the cannot-do list says all the same', () => {
    const consult = person({ afterBirth: { weeks: 30 }, cannotDo: [WORD] });
    expect(cannotDoOf(consult, maternityOf(consult, protocol))).toEqual([WORD]);
  });
});

const made = (different: Partial<Consult>) =>
  programmeOf(person({ kit: FULL_KIT, running: { ...RUNNER, hills: true, speed: true }, ...different }));
const needsOf = (programme: ReturnType<typeof made>) =>
  programme.steps.flatMap(({ prescriptions }) =>
    prescriptions.flatMap(({ card }) => shipped.exercises.get(card)?.needs ?? []),
  );

describe('at 30 weeks', () => {
  const programme = made({ pregnancy: { weeks: 30 }, stage: 2 });
  const text = ownLines(programme).join('\n');

  it('nothing is done lying flat on the back or face down', () => {
    expect(needsOf(programme).filter((need) => /lie-supine|lie-prone|pregnant/.test(need))).toEqual([]);
    expect(programme.morningCheck.parts.length).toBeGreaterThan(0);
    expect(text).not.toContain('Lie on your back');
  });

  it('stop signs, whom to ask, breath and positions are said', () => {
    for (const words of [
      'Ask your midwife or doctor',
      'Never hold your breath',
      'Do not lie flat on your back for long',
      'No jumping, and nothing fast. Run easy at most.',
      'call your midwife or doctor at once for these: bleeding',
    ])
      expect(text).toContain(words);
  });

  it('with blood pressure beside it, breath is spoken of once', () => {
    const screen = { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes' as const };
    for (const recorded of [
      { pregnancy: { weeks: 30 } },
      { afterBirth: { weeks: 8 } },
      { cannotDo: [WORD] },
    ]) {
      const lines = ownLines(programmeOf(person({ ...recorded, screen } as Partial<Consult>)));
      expect(lines.filter((line) => line.includes('Never hold your breath'))).toHaveLength(1);
    }
  });

  it('the running section says no more than easy', () => {
    expect(text).toContain('Easy and flat only while you are pregnant.');
    expect(text).not.toContain('hills or strides come next');
  });

  it('no hard run is planned', () => {
    expect(text).not.toMatch(/fast run:|strides: /i);
    expect(programme.record.remarks.join(' ')).toContain('at most: pregnancy');
  });
});

describe('8 weeks after birth', () => {
  const sporty: Partial<Consult> = { stage: 4, tests: [{ test: 'hip-hinge', pain: 1 }], usualMorningPain: 1 };
  const springy = ['energy-storage', 'running-drill'];
  const kindsOf = (programme: ReturnType<typeof made>) =>
    programme.exercises.map(({ card }) => shipped.exercises.get(card)?.kind ?? '');

  it('there is no jumping and no running', () => {
    const programme = made({ ...sporty, stage: 2, afterBirth: { weeks: 8 } });
    expect(kindsOf(programme).filter((kind) => springy.includes(kind))).toEqual([]);
    expect(programme.calendar.filter(({ kind }) => kind === 'run')).toEqual([]);
    expect(ownLines(programme).join('\n')).toContain(
      'No jumping and no running in the first 12 weeks after birth',
    );
  });

  it('springy cards are passed over, also those without a word for it on the cannot-do list', () => {
    const { record } = made({ ...sporty, stage: 3, afterBirth: { weeks: 8 } });
    const springyOnes = record.passedOver.filter(({ because }) =>
      /fast or springy in pregnancy/.test(because),
    );
    expect(springyOnes.map(({ card }) => card)).toContain('hurdle-walk-overs');
  });

  it('what is hard besides waits for an answer', () => {
    const hurdles = { ...sporty, stage: 2 as const, doesNow: [{ what: 'hurdles', times: 1 }] };
    const words = 'Leave out jumping, sprinting and hard effort for now.';
    expect(ownLines(made({ ...hurdles, afterBirth: { weeks: 8 } })).join('\n')).toContain(words);
    expect(ownLines(made({ ...hurdles, afterBirth: { weeks: 30 } })).join('\n')).not.toContain(words);
  });

  it('unless it was cleared; then the leaflet says so', () => {
    const programme = made({ ...sporty, afterBirth: { weeks: 8, clearance: CLEARANCE } });
    expect(kindsOf(programme).some((kind) => springy.includes(kind))).toBe(true);
    expect(programme.calendar.some(({ kind }) => kind === 'run')).toBe(true);
    expect(ownLines(programme).join('\n')).toContain('You have been cleared to run or jump');
    expect(programme.record.effects.join(' ')).toContain('cleared early by R. Doctor');
  });

  it("the clinician's own entry on running does not lift it", () => {
    const own = { path: 'running.decision', value: 'keep', reason: 'wish' };
    const programme = made({ ...sporty, stage: 2, afterBirth: { weeks: 8 }, overrides: [own] });
    expect(programme.calendar.filter(({ kind }) => kind === 'run')).toEqual([]);
  });
});
