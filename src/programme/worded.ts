/** What was refused, in words: as every Problem is printed. */
import { messagesIn, type Messages } from '../messages/messages.ts';
import type { Clinic, Library } from '../content/library.ts';
import type { ScreenPart } from '../content/readScreen.ts';
import type { ScreenItem } from '../content/schema/consult.ts';
import { screenEffects } from '../decisions/screen/screen.ts';
import type { Refusal as Decided } from '../decisions/terms/refusal.ts';
import { alarmText, withdrawnText } from '../messages/en/clinician/screen.ts';
import type { LogAlarm } from '../decisions/screen/alarms.ts';
import { errorAt, type Problem } from '../content/problem.ts';
import type { Refusal } from '../units/refusal.ts';
import { testNameIn } from '../content/testName.ts';

// As the commands speak, whatever the patient's language.
const COMMAND_LINE = messagesIn('en');

/** `library`: null where it cannot be read; a test is then named by its id. */
export function worded(
  { code, id, path, why }: Decided,
  library: Pick<Library, 'exercises' | 'protocols'> | null,
  protocol: string | null,
  say: Messages = COMMAND_LINE,
): Refusal {
  const { found, expected, fix } = say.refusalWords(why, testNameIn(library, protocol));
  return { code, kind: 'consult', id, path, found, expected, fix };
}

export interface Stop {
  readonly refusal: Refusal;
  /** The item was answered yes; else it counts like one. */
  readonly isYes: boolean;
}

/** Every item of a screen that stops a programme, though the clinic's emergency wording may be missing. */
export function wordedStops(part: ScreenPart, clinic: Pick<Clinic, 'emergency'> | null): readonly Stop[] {
  const effects = screenEffects(part, clinic ?? { emergency: {} });
  if (!('refusals' in effects)) return [];
  return effects.refusals.map((refusal) => ({
    refusal: wordedStop(refusal),
    isYes: part.screen[String(refusal.path[1]) as ScreenItem] === 'yes',
  }));
}

// Of a screen, which names no test.
function wordedStop(refusal: Decided): Refusal {
  return worded(refusal, null, null);
}

/** Of a file that is not built itself, but newer than what is in use. */
export function wordedWithdrawal(refusal: Decided): Refusal {
  const said = wordedStop(refusal);
  return { ...said, fix: COMMAND_LINE.withdrawnText(said.fix) };
}

/** Of a yes in the log: what was written, and what to do now. */
export function wordedAlarm({ file, line, column, item, date, refusal }: LogAlarm): Problem {
  const plain = alarmText(item, date);
  const fix = refusal === null ? plain.fix : withdrawnText(wordedStop(refusal).fix);
  return errorAt({ file, line, column }, 'screen-block', { ...plain, fix });
}
