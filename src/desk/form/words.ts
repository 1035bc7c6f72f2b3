/** Words of the schema as they are read on a button. */

const WORDS: Readonly<Record<string, string>> = {
  notAsked: 'Not asked',
  notSeen: 'Not seen',
  'walk-run': 'Walk and run',
  keep: 'Keep running',
  none: 'No running',
  unknown: 'Not known',
  auto: 'As the tests say',
  keepGoing: 'Keep going',
  mon: 'Mon',
  tue: 'Tue',
  wed: 'Wed',
  thu: 'Thu',
  fri: 'Fri',
  sat: 'Sat',
  sun: 'Sun',
};

/** @example wordFor('cannotDo.0', 'lie-prone') // => 'Lie prone' */
export function wordFor(name: string, word: string | number): string {
  if (typeof word === 'number') return name === 'stage' ? `Stage ${word}` : String(word);
  const own = WORDS[word];
  if (own !== undefined) return own;
  const plain = word
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .replaceAll('-', ' ')
    .toLowerCase();
  return plain.charAt(0).toUpperCase() + plain.slice(1);
}
