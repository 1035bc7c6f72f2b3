/**
 * The house rules, each with what a whole case must show of it. A rule is touched when its evidence stands in the
 * outcome of some case: in the numbers of `explain`, on the leaflet, in the record, the note, or what is printed
 * instead of a programme. A label alone is no evidence.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Cell, PassedOver } from '../../src/programme/programme.ts';
import { CASES, expectedOf } from './outcome.ts';

interface Seen {
  readonly name: string;
  /** The consult files as written. */
  readonly consult: string;
  readonly stage: number | 'keepGoing' | null;
  readonly cells: readonly Cell[];
  readonly passedOver: readonly PassedOver[];
  readonly leaflet: string;
  readonly record: string;
  readonly note: string;
  readonly printed: string;
}

const seen: readonly Seen[] = CASES.map((name) => {
  const out = expectedOf(name);
  const explain = JSON.parse(out.get('explain.json') ?? '{}') as Partial<Seen>;
  return {
    name,
    consult: readdirSync(`tests/cases/${name}/in`)
      .filter((file) => file.endsWith('.md'))
      .map((file) => readFileSync(`tests/cases/${name}/in/${file}`, 'utf8'))
      .join('\n'),
    stage: explain.stage ?? null,
    cells: explain.cells ?? [],
    passedOver: explain.passedOver ?? [],
    leaflet: out.get('leaflet.txt') ?? '',
    record: out.get('record.txt') ?? '',
    note: out.get('note.txt') ?? '',
    printed: out.get('problems.txt') ?? '',
  };
});

/** Values of one kind of cell, all steps that are shown. */
const values = ({ cells }: Seen, cell: Cell['cell']) =>
  cells.filter((one) => one.cell === cell).map(({ value }) => value);
const numbers = (one: Seen, cell: Cell['cell']) =>
  values(one, cell).filter((value) => typeof value === 'number');
const written = ({ cells }: Seen) => cells.length > 0;
const all = <T>(list: readonly T[], holds: (value: T) => boolean) => list.length > 0 && list.every(holds);
const cell = ({ cells }: Seen, name: Cell['cell'], holds: (one: Cell) => boolean) =>
  cells.some((one) => one.cell === name && holds(one));
const passed = ({ passedOver }: Seen, limit: string, because: RegExp) =>
  passedOver.some((one) => one.limit === limit && because.test(one.because));

type Evidence = (one: Seen) => boolean;

