/** Sentences a patient or a clinician would stumble over: each of these once stood on a sheet, or said what was not so. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { Programme } from '../../src/programme/programme.ts';
import type { Section } from '../../src/messages/shapes.ts';
import { sideText } from '../../src/messages/en/patient/dose.ts';
import { labelsOf } from '../../src/messages/en/labels.ts';
import { CASES } from './outcome.ts';
import { leafletLines, ownLines } from './leafletText.ts';
import { day, person, RUNNER } from './person.ts';
import { filesBelow, make, programmeOf, shipped } from './shipped.ts';

const made = (different: Partial<Consult> = {}) => programmeOf(person(different));
const said = ({ parts }: Section) => JSON.stringify(parts);

const everybody: readonly (readonly [name: string, programme: Programme])[] = CASES.flatMap((name) => {
  const one = make(filesBelow(join('tests/cases', name, 'in')));
  return 'programme' in one ? [[name, one.programme] as const] : [];
});
const caseOf = (name: string): Programme => {
  const found = everybody.find(([one]) => one === name);
  if (found === undefined) throw new Error(`case ${name}: expected a programme`);
  return found[1];
};

/** A runner with speed, at the end of the way. */
const FAST: Partial<Consult> = {
  stage: 4,
  minutesPerDay: 60,
  reviewOn: day('2026-12-29'),
  running: { ...RUNNER, hills: true, speed: true },
  tests: [
    { test: 'single-leg-hinge', pain: 0 },
    { test: 'split-squat', pain: 0 },
  ],
};

