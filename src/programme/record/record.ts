/** What the clinician keeps: findings, why this stage, what decided each exercise, what was passed over, what comes. */
import { gaveUpText, lostTexts, gaveWayTexts } from '../../messages/en/patient/week.ts';
import { tableEntries } from '../../messages/en/patient/day.ts';
import { dayWords } from '../dayWords.ts';
import { WEEKDAYS } from '../../units/weekday.ts';
import { usualWeek } from '../../scheduling/usualWeek.ts';
import type { Decided } from '../../decisions/decide.ts';
import type { Person } from '../../decisions/person/person.ts';
import type { Programme, ProgrammeRecord } from '../programme.ts';
import type { Section } from '../../messages/shapes.ts';
import { totalsTable } from '../totals.ts';
import { certTable } from '../../messages/en/clinician/record/cert.ts';
import type { Review } from '../../review/terms.ts';
import { reviewRecord } from './reviewRecord.ts';
import { changesFrom } from './changesFrom.ts';
import { dischargeTable } from '../../messages/en/clinician/record/dischargeTable.ts';
import { effectTexts } from '../../messages/en/clinician/record/effects.ts';
import { exerciseRecord } from './exerciseRecord.ts';
import { findingsTables, screenTable } from '../../messages/en/clinician/record/findings.ts';
import { activityRule, type JudgedActivity } from '../../scheduling/activities.ts';
import { waitsText, askedText } from '../../messages/en/patient/sport.ts';
import { noteLines } from '../../messages/en/clinician/record/note.ts';
import { remarksOf } from '../../messages/en/clinician/record/remarks.ts';
import { settingsTable } from '../../messages/en/clinician/record/settings.ts';
import { compressionLadder } from './squeeze.ts';
import { stepsAhead } from '../../messages/en/clinician/record/stepsAhead.ts';
import { passedOverText } from '../../messages/en/clinician/obstacles.ts';

/** `sections`: those of the leaflet that the record repeats. `previous`: the revision before, null for the first. */
export function recordOf(
  decided: Decided,
  sections: { readonly running: Section; readonly sitting: Section },
  previous: Programme | null,
  review: Review | null,
  loadleaf: string,
): ProgrammeRecord {
  const { person, bounds, sitting, shown, passedOver, later, dated } = decided;
  const { consult, protocol, library } = person;
  const { prescriptions } = shown[0];
  const week = weekRecord(decided);
  return {
    heading: `Record for ${consult.alias}, revision ${consult.revision}`,
    findings: [
      ...findingsTables(consult, (id) => nameOf(id, person), person.model.guardedBy),
      ...dischargeTable(decided),
    ],
    screen: screenTable(consult),
    effects: effectTexts(person),
    notes: consult.notes,
    exercises: prescriptions.map((one) => exerciseRecord(one, person, bounds)),
    ladder: compressionLadder(prescriptions, person),
    passedOver: [...passedOver, ...later.passedOver].map(passedOverText),
    totals: totalsTable(prescriptions, usualWeek(dated.plan), sitting, person, bounds),
    remarks: remarksOf(decided),
    week,
    ...sections,
    stepsAhead: stepsAhead(decided),
    changes: changesFrom(previous, decided),
    review: review === null ? null : reviewRecord(review, decided),
    cert: certTable(decided),
    settings: settingsTable(protocol, library.clinic),
    versions: { library: library.version, protocol: protocol.id, loadleaf },
    note: noteLines(decided, week.gaveUp, review),
  };
}

/** The usual week, Monday first: of several the fullest; and what was given up, the races' part of it by dates. */
function weekRecord(decided: Decided): ProgrammeRecord['week'] {
  const { week, gaveUp, dated, person, length } = decided;
  const words = dayWords(decided);
  const days = usualWeek(dated.plan);
  return {
    days: WEEKDAYS.map((weekday) => ({
      weekday,
      entries: days
        .filter((day) => day.weekday === weekday)
        .flatMap((day) => tableEntries(day, words, 'full')),
    })),
    gaveUp: [
      ...[...week.plan.gaveUp, ...week.plan.tightFixed].map(gaveUpText),
      ...week.activities.filter((one) => waits(one, person)).map(waitsText),
      ...week.activities.filter((one) => isAskedFirst(one, person)).map(askedText),
      ...gaveWayTexts(gaveUp, length),
      ...lostTexts(dated.plan.lost),
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
