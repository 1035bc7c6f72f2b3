/**
 * The Consensus on Exercise Reporting Template, filled in from the programme: 16 items, 19 with their parts
 * (Slade 2016, British Journal of Sports Medicine 50:1428; wording our own).
 */
import type { Table } from '../programme.ts';

/** What the items need to know; each a sentence. */
export interface CertFacts {
  readonly equipment: string;
  readonly clinician: string;
  readonly goals: string;
  readonly goOn: string;
  readonly steps: string;
  readonly dose: string;
  readonly tailoredBy: string;
  readonly start: string;
  readonly review: string;
}

const LATER = 'not filled in: known after the review';

export function certTable(facts: CertFacts): Table {
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
