/** The weight named as the thing it is. */
import type { Made } from '../../../dosing/kit.ts';
import { kgText, listText, numberText } from '../plain.ts';

/** @example madeText({ thing: 'dumbbell', count: 2, eachKg: 4 }) // => 'two dumbbells of 4 kg' */
export function madeText(made: Made): string {
  switch (made.thing) {
    case 'nothing':
      return 'no weight';
    case 'dumbbell':
      return made.count === 2
        ? `two dumbbells of ${kgText(made.eachKg)}`
        : `one dumbbell of ${kgText(made.eachKg)}`;
    case 'kettlebell':
      return `kettlebell of ${kgText(made.eachKg)}`;
    case 'bottles':
      return made.count === 2
        ? `two bottles of ${litresText(made.eachL)}`
        : `one bottle of ${litresText(made.eachL)}`;
    case 'bar':
      return made.pairsKg.length === 0
        ? `empty bar of ${kgText(made.barKg)}`
        : `bar of ${kgText(made.barKg)} with ${listText(made.pairsKg.map((kg) => `2 × ${kgText(kg)}`))}`;
    case 'rucksack':
      return `rucksack with ${litresText(made.litres)} of water`;
    case 'band':
      return `${made.band.replaceAll('-', ' ')} band`;
  }
}

/** The same within a sentence. @example aMadeText({ thing: 'kettlebell', eachKg: 8 }) // => 'a kettlebell of 8 kg' */
export function aMadeText(made: Made): string {
  const text = madeText(made);
  const counted = made.thing === 'nothing' || made.thing === 'dumbbell' || made.thing === 'bottles';
  return counted ? text : `${/^[aeiou]/.test(text) ? 'an' : 'a'} ${text}`;
}

function litresText(litres: number): string {
  return `${numberText(litres)} ${litres === 1 ? 'litre' : 'litres'}`;
}
