/**
 * The Consensus on Exercise Reporting Template, filled in from the programme: 16 items, 19 with their parts
 * (Slade 2016, British Journal of Sports Medicine 50:1428; wording our own).
 */
import type { Decided } from '../../../../decisions/decide.ts';
import { listText } from '../../plain.ts';
import type { Table } from '../../../shapes.ts';

const LATER = 'not filled in: known after the review';

/** Every item with what this programme says of it. `stageBecause`: why this stage, a sentence each. */
export function certTable(decided: Decided, stageBecause: readonly string[]): Table {
  const facts = certFacts(decided, stageBecause);
  const rows: [string, string, string][] = [
    ['1', 'Equipment', facts.equipment],
    ['2', 'Who teaches', facts.clinician],
    ['3', 'Alone or in a group', 'alone'],
    ['4', 'Supervised or not', 'not supervised, at home; reviewed by the clinician'],
    ['5', 'How adherence is measured', 'log on the leaflet, filled in by the patient'],
    ['6', 'Motivation', facts.goals],
    ['7a', 'Rule for going on', facts.goOn],
    ['7b', 'How it goes on', facts.steps],
    ['8', 'Each exercise', 'pictures, words and landmarks on the leaflet'],
    ['9', 'Home part', 'the whole programme'],
    ['10', 'Parts that are not exercise', 'pain rule, sitting, running, stretching, advice on the leaflet'],
    ['11', 'Adverse events', LATER],
    ['12', 'Setting', 'home'],
    ['13', 'Dose', facts.dose],
    ['14a', 'Generic or tailored', 'tailored'],
    ['14b', 'How tailored', facts.tailoredBy],
    ['15', 'Starting level', facts.start],
    ['16a', 'How fidelity is checked', facts.review],
    ['16b', 'Delivered as planned?', LATER],
  ];
  return { caption: 'Exercise report (CERT)', columns: ['Item', 'Asks for', 'Here'], rows };
}

function certFacts({ person, shown, stage }: Decided, stageBecause: readonly string[]) {
  const { consult, protocol } = person;
  const things = [...new Set(shown[0].prescriptions.flatMap(({ card }) => card.equipment))];
  const goals = consult.goals.map(({ what }) => what);
  const { goingOn } = protocol;
  return {
    equipment: things.length === 0 ? 'none' : listText(things),
    clinician: consult.clinician,
    goals: `${goals.length === 0 ? 'no goal recorded' : listText(goals)}; review on ${consult.reviewOn}`,
    goOn: `whole dose in ${goingOn.doneSessions.value} sessions, morning check within usual + ${goingOn.checkOverUsual.value} for ${goingOn.checkDays.value} days, ${Math.round(goingOn.sessionsDoneShare.value * 100)} % of sessions, at least ${goingOn.leastSessions.value} sessions and ${goingOn.leastDays.value} days`,
    steps: 'one kind of change a step, see steps ahead',
    dose: 'sets, repetitions or seconds, weight, pace, rest, days: see the dosage table',
    tailoredBy: `tests (${consult.tests.map(({ test }) => test).join(', ')}), tested sets, pain, kit, days and minutes`,
    start: stageBecause.join(' ') || stage.name,
    review: `review on ${consult.reviewOn}`,
  };
}
