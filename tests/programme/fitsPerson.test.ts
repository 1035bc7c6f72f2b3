/** What the leaflet and the note say is true for this person: what is known, what is at home, where the way leads. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { noteText } from '../../src/outputs/text/noteText.ts';
import { leafletLines, ownLines } from './leafletText.ts';
import { ALL_CLEAR, FULL_KIT, person, RUNNER } from './person.ts';
import { programmeOf } from './shipped.ts';

const made = (different: Partial<Consult>) => programmeOf(person(different));
const text = (different: Partial<Consult>) => ownLines(made(different)).join('\n');
const POPPED: Partial<Consult> = {
  screen: { ...ALL_CLEAR, popBruise: 'yes' },
  clearances: [
    {
      flag: 'popBruise',
      by: 'sports doctor',
      on: person().seenOn,
      decision: 'slow loading may begin',
      imaging: { kind: 'MRI', on: person().seenOn, result: 'partial tear' },
    },
  ],
};

describe('a bone that may not bear running (house rules 2 and 11.11)', () => {
  it.each([
    ['hopPain', 'A bone hurts when you hop.'],
    ['focalBonePain', 'One spot of bone hurts.'],
    ['nightBonePain', 'A bone hurts at night or at rest.'],
    ['missedPeriods', 'Your periods have stayed away.'],
    ['lowEnergy', 'You may be eating too little for what you do.'],
  ] as const)('with %s the patient reads why nothing is run or jumped', (item, words) => {
    const heed = text({ running: RUNNER, screen: { ...ALL_CLEAR, [item]: 'yes' } });
    expect(heed).toContain(`${words} No running and no jumping until it has been looked at.`);
  });

  it('not asked acts like yes, and is said as what it is', () => {
    const heed = text({ running: RUNNER, screen: { ...ALL_CLEAR, missedPeriods: 'notAsked' } });
    expect(heed).toContain('We have not asked about missed periods yet, so we take care.');
  });

  it('what is known already is no reason to get in touch again', () => {
    const sore = text({ running: RUNNER, screen: { ...ALL_CLEAR, hopPain: 'yes' } });
    expect(sore).not.toContain('it hurts to hop.');
    expect(sore).toContain('A bone hurts more, or hurts when you walk.');
    expect(text({ running: RUNNER })).toContain('One spot of bone hurts, or it hurts to hop.');
  });

  it('nothing is said of it once it is cleared', () => {
    const flag = 'hopPain' as const;
    const clearances = [{ flag, by: 'doctor', on: person().seenOn, decision: 'bone is well' }];
    expect(made({ screen: { ...ALL_CLEAR, [flag]: 'yes' }, clearances }).precautions.parts).toEqual([]);
  });
});

describe('a cleared sudden start (house rules 11.6)', () => {
  it('tells the patient why the plan is light, and promises no strong work', () => {
    const opening = made(POPPED).opening.join(' ');
    expect(opening).toContain('looked at since it began');
    expect(opening).not.toMatch(/strong|heav/i);
  });
});

describe('the opening', () => {
  it('promises still work to nobody who is to move', () => {
    expect(text({ screen: { ...ALL_CLEAR, uncontrolledBloodPressure: 'yes' } })).not.toMatch(/\bstill work/);
  });

  it.each([1, 2, 3, 4] as const)('of stage %d does not say that the way begins here', (stage) => {
    const opening = made({ stage, running: RUNNER, kit: FULL_KIT }).opening.join(' ');
    expect(opening).not.toMatch(/we start with/);
  });
});

describe('conditions and easier numbers', () => {
  it('ask for the exercises that have been done, not for those to come', () => {
    const tests = [{ test: 'single-leg-stand', pain: 4 }];
    const leaflet = text({ protocol: 'gluteal-tendon', tests });
    expect(leaflet).toContain('the exercises of the step before hurt 3 or less');
  });

  it('leave no weight open where none may have been used', () => {
    const cells = made({ stage: 3, tests: [{ test: 'hip-hinge', pain: 2 }] }).easier.parts.flatMap((part) =>
      part.kind === 'table' ? part.table.rows.flat() : [],
    );
    const lighter = cells.filter((cell) => cell.startsWith('a lighter one'));
    expect(lighter.length).toBeGreaterThan(0);
    for (const cell of lighter) expect(cell).toBe('a lighter one than last time, or none');
  });
});

describe('the note', () => {
  it('names what was cleared, and what still holds after it', () => {
    const note = noteText(made(POPPED));
    expect(note).not.toContain('nothing that limits');
    expect(note).toContain(
      'Cleared: sudden pop with a bruise, or not able to walk (sports doctor, 2026-11-23).',
    );
    expect(note).toContain('stage 2 at most');
  });
});

describe('the note of someone who was cleared', () => {
  it.each([
    ['cancerNightPain', 40, 'Cleared: history of cancer with night pain (doctor, 2026-11-23).'],
    ['hernia', 40, 'Cleared: hernia (doctor, 2026-11-23).'],
  ] as const)('names %s', (flag, ageYears, words) => {
    const clearances = [{ flag, by: 'doctor', on: person().seenOn, decision: 'may exercise' }];
    const note = noteText(made({ ageYears, screen: { ...ALL_CLEAR, [flag]: 'yes' }, clearances }));
    expect(note).toContain(words);
  });

  it('names the growth plate of a gradual start under 18', () => {
    const flag = 'suddenOnsetUnder18' as const;
    const clearances = [{ flag, by: 'doctor', on: person().seenOn, decision: 'gradual start' }];
    expect(noteText(made({ ageYears: 16, clearances }))).toContain(
      'Cleared: growth-plate cause considered (doctor, 2026-11-23).',
    );
  });
});

describe('fixed sitting', () => {
  const sitting = { toleranceMinutes: 10, fixedBlocksMinutes: [60] };

  it('at a desk has no stops on the way, and no advice for the wheel', () => {
    const programme = made({ sitting });
    expect(ownLines(programme).join('\n')).toContain('Walk for two minutes before and after it.');
    expect(programme.advice.map(({ id }) => id)).not.toContain('at-the-wheel');
  });

  it.each([
    { changedBefore: ['long-drives'] },
    { doesNow: [{ what: 'driving', times: 5 }] },
  ] as Partial<Consult>[])('at the wheel has both: %j', (different) => {
    const programme = made({ sitting, ...different });
    expect(ownLines(programme).join('\n')).toContain('and at each stop on the way.');
    expect(programme.advice.map(({ id }) => id)).toContain('at-the-wheel');
  });
});

describe('someone who does not get down to the floor', () => {
  it('is told of the bed alone', () => {
    const lying = ownLines(made({ stage: 2, cannotDo: ['get-to-the-floor'] })).filter((line) =>
      /^(Buttock no lower|Foot \d|Down )/.test(line),
    );
    expect(lying.length).toBeGreaterThan(0);
    expect(lying.filter((line) => line.includes('floor'))).toEqual([]);
  });
});

describe('what waits for fast work and sport', () => {
  const doesNow = [{ what: 'deadlifts', times: 2 }];

  it.each([
    [false, 'Leave until the part “Keep going”'],
    [true, 'Leave until the part “Fast work and sport”'],
  ])('of someone who runs: %s', (runs, words) => {
    const running = runs ? RUNNER : person().running;
    expect(text({ stage: 2, doesNow, running })).toContain(words);
  });
});

describe('the longest run', () => {
  it('of someone whose longer runs wait is that of the table', () => {
    const running = { ...RUNNER, longestIn30DaysKm: 12 };
    const overrides = [{ path: 'running.decision', value: 'keep', reason: 'a diary of five months' }];
    const leaflet = text({ stage: 2, running, usualMorningPain: 5, overrides });
    expect(leaflet).toContain('These wait: longer easy run');
    expect(leaflet).toContain('Let no run be longer than the table says.');
  });
});

describe('stretching', () => {
  it('does not say the same twice', () => {
    const discharge = { decidedBy: 'R. Sample', on: person().seenOn };
    const tests = [{ test: 'single-leg-hinge', pain: 0 }];
    const doesNow = [{ what: 'yoga', times: 1 }];
    const leaflet = text({ stage: 'keepGoing', stageBecause: undefined, discharge, tests, doesNow });
    expect(leaflet.split('It does not keep you from getting hurt.')).toHaveLength(2);
  });
});

describe('what the cannot-do list asks to heed', () => {
  it.each([
    ['dizziness', 'Keep a hand on something steady while you stand.'],
    ['osteoporosis', 'Keep your back straight when you bend, and do not twist under load.'],
    ['hip-replacement', 'What your surgeon told you not to do comes first.'],
  ] as const)('%s', (item, words) => {
    expect(text({ cannotDo: [item] })).toContain(words);
    expect(text({})).not.toContain(words);
  });
});

describe('nobody is promised strong work who', () => {
  const flag = 'suddenOnsetUnder18' as const;
  it.each([
    ['is irritable', { irritability: 'high' }],
    ['hurts 4 every morning', { usualMorningPain: 4 }],
    [
      'is under 18, with a lighter dose',
      { ageYears: 16, clearances: [{ flag, by: 'doctor', on: person().seenOn, decision: 'gradual start' }] },
    ],
  ] as [string, Partial<Consult>][])('%s', (_, different) => {
    const programme = made(different);
    expect(leafletLines(programme).filter((line) => /\bstrong (?:slow )?work/i.test(line))).toEqual([]);
  });
});
