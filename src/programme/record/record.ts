/** What the clinician keeps: findings, why this stage, what decided each exercise, what was passed over, what comes. */
import type { Messages } from '../../messages/messages.ts';

import { dayWords } from '../dayWords.ts';
import { WEEKDAYS } from '../../units/weekday.ts';
import { usualWeek } from '../../scheduling/usualWeek.ts';
import type { Decided } from '../../decisions/decide.ts';
import type { Person } from '../../decisions/person/person.ts';
import type { Programme, ProgrammeRecord } from '../programme.ts';
import type { Section } from '../../messages/shapes.ts';
import { totalsOf } from '../../decisions/session/totals.ts';

import type { Review } from '../../review/terms.ts';
import { courseOf } from './course.ts';
import { picturesOf } from './pictures.ts';
import { reviewRecord } from './reviewRecord.ts';
import { changesFrom } from './changesFrom.ts';

import { exerciseRecord } from './exerciseRecord.ts';

import { activityRule, type JudgedActivity } from '../../scheduling/activities.ts';

import { compressionLadder } from './squeeze.ts';

/**
 * `sections`: those of the leaflet that the record repeats. `stageBecause`: why this stage, a sentence each. `previous`: the revision before, null for the first.
 */
export function recordOf(
  say: Messages,
  decided: Decided,
  sections: { readonly running: Section; readonly sitting: Section },
  stageBecause: readonly string[],
  previous: Programme | null,
  review: Review | null,
  loadleaf: string,
): ProgrammeRecord {
  const { person, bounds, sitting, shown, passedOver, later, dated } = decided;
  const { consult, protocol, library } = person;
  const { prescriptions } = shown[0];
  const week = weekRecord(say, decided);
  const course = courseOf(decided, previous);
  return {
    heading: say.recordHeading(consult),
    findings: [
      ...say.findingsTables(consult, (id) => nameOf(id, person), person.model.guardedBy),
      ...say.dischargeTable(decided),
    ],
    screen: say.screenTable(consult),
    effects: say.effectTexts(person),
    notes: consult.notes,
    exercises: prescriptions.map((one) => exerciseRecord(say, one, person, bounds)),
    ladder: compressionLadder(say, prescriptions, person),
    passedOver: [...passedOver, ...later.passedOver].map(say.passedOverText),
    totals: say.totalsTable(
      totalsOf(prescriptions, usualWeek(dated.plan), sitting.now?.uprightMinutes ?? null, person, bounds),
    ),
    remarks: say.remarksOf(decided),
    week,
    ...sections,
    stepsAhead: say.stepsAhead(decided),
    changes: changesFrom(say, previous, decided),
    review: review === null ? null : reviewRecord(say, review, decided),
    course,
    pictures: picturesOf(say, review, course, protocol),
    cert: say.certTable(decided, stageBecause),
    settings: say.settingsTable(protocol, library.clinic),
    versions: { library: library.version, protocol: protocol.id, loadleaf },
    note: say.noteLines(decided, week.gaveUp, (id) => nameOf(id, person), review),
  };
}

/** The usual week, Monday first: of several the fullest; and what was given up, the races' part of it by dates. */
function weekRecord(say: Messages, decided: Decided): ProgrammeRecord['week'] {
  const { week, gaveUp, dated, person, length } = decided;
  const words = dayWords(decided);
  const days = usualWeek(dated.plan);
  return {
    days: WEEKDAYS.map((weekday) => ({
      weekday,
      entries: days
        .filter((day) => day.weekday === weekday)
        .flatMap((day) => say.tableEntries(day, words, 'full')),
    })),
    gaveUp: [
      ...[...week.plan.gaveUp, ...week.plan.tightFixed].map(say.gaveUpText),
      ...week.activities.filter((one) => waits(one, person)).map(say.waitsText),
      ...week.activities.filter((one) => isAskedFirst(one, person)).map(say.askedText),
      ...say.gaveWayTexts(gaveUp, length),
      ...say.lostTexts(dated.plan.lost),
    ],
  };
}

/** Hard sport of which no day is kept before it was asked about. */
function isAskedFirst({ what, verdict, timesPerWeek }: JudgedActivity, { protocol }: Person): boolean {
  return verdict === 'ask' && timesPerWeek > 0 && activityRule(what, protocol.activities)?.hard === true;
}

/** Hard sport that is left until a later stage altogether: it is given up for now, and said so. */
function waits({ what, verdict, timesPerWeek }: JudgedActivity, { protocol }: Person): boolean {
  const rule = activityRule(what, protocol.activities);
  return verdict === 'leave' && timesPerWeek > 0 && rule?.hard === true && rule.meanwhile === 'leave';
}

/** A test as the protocol names it, a card by its title. */
function nameOf(id: string, { protocol, library }: Person): string {
  return protocol.tests.find((test) => test.id === id)?.name ?? library.exercises.get(id)?.title ?? id;
}
