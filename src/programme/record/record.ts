/** What the clinician keeps: findings, why this stage, what decided each exercise, what was passed over, what comes. */
import { dayEntries, gaveUpText, gaveWayText, SESSION_WORDS } from '../phrases/week.ts';
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
  const { person, bounds, running, sitting, shown, passedOver, later } = decided;
  const { consult, protocol, library } = person;
  const { prescriptions } = shown[0];
  const runs = running.plan.weeks[0]?.runs ?? [];
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
    totals: totalsTable(prescriptions, runs, sitting, person, bounds),
    remarks: remarksOf(decided),
    week,
    ...sections,
    stepsAhead: stepsAhead(decided),
    changes: changesFrom(previous, decided),
    cert: certTable(decided),
    settings: settingsTable(protocol, library.clinic),
    versions: { library: library.version, protocol: protocol.id, loadleaf },
    note: noteLines(decided, week.gaveUp),
  };
}

function weekRecord({ week, running, gaveUp }: Decided): ProgrammeRecord['week'] {
  const runs = running.plan.weeks[0]?.runs ?? [];
  return {
    days: week.plan.days.map((day) => ({
      weekday: day.weekday,
      entries: dayEntries(day, runs, SESSION_WORDS),
    })),
    gaveUp: [...week.plan.gaveUp, ...week.plan.tightFixed].map(gaveUpText).concat(gaveUp.map(gaveWayText)),
  };
}

/** A test as the protocol names it, a card by its title. */
function nameOf(id: string, { protocol, library }: Person): string {
  return protocol.tests.find((test) => test.id === id)?.name ?? library.exercises.get(id)?.title ?? id;
}
