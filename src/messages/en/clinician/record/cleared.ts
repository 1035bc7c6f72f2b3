/** What of the screen was cleared, a sentence for each: the clinician who pastes the note must see it there. */
import type { Person } from '../../../../decisions/person/person.ts';
import { clearedText, suddenLimitText } from '../screen.ts';

/** Empty when nothing was. What acts all the same (light holds) stands among the effects. */
export function clearedTexts({ consult, effects, sudden }: Person): string[] {
  const { screen, ageYears, clearances } = consult;
  const acting = new Set([...effects.lightHolds, ...effects.shortHolds, ...effects.noRunning]);
  const speaks = clearances.filter(({ flag }) =>
    flag === 'suddenOnsetUnder18' ? ageYears < 18 : screen[flag] === 'yes' && !acting.has(flag),
  );
  return [
    ...speaks.map(({ flag, by, on }) => clearedText(flag, screen[flag], by, on)),
    ...(sudden === null ? [] : [suddenLimitText(sudden)]),
  ];
}