const RULES: readonly (readonly [id: string, rule: string, evidence: Evidence])[] = [
  // 1. What the consult must hold
  ['1.a', 'what is not recorded is printed so, and the reference body stands in', ({ record }) =>
    /Height \| not recorded; the reference body/.test(record) && /reference body \(70 kg, 1.75 m\) stands in/.test(record)],
  ['1.b', 'what could not be examined is kept', ({ record }) => /Not examined \| strength against/.test(record)],
  ['1.c', 'the cannot-do list bars cards that need it', (one) => passed(one, 'cannotDo', /lie-supine/)],
  ['1.d', 'outcome scores are a dated series', ({ record }) => (record.match(/^\d{4}-\d\d-\d\d \| \d+/gm) ?? []).length >= 3],
  ['1.e', 'why it began comes from what changed: work, pressing, a break, recovery', ({ consult, leaflet }) =>
    /- stretching/.test(consult) && /pressed the tendon on the bone/.test(leaflet) && /left less room to recover/.test(leaflet)],
  ['1.f', 'a break before it began is told', ({ leaflet }) => /After a break a tendon is used to less/.test(leaflet)],
  ['1.g', 'both sides: the worse one is treated first', ({ consult, leaflet }) =>
    /worseSide: left/.test(consult) && /^Left leg, then the other/m.test(leaflet)],

  // 2. Screen
  ['2.a', 'an emergency is not clearable in the file', ({ consult, printed }) =>
    /flag: saddleNumbness/.test(consult) && /saddleNumbness is yes.*\n.*\n.*\nFix:.*No entry in the file lifts this/.test(printed)],
  ['2.b', "a block says what to do, with the country's number, and writes nothing", (one) =>
    /country: GB/.test(one.consult) && /call 999 or go to A&E/.test(one.printed) && !written(one)],
  ['2.c', 'an item not asked acts like yes', ({ consult, printed }) =>
    !/footDrop/.test(consult) && /screen.footDrop is notAsked/.test(printed)],
  ['2.d', 'a block that is no emergency is lifted by who, when and what', (one) =>
    written(one) && /History of cancer with night pain \| yes \| bone scan .* \(oncologist, 2026-11-15\)/.test(one.record)],
  ['2.e', 'bone signs: no running and nothing springy', (one) =>
    /No running: bone pain on hopping \(yes\), missed periods \(not asked\)/.test(one.record) &&
    /No running for now/.test(one.leaflet) && passed(one, 'screen', /nothing fast or springy/)],
  ['2.f', 'a cleared item no longer acts', (one) =>
    written(one) && /Low energy intake \| yes \| eating plan/.test(one.record) && !/No running:.*low energy/.test(one.record)],
  ['2.g', 'tablets: light holds at most, no weight, with the decision and the prescriber', (one) =>
    one.stage === 1 && /Light holds at most.*contact the prescriber/.test(one.record) &&
    all(values(one, 'loadKg'), (value) => value === 0) &&
    /The clinician wrote stage 2; it waits/.test(one.record)],
  ['2.h', 'without a recorded decision not even light holds', ({ printed }) =>
    /oralSteroid is yes[\s\S]*record the decision on light holds/.test(printed)],
  ['2.i', 'pressure or hernia: no hold over 15 s, on any step', (one) =>
    /Short holds only/.test(one.record) && all(numbers(one, 'holdSeconds'), (value) => (value as number) <= 15)],
  ['2.j', 'under 18 with a sudden start: nothing before imaging', ({ printed }) => /sudden start under 18 needs imaging/.test(printed)],
  ['2.k', 'under 18, gradual: lighter dose, no maximum, no estimate, no caps of the model', (one) =>
    /Under 18: lighter dose/.test(one.record) && !/^pull/m.test(one.record) &&
    cell(one, 'sets', ({ rule }) => /lighter under 18/.test(rule)) &&
    cell(one, 'loadKg', ({ rule }) => /kept as capacity, without a maximum/.test(rule))],

  // 3. Stage limits
  ['3.a', 'stage 1: hip bend at most 30°, holds with the hip straight', (one) =>
    one.stage === 1 && all(numbers(one, 'hipFlexionDeg'), (value) => (value as number) <= 30)],
  ['3.b', 'stage 2: to 45°, then opened by steps', (one) =>
    one.stage === 2 && cell(one, 'hipFlexionDeg', ({ value, decidedBy }) => value === 45 && decidedBy === 'hipFlexion') &&
    cell(one, 'hipFlexionDeg', ({ value, decidedBy }) => value === 50 && decidedBy === 'step')],
  ['3.c', 'stage 3: to 60°, then opened by steps; nothing ballistic', (one) =>
    one.stage === 3 && cell(one, 'hipFlexionDeg', ({ value, decidedBy }) => value === 60 && decidedBy === 'hipFlexion') &&
    cell(one, 'hipFlexionDeg', ({ value, decidedBy }) => (value as number) > 60 && decidedBy === 'step')],
  ['3.d', 'stage 4: ballistic by contacts', (one) => one.stage === 4 && cell(one, 'repetitions', ({ text }) => /landings/.test(text))],
  ['3.e', 'keep: strength once or twice a week, no daily holds', (one) =>
    one.stage === 'keepGoing' && all(values(one, 'holdSeconds'), (value) => value === null) &&
    all(values(one, 'days'), (value) => String(value).split(',').length <= 2)],
  ['3.f', 'a load not above the tested set', (one) => cell(one, 'loadKg', ({ rule, decidedBy }) => decidedBy === 'testedSet' && /not above the tested load/.test(rule))],
  ['3.g', 'nothing tested, early: no weight', (one) => one.stage === 2 && cell(one, 'loadKg', ({ value, rule }) => value === 0 && /nothing tested with this card/.test(rule))],
  ['3.h', '3 or less on a low-flexion test starts in stage 2', ({ record }) => /^proposal: 2, [\s\S]*Stage 2 is open: .* with pain 3/.test(record)],
  ['3.i', 'the range stays 10° below what hurt', (one) =>
    cell(one, 'hipFlexionDeg', ({ value, decidedBy, inputs }) => decidedBy === 'provokedAngle' && value === 40 && inputs['provokedLessMarginDeg'] === 40)],
  ['3.j', 'squeeze, pull and strength caps hold a weight that is felt for', (one) => cell(one, 'loadKg', ({ decidedBy, text }) => decidedBy === 'compression' && /at most/.test(text))],
  ['3.k', 'vertical-only is a cue in the record, no cap', ({ record }) => /push away, do not drag the heels in/.test(record)],
  ['3.l', "the clinician's own stage stands, marked", ({ record }) => /^clinician: 2, proposed 3/.test(record) && /The stage is the clinician's own/.test(record)],
  ['3.m', 'no pause at the squeezed end: 3 s, 3 s', (one) => cell(one, 'tempo', ({ value, text }) => value === '3-0-3' && /^3 seconds down, 3 seconds up$/.test(text))],
  ['3.n', 'the range of a weight is not beyond that of its test', (one) => cell(one, 'hipFlexionDeg', ({ value, decidedBy }) => decidedBy === 'testedSet' && value === 80)],

  // 4. Steps, not weeks
  ['4.a', 'a step changes one thing', ({ leaflet }) => /^New: a little further for .* All else stays\.$/m.test(leaflet)],
  ['4.b', 'no step grows over 1.3: what stopped more is said', ({ record }) => /not more: peak squeeze would grow too fast for one step/.test(record)],
  ['4.c', 'totals over time, a day and a week, with runs and sitting', ({ record }) =>
    /# Squeeze and pull over time[\s\S]*A session day \| - \| \d+ \| \d+\nThe week \| - \| \d+ \| \d+\nRuns \| 3 \|[\s\S]*Sitting \| - \| \d+ minutes/.test(record)],
  ['4.d', 'at most two cards above half the squeeze cap', (one) => passed(one, 'compression', /already has 2 cards above half/)],
  ['4.e', 'two steps ahead, with when to go on; later ones without kilograms', ({ leaflet }) =>
    /# Step 2: later/.test(leaflet) && /# Step 3: later/.test(leaflet) && !/# Step 4/.test(leaflet) && /you have done the whole dose in 2 sessions/.test(leaflet)],
  ['4.f', 'weeks only as usually, earliest dates for the clinician', ({ leaflet, record }) => /usually takes 3 to 6 months/.test(leaflet) && /Earliest dates/.test(record)],
  ['4.g', 'a goal that comes too soon is a note to the clinician alone', ({ leaflet, record }) =>
    /comes \d+ days before the earliest end/.test(record) && !/before the earliest/.test(leaflet)],
  ['4.h', 'load by kilograms and by hip moment, the lower of the two', (one) => cell(one, 'loadKg', ({ rule }) => /the hip moment decides/.test(rule))],
  ['4.i', 'a set that hurt more than 3 gives no load', (one) => cell(one, 'loadKg', ({ value, rule }) => value === 0 && /hurt 5, 3 at most is asked/.test(rule))],
  ['4.j', 'a set done faster gives no load', (one) => cell(one, 'loadKg', ({ value, rule }) => value === 0 && /took 2 s a repetition/.test(rule))],
  ['4.k', 'over 15 repetitions is kept as capacity', (one) => one.stage === 3 && cell(one, 'loadKg', ({ rule, inputs }) => /kept as capacity/.test(rule) && inputs['testedRepetitions'] === 20)],
  ['4.l', 'a hold is a share of the tested seconds', (one) => cell(one, 'holdSeconds', ({ value, decidedBy, inputs }) => decidedBy === 'testedSet' && value === 10 && inputs['testedSeconds'] === 20)],
  ['4.m', 'you could hold 10 to 20 seconds longer', ({ leaflet }) => /you could hold 10 to 20 seconds longer/.test(leaflet)],
  ['4.n', 'too much without a weight: the card and what is harder is passed over', (one) =>
    passed(one, 'testedSet', /the dose asks for 11/) && passed(one, 'testedSet', /it is harder than/)],
  ['4.o', 'rounded down to the kit', (one) => cell(one, 'loadKg', ({ value, decidedBy, inputs }) => decidedBy === 'kit' && (value as number) < (inputs['byRuleKg'] as number))],
  ['4.p', 'no weight that fits: repetitions, then a harder lever', ({ record }) => /a harder version for Slow curl/.test(record)],
  ['4.q', 'nothing tested, later: by the repetitions in hand, never an invented number', (one) => cell(one, 'loadKg', ({ value, text }) => value === null && /^none at first/.test(text))],
  ['4.r', 'at most 4 exercises a day in stage 1', (one) => one.stage === 1 && passed(one, 'slotFull', /already 4 exercises for a session day/)],
  ['4.s', 'within the minutes; what gave way is said', (one) =>
    cell(one, 'sets', ({ decidedBy }) => decidedBy === 'minutes') && passed(one, 'minutes', /to fit 15 minutes/) && /Given up to fit: .*Calf was left out/.test(one.note)],
  ['4.t', 'work for the days between needs such a day', (one) => passed(one, 'days', /no day between/)],

  // 5. Pain, flare, missed days
  ['5.a', "the morning check against the person's usual", ({ leaflet }) => /Your usual is 3\.[\s\S]*0 to 4 \| Carry on[\s\S]*6 or more \| Ease back/.test(leaflet)],
  ['5.b', 'an irritable person: no more than usual, settled by the evening', ({ leaflet }) => /Your usual is 5\./.test(leaflet) && /no more pain than is usual for you, 5 out of 10\. It has settled by the evening/.test(leaflet)],
  ['5.c', 'the task obeys the stage and the cannot-do list', ({ record, leaflet }) => /Morning check: short-lever-bridge cannot be done; standing-curl-hold stands in/.test(record) && /Standing knee bend hold\. Score/.test(leaflet)],
  ['5.d', 'ease back: half the sets, less load, less range', ({ leaflet }) => /Short bow with straight back \| 1 set of 8 repetitions \| one dumbbell of 4 kg \| Hands no lower than 2\d cm/.test(leaflet)],
  ['5.e', 'a flare: a day of rest, then less than the holds for 2 to 3 days, runs walked, sitting halved', ({ leaflet }) =>
    /for 2 to 3 days only this, gently and once a day: .* hold, \d holds? of/.test(leaflet) && /Walk instead of running/.test(leaflet) && /Upright on a cushion: up to 15 minutes/.test(leaflet) && /Sit for at most 7 minutes/.test(leaflet)],
  ['5.f', 'missed days: same, one back, or the start and contact', ({ leaflet }) => /Fewer than 7 days[\s\S]*7 to 14 days: start again with the easier[\s\S]*More than 14 days, or after a fever: get in touch/.test(leaflet)],
  ['5.g', 'leg tingling stops an exercise', ({ leaflet }) => /Tingling or numbness down the leg: stop/.test(leaflet)],
  ['5.h', 'a card that hurt too much when tried is passed over', (one) => passed(one, 'pain', /^it hurt 6 of 10/)],

  // 6. The week
  ['6.a', 'one clock: 48 h between heavy sessions', ({ record, leaflet }) => /Recovery: 48 h between sessions\./.test(record) && /leave one clear day/.test(leaflet)],
  ['6.b', 'longer for novices, after weeks away, tired, short of sleep', ({ record }) => /1\.5 times 48 h: novice, away, tired and short-of-sleep/.test(record)],
  ['6.c', 'a lift follows a hard run, then fewer lifts', ({ record, note }) => /Recovery/.test(record) && /A session follows a hard run on the same day .*1 session instead of 2/.test(note)],
  ['6.d', 'then a hard run is dropped, and no longer counted', ({ note, leaflet }) => /The hills or strides run was dropped/.test(note) && !/Hills or strides, \d/.test(leaflet)],
  ['6.e', 'the next session, and the earliest day for the one after', ({ leaflet }) => /Your next session: Tuesday 2 March\. After it, leave 2 clear days/.test(leaflet)],
  ['6.f', 'another hard activity stands on the same clock', ({ leaflet }) => /^Friday \| Football$/m.test(leaflet)],

  // 7. Running
  ['7.a', 'irritable or hurting: walk-run, whatever is recorded', ({ consult, record }) => /decision: keep/.test(consult) && /Running: the tendon is irritable\./.test(record) && /decision of the consult, to go on running, is more than the rules allow/.test(record)],
  ['7.b', "easy running pulls above the early cap: that is told", ({ record }) => /pulls with about 1\.91 body weights, above the stage's cap of 1\.5/.test(record)],
  ['7.c', "the clinician's own decision over the rules is marked", ({ record }) => /Running goes beyond the house rules by the clinician's own entry/.test(record)],
  ['7.d', 'order of return: the harder kinds wait', ({ leaflet }) => /These wait: steady run, hills or strides and fast run/.test(leaflet)],
  ['7.e', 'hills and fast never in one week', ({ leaflet }) => /Do not put hills and fast running in one week/.test(leaflet)],
  ['7.f', 'used to both: not on neighbouring days', ({ leaflet }) => /Do not put hills and fast running on neighbouring days/.test(leaflet)],
  ['7.g', 'hilly everyday routes are left', ({ leaflet }) => /Leave the hilly everyday routes/.test(leaflet)],
  ['7.h', 'races, downhill, stairs and drills count as hard', ({ leaflet }) => /Races, downhill runs, many stairs.*count as hard runs too/.test(leaflet)],
  ['7.i', 'no run beyond 1.1 times the longest of 30 days', ({ leaflet }) => /last 30 days was 6 km\. It grows by a tenth at most/.test(leaflet) && /\| 6\.6 km \|/.test(leaflet)],
  ['7.j', 'nothing in 30 days: the walk-run ladder seeds it', ({ consult, leaflet }) => /longestIn30DaysKm: 0\n/.test(consult) && /November \| 5 min \| 1 min \| 5 times/.test(leaflet)],
  ['7.k', 'fast minutes or climb grow a tenth, the other stays', ({ leaflet }) => /fast minutes or climb grow by a tenth a week/.test(leaflet)],
  ['7.l', 'easy days after a race', ({ leaflet }) => /After it: no run .*, and easy days until \d+ December/.test(leaflet)],
  ['7.m', 'step rate + 5 % with one cue, when over-striding was seen and the rate is low', ({ leaflet }) => /From \w+ \d+ \w+, if your mornings are settled: take slightly quicker steps, \d+ a minute instead of \d+.*your foot lands nearer under you/.test(leaflet)],
  ['7.n', 'no step rate where over-striding was not seen', ({ consult, leaflet }) => /stepsPerMin: 164[\s\S]*overStriding: notSeen/.test(consult) && /may go on, as long as/.test(leaflet) && !/quicker steps/.test(leaflet)],

  // 8. Sitting, stretching, other activities
  ['8.a', 'two thirds of the tolerance, two numbers', ({ consult, leaflet }) => /toleranceMinutes: 25/.test(consult) && /up to 15 minutes, then stand[\s\S]*leaning forward: up to 7 minutes/.test(leaflet)],
  ['8.b', 'at least 5, at most 30, and 5 more a settled step up to the goal', ({ leaflet }) => /up to 30 minutes[\s\S]*by 5 minutes at a time, up to your goal of 120 minutes/.test(leaflet)],
  ['8.c', 'tolerance under 5: no budget, stand, lie on the side, cut-out cushion', ({ leaflet }) => /Stand, walk, or lie on your side instead[\s\S]*cut out/.test(leaflet)],
  ['8.d', 'fixed blocks are met', ({ leaflet }) => /110 minutes and 95 minutes of sitting that cannot be cut short/.test(leaflet)],
  ['8.e', 'no long deep stretches; moving or under 10 s; no rolling on the sit bone', ({ leaflet }) => /long, deep stretches[\s\S]*less than 10 seconds, without force[\s\S]*Do not roll or massage the sit bone/.test(leaflet)],
  ['8.f', 'stretching does not keep from getting hurt', ({ leaflet }) => /does not keep you from getting hurt/.test(leaflet)],
  ['8.g', 'keep, change how, leave until which part, ask', ({ leaflet }) => /Rowing \| Leave until the part “Fast work and sport”[\s\S]*Walking \| Keep[\s\S]*Choir \| Ask us first/.test(leaflet)],
  ['8.h', 'cycling upright and short from stage 2, drop bars later', ({ leaflet }) => /Cycling \| Change how \| Sit upright, keep it short/.test(leaflet)],

  // 9. Words (the banned ones: words.test.ts)
  ['9.a', 'home landmarks: hands, wall, pillows', ({ leaflet }) => /Hands no lower than \d+ cm above the knee[\s\S]*from a wall and just touch it/.test(leaflet) && /stacked pillows/.test(leaflet)],
  ['9.b', 'step height in centimetres, of a step that is there', ({ consult, leaflet }) => /stepCm:\n {4}- 10\n/.test(consult) && /Step of 10 cm/.test(leaflet)],
  ['9.c', 'bending is normal; sore is not harmed; no ban; hard seats come back', ({ leaflet }) => /Sore is not the same as harmed\. Bending is normal, and it comes back.*not a ban/.test(leaflet) && /Hard seats are not banned for ever/.test(leaflet)],
  ['9.d', 'nothing at home: what to use instead', ({ consult, record }) => /rucksack: no\n/.test(consult) && /# Advice:.*nothing-at-home/.test(record)],

  // 10. Ends of the road
  ['10.a', 'prevention: a runner without pain', (one) => /protocol: runner-strength/.test(one.consult) && /while nothing hurts/.test(one.leaflet) && one.stage === 'keepGoing'],
  ['10.b', 'keep: how it grows, early signs, how to start again', ({ leaflet }) => /two sessions running[\s\S]*Early signs:[\s\S]*After a break of 7 to 14 days/.test(leaflet)],
  ['10.c', 'discharge when goal, mornings, strength and sitting are met', ({ record }) =>
    /done 3 times \| met[\s\S]*0 of 10 \| met[\s\S]*2 % behind \| met[\s\S]*120 minutes \| met/.test(record) && /Discharge: all that is asked is met/.test(record)],
  ['10.d', 'a one-page letter', ({ record }) => /# End of treatment: stoat\n[\s\S]*Please send back[\s\S]*Please see at once/.test(record)],

  // The record and the clinician's own entries
  ['R.a', "the clinician's own number, with the rule's beside it", (one) => cell(one, 'loadKg', ({ value, decidedBy, inputs, rule }) => decidedBy === 'clinician' && value === 8 && inputs['byRule'] === 12 && /flu/.test(rule))],
  ['R.b', 'what changed since the last revision', ({ record }) => /# Changes\nFrom stage 1 step 1 \(revision 1\) to stage 2 step 2/.test(record)],
]; // prettier-ignore

describe('every house rule is touched by a case', () => {
  it.each(RULES)('%s: %s', (_id, _rule, evidence) => {
    expect(seen.filter(evidence).map(({ name }) => name)).not.toEqual([]);
  });

  it('names each rule once', () => {
    const ids = RULES.map(([id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has rules of every section', () => {
    expect(new Set(RULES.map(([id]) => id.split('.')[0]))).toEqual(
      new Set(['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', 'R']),
    );
  });

  it('no evidence holds for a case that became no programme unless it speaks of what is printed', () => {
    const blank: Seen = {
      name: 'blank',
      consult: seen.map(({ consult }) => consult).join('\n'),
      stage: null,
      cells: [],
      passedOver: [],
      leaflet: '',
      record: '',
      note: '',
      printed: '',
    };
    expect(RULES.filter(([, , evidence]) => evidence(blank)).map(([id]) => id)).toEqual([]);
  });

  it('every note has 12 to 18 lines, an exercise a line', () => {
    const counts = seen.filter(written).map(({ note }) => note.trimEnd().split('\n').length);
    expect(Math.min(...counts)).toBeGreaterThanOrEqual(12);
    expect(Math.max(...counts)).toBeLessThanOrEqual(18);
  });
});
