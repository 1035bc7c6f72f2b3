/** Who the leaflet is for and why it began, in a few sentences. */
import type { Consult, Protocol } from '../../content/library.ts';
import type { CHANGES } from '../../content/schema/consult.ts';
import type { EmergencyBox } from '../programme.ts';
import type { Clinic } from '../../content/library.ts';
import { dayAndYear, dayText, listText } from './plain.ts';

const CHANGE_WORDS: Readonly<Record<(typeof CHANGES)[number], string>> = {
  hills: 'more hills',
  speed: 'faster running',
  distance: 'more distance',
  'new-class': 'a new class',
  stretching: 'more stretching',
  'long-drives': 'long drives',
  'more-sitting': 'more sitting',
  break: 'a break from training',
  'poor-sleep': 'poor sleep',
  stress: 'a time of stress',
  'new-shoes': 'new shoes',
  'heavy-lifting': 'heavy lifting',
  'nothing-known': '',
};

const SIDE_WORDS = { left: 'left side', right: 'right side', both: 'both sides' } as const;

export function titleText(alias: string): string {
  return `Home exercises for ${alias}`;
}

export function runningLineText(consult: Consult): string {
  return `${consult.alias} · revision ${consult.revision} · ${dayText(consult.startOn)} to ${dayAndYear(consult.reviewOn)}`;
}

export function datesText(consult: Consult): string {
  return `Start on ${dayText(consult.startOn)}. Next review on ${dayAndYear(consult.reviewOn)}.`;
}

/** Who, why it began (from what changed), why this helps. */
export function openingText(consult: Consult, protocol: Protocol): string[] {
  const changed = consult.changedBefore.map((change) => CHANGE_WORDS[change]).filter((words) => words !== '');
  const began =
    changed.length === 0
      ? 'No one thing started it, as far as we know; that is common.'
      : `Before it began there was ${listText(changed.slice(0, 4))}. That was more than the tendon was used to.`;
  return [`This is for your ${protocol.tendon}, ${SIDE_WORDS[consult.side]}.`, ...protocol.why, began];
}

export function emergencyText(clinic: Clinic, country: string): EmergencyBox {
  const local = clinic.emergency[country];
  if (local === undefined) throw new Error(`country ${country}: content checks it against the clinic file`);
  return {
    country: local.country,
    heading: `Emergency: ${local.emergencyNumber}`,
    lines: [
      `Call ${local.emergencyNumber} or go to ${local.department} at once for: new numbness between the legs; new trouble with bladder or bowel; weakness in both legs or getting worse; a foot that drops.`,
      'Also for sudden breathlessness or chest pain, or a leg that is swollen, warm and throbbing.',
      'A sudden pop with a big bruise, or you cannot walk: do not exercise, and be seen the same day.',
      `Urgent but no emergency: ${local.urgentAdvice}.`,
    ],
  };
}

export const NOTICE = [
  'For use by or under a licensed clinician. Local rules come first.',
  'Made for one person. Please do not pass it on as advice for someone else.',
] as const;
