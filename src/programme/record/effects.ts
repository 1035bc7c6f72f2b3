/** What the screen does to this programme, a sentence for every effect that holds. */
import type { Person } from '../person.ts';
import { effectText, YOUNG_TEXT } from '../phrases/screen.ts';

/** Empty when nothing of the screen acts. */
export function effectTexts({ consult, effects }: Person): string[] {
  const named = (['noRunning', 'lightHolds', 'shortHolds'] as const)
    .filter((effect) => effects[effect].length > 0)
    .map((effect) => effectText(effect, effects[effect], consult.screen));
  return effects.under18 ? [...named, YOUNG_TEXT] : named;
}