describe('how far, for everybody', () => {
  it.each(everybody)('%s: no hand of a clock, and no seat that no house has', (_, programme) => {
    const text = leafletLines(programme).join('\n');
    expect(text).not.toMatch(/clock hand|half past|o'clock/);
    const seatsCm = [...text.matchAll(/seat of (\d+) cm/g)].map(([, cm]) => Number(cm));
    expect(Math.max(0, ...seatsCm)).toBeLessThanOrEqual(shipped.clinic.landmarks.seatAtMostCm.value);
  });

  it('a half squat above every seat is measured at the wall', () => {
    const { exercises } = caseOf('by-feel');
    expect(exercises.find(({ card }) => card === 'half-squat')?.howFar[0]).toMatch(
      /^Buttock \d+ cm back: stand with your heels/,
    );
  });

  it.each(everybody)(
    '%s: a range that is eased has a landmark of its own, or none',
    (_, { exercises, easier }) => {
      const rows = easier.parts.flatMap((part) => (part.kind === 'table' ? part.table.rows : []));
      for (const { title, howFar } of exercises) {
        const [, , , far = ''] = rows.find(([name = '']) => name.startsWith(title)) ?? [];
        if (far.startsWith('No lower than')) expect([title, far]).not.toEqual([title, howFar[0]]);
      }
    },
  );
});

describe('a dose', () => {
  it('of strides is so many strides, one leg in turn with the other', () => {
    const { exercises, steps } = made(FAST);
    const strides = exercises.find(({ card }) => card === 'strides');
    expect(strides).toMatchObject({ dose: '4 ×', doseWords: '4 strides', side: 'Both legs in turn' });
    const [now] = steps;
    const cells = now?.prescriptions.find(({ card }) => card === 'strides')?.cells ?? [];
    expect(
      cells.filter(({ cell }) => cell === 'sets' || cell === 'repetitions').map(({ text }) => text),
    ).toEqual(['4 strides', '']);
  });

  it.each(everybody)('%s: no label and its number say the same word', (_, programme) => {
    expect(ownLines(programme).join('\n')).not.toMatch(/Sets:? \d+ sets?\b|Repetitions:? \d+ repetitions?\b/);
  });
});

describe('what a session gave up', () => {
  it('names the usual length where that cut it, and the minutes there are where they did', () => {
    const cut = (name: string) => caseOf(name).record.week.gaveUp.join(' ');
    expect(cut('after-a-break')).toContain('to keep to the usual 25 minutes of a session');
    expect(cut('after-a-break')).not.toContain('minutes there are');
    expect(cut('quarter-hour')).toContain('to fit the 15 minutes there are');
  });
});

describe('free sitting', () => {
  it('in the last stage says so', () => {
    const free = made({ ...FAST, sitting: { toleranceMinutes: 120, goalMinutes: 90 } });
    expect(said(free.sitting)).toContain('Sit as you like.');
    expect(said(free.sitting)).not.toContain('come back');
  });
});

describe('the week', () => {
  it.each(everybody)('%s: only the first word of a day has a capital', (_, { week }) => {
    expect(said(week)).not.toMatch(/; (?:The holds|Exercises|Moving)/);
  });

  it('of somebody whose plan holds fewer kilometres says so, on leaflet and record', () => {
    const { running, record } = caseOf('tired-club-runner');
    expect(said(running)).toContain('You told us of 50 km a week. In this plan it is 35 km at most.');
    expect(record.remarks.join(' ')).toContain(
      '35 km in the fullest week without a race, instead of the 50 km recorded',
    );
    expect(said(caseOf('ends-well').running)).not.toContain('You told us of');
  });
});

describe('the end of treatment', () => {
  const { stage, record, activities } = caseOf('ends-well');

  it('is told without tests that nobody needs any more', () => {
    expect(stage.because).toEqual(['The clinician ends the treatment: the keep-going stage.']);
    expect(stage.proposed).toBe('keepGoing');
    expect(record.note.join(' ')).not.toContain('none of its tests');
  });

  it('keeps what is done besides without asking for a beginning', () => {
    expect(said(activities)).toContain('["Cycling","Keep","Go on as you do now."]');
    expect(said(activities)).not.toContain('at first');
  });
});

describe('a race in the record', () => {
  const runner: Partial<Consult> = {
    stage: 3,
    reviewOn: day('2026-12-15'),
    tests: [{ test: 'hip-hinge', pain: 1 }],
    running: { ...RUNNER, races: [{ on: day('2026-12-06'), km: 10, decision: 'runs it' }] },
  };

  it('is why nothing grows in its week, and puts the holds in place of a session', () => {
    const growth = caseOf('tired-club-runner').record.remarks.find((one) => one.startsWith('What grows'));
    expect(growth).toContain('1 December nothing (race)');
    expect(made(runner).record.week.gaveUp.join(' ')).toMatch(
      /The holds in place of the session on .*: before the race/,
    );
  });

  it('has no date from which it would fit where that is left open', () => {
    const raceRemark = (different: Partial<Consult>) =>
      made({ ...runner, ...different }).record.remarks.find((one) => one.includes('before fast running'));
    expect(raceRemark({})).toMatch(/it would fit from \d{4}/);
    expect(raceRemark({ pregnancy: { weeks: 20 } })).toContain('from when it would fit is left open');
  });

  it('says of a longest run that walking into running, or easy running alone, does not go by it', () => {
    const remarks = (name: string) => caseOf(name).record.remarks.join('\n');
    expect(remarks('pregnant-thirty-weeks')).toContain('5 km, is no measure yet: longer runs wait');
    expect(remarks('walking-into-running')).not.toContain('the next longest run');
  });
});

describe('what was tested and is not used', () => {
  it('is said where the clinician looks, with what stands in its place', () => {
    const { record } = caseOf('strong-lifter');
    const words =
      'Split squat was tested with 40 kg and is not in the session: the session already has 2 cards above half the squeeze cap. Small split squat stands in its place.';
    expect(record.remarks).toContain(words);
    expect(record.note.join(' ')).toContain(words);
  });

  it('and nothing is called untested whose hold was tested', () => {
    const all = everybody.flatMap(([, { record }]) => [
      ...record.remarks,
      ...record.passedOver.map(({ because }) => because),
    ]);
    expect(all.join('\n')).not.toContain('nothing like it');
  });
});

describe('hard sport of somebody pregnant', () => {
  const { activities, week, record, calendar } = made({
    pregnancy: { weeks: 20 },
    doesNow: [{ what: 'exercise class', times: 1, days: ['sat'] }],
  });

  it('waits for an answer, and so holds no day of the week', () => {
    expect(said(activities)).toContain('["Exercise class","Ask us first"');
    expect(`${said(week)}${JSON.stringify(calendar)}`).not.toContain('xercise class');
    expect(record.week.gaveUp).toContain(
      'Exercise class: asked about first; no day of the week is kept for it, once a week now.',
    );
  });
});

it('who is ready after the weeks of the exercises is told to wait for the review', () => {
  const conditions = everybody.flatMap(([, { steps }]) => steps.flatMap(({ goOnWhen }) => goOnWhen));
  const dated = conditions.filter((one) => one.includes('the week from'));
  expect(dated.length).toBeGreaterThan(0);
  for (const one of dated)
    expect(one).toMatch(/has come\. If you are ready only later, wait for the review$/);
});

it.each(['side-step', 'marching-skips', 'bounding', 'strides', 'hurdle-walk-overs'])(
  '%s: the legs take turns',
  (id) => {
    const card = shipped.exercises.get(id);
    expect(card && sideText(card, 'right')).toBe('Both legs in turn');
  },
);

it('who walks into running is told of no pace or hill that the part would open, and that every run beyond it waits', () => {
  const text = said(caseOf('after-a-break').running);
  expect(text).toContain(
    'These wait: easy run on the flat, longer easy run, steady run, hills or strides and fast run.',
  );
  expect(text).not.toContain('a steady pace');
});

it('the headings over a card can be told apart', () => {
  const text = leafletLines(caseOf('growing')).join('\n');
  expect(text).toContain('Do it well');
  expect(text).not.toMatch(/^Look out for$|^Watch for$/m);
  expect(labelsOf('en').leaflet.watchFor).toBe('Take care');
});
