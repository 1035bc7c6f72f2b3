/** A plain note of 12 to 15 lines to paste into the clinic's own system. */
import type { Consult } from '../../content/library.ts';
import type { Prescription } from '../prescribe.ts';
import type { StageChoice } from '../programme.ts';
import { listText } from '../phrases/plain.ts';
import { stageWord } from '../stageChoice.ts';

export interface NoteFacts {
  readonly consult: Consult;
  readonly stage: StageChoice;
  readonly step: number;
  readonly prescriptions: readonly Prescription[];
  readonly effects: readonly string[];
  readonly running: string;
  readonly sitting: string;
  readonly painRule: string;
  readonly gaveUp: readonly string[];
}

const MOST_LINES = 15;

export function noteLines(facts: NoteFacts): string[] {
  const { consult, stage, step, prescriptions } = facts;
  const before = [
    `Home exercise programme for ${consult.alias}, revision ${consult.revision}. Seen ${consult.seenOn} by ${consult.clinician}.`,
    `Side: ${consult.side}. Irritability ${consult.irritability}, next day ${consult.response24h}, usual morning pain ${consult.usualMorningPain}/10.`,
    `Screen: ${facts.effects.length === 0 ? 'nothing that limits the programme.' : facts.effects.join(' ')}`,
    `${stageWord(stage.chosen)} (${stage.name}), step ${step}; ${stage.chosenBy === 'proposal' ? 'as proposed from the tests' : `chosen by the clinician, proposal ${stageWord(stage.proposed)}`}.`,
  ];
  const after = [
    `Running: ${facts.running}`,
    `Sitting: ${facts.sitting}`,
    facts.painRule,
    `Given up to fit: ${facts.gaveUp.length === 0 ? 'nothing.' : facts.gaveUp.join(' ')}`,
    `Goals: ${consult.goals.length === 0 ? 'not recorded.' : `${listText(consult.goals.map(({ what }) => what))}.`}`,
    `Review ${consult.reviewOn}. Leaflet with emergency wording for ${consult.country} given.`,
  ];
  return [...before, ...exerciseLines(prescriptions, MOST_LINES - before.length - after.length), ...after];
}

// One line an exercise; where there are more than lines, the last line holds the rest.
function exerciseLines(prescriptions: readonly Prescription[], lines: number): string[] {
  const texts = prescriptions.map(({ card, cells }) => {
    const text = (name: string) => cells.find(({ cell }) => cell === name)?.text ?? '';
    const parts = [
      text('sets'),
      text('repetitions') || text('holdSeconds'),
      text('loadKg'),
      text('hipFlexionDeg') && `hip bend ${text('hipFlexionDeg')}`,
      text('days'),
    ];
    return `${card.title}: ${parts.filter((part) => part !== '').join(', ')}.`;
  });
  return texts.length <= lines ? texts : [...texts.slice(0, lines - 1), texts.slice(lines - 1).join(' ')];
}
