/** What the screen does to this programme, a sentence for every effect that holds. */
import type { Person } from '../../../../decisions/person/person.ts';
import { suddenRemark } from '../stage.ts';
import { effectText, youngText, maternityText } from '../screen.ts';

/** Empty when nothing of the screen acts. */
export function effectTexts({ consult, effects, maternity, sudden, model }: Person): string[] {
  const named = (['noRunning', 'lightHolds', 'shortHolds'] as const)
    .filter((effect) => effects[effect].length > 0)
    .map((effect) => effectText(effect, effects[effect], consult.screen));
  return [
    ...named,
    ...(effects.under18 ? [youngText(model.guardedBy)] : []),
    ...(sudden === null ? [] : [suddenRemark(sudden)]),
    ...(maternity === null ? [] : [maternityText(maternity)]),
  ];
}
