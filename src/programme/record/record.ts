/** What the clinician keeps: findings, why this stage, what decided each exercise, what was passed over, what comes. */
import { gaveUpText, gaveWayText, lostTexts } from '../phrases/week.ts';
import { tableEntries } from '../phrases/day.ts';
import { dayWords } from '../parts.ts';
import { WEEKDAYS } from '../../units/weekday.ts';
import { usualWeek } from '../../scheduling/usualWeek.ts';
import type { Decided } from '../decide.ts';
import type { Person } from '../person.ts';
import type { Programme, ProgrammeRecord, Section } from '../programme.ts';
import { totalsTable } from '../totals.ts';
import { certTable } from './cert.ts';
import { changesFrom } from './changesFrom.ts';
import { dischargeTable } from './dischargeTable.ts';
import { effectTexts } from './effects.ts';
import { exerciseRecord } from './exerciseRecord.ts';
import { findingsTables, screenTable } from './findings.ts';
import { activityRule, type JudgedActivity } from '../../scheduling/activities.ts';
import { waitsText } from '../phrases/sport.ts';
import { noteLines } from './note.ts';
import { remarksOf } from './remarks.ts';
import { settingsTable } from './settings.ts';
import { compressionLadder } from './squeeze.ts';
import { stepsAhead } from './stepsAhead.ts';

/** `sections`: those of the leaflet that the record repeats. `previous`: the revision before, null for the first. */
export function recordOf(
  decided: Decided,
  sections: { readonly running: Section; readonly sitting: Section },
  previous: Programme | null,
  loadleaf: string,
): ProgrammeRecord {
  const { person, bounds, sitting, shown, passedOver, later, dated } = decided;
  const { consult, protocol, library } = person;
  const { prescriptions } = shown[0];
  const week = weekRecord(decided);
  return {
    heading: `Record for ${consult.alias}, revision ${consult.revision}`,
    findings: [...findingsTables(consult, (id) => nameOf(id, person)), ...dischargeTable(decided)],
    screen: screenTable(consult),
    effects: effectTexts(person),
    notes: consult.notes,
    exercises: prescriptions.map((one) => exerciseRecord(one, person, bounds)),
    ladder: compressionLadder(prescriptions, person),
    passedOver: [...passedOver, ...later.passedOver],
    totals: totalsTable(prescriptions, usualWeek(dated.plan), sitting, person, bounds),
    remarks: remarksOf(decided),
    week,
    ...sections,
    stepsAhead: stepsAhead(decided),
    changes: changesFrom(previous, decided),
    cert: certTable(decided),
    settings: settingsTable(protocol, library.clinic),
    versions: { library: library.version, protocol: protocol.id, loadleaf },
    note: noteLines(decided, week.gaveUp, (id) => nameOf(id, person)),
  };
}

/** The usual week, Monday first: of several the fullest; and what was given up, the races' part of it by dates. */
function weekRecord(decided: Decided): ProgrammeRecord['week'] {
  const { week, gaveUp, dated, person } = decided;
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
      ...gaveUp.map(gaveWayText),
      ...lostTexts(dated.plan.lost),
    ],
  };
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
