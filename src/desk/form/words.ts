/** Words of the schema as they are read on a button. */
import { BUTTON_WORDS, stageWord } from '../../messages/en/desk/formWords.ts';

/** @example wordFor('cannotDo.0', 'lie-prone') // => 'Lie prone' */
export function wordFor(name: string, word: string | number): string {
  if (typeof word === 'number') return name === 'stage' ? stageWord(word) : String(word);
  const own = BUTTON_WORDS[word];
  if (own !== undefined) return own;
  const plain = word
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .replaceAll('-', ' ')
    .toLowerCase();
  return plain.charAt(0).toUpperCase() + plain.slice(1);
}
