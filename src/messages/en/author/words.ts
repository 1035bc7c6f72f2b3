/** What an author is told of the words of a card or a protocol. */
import type { CureWords } from '../../shapes.ts';

export function bannedWord(word: string, instead: string): CureWords {
  return {
    found: `text with “${word}”`,
    expected: 'text without the words a leaflet leaves out',
    fix: `write it another way: ${instead}`,
  };
}

export function tradeWord(word: string, instead: string, onLeaflet: boolean): CureWords {
  return {
    found: `text with “${word}”`,
    expected: onLeaflet ? 'text in everyday words' : 'text in everyday words or those of the glossary',
    fix: `say ${instead}`,
  };
}

export function longSentence(words: number, mostWords: number): CureWords {
  return {
    found: `a sentence of ${words} words`,
    expected: `a sentence of at most ${mostWords} words`,
    fix: 'make two sentences of it, one thing to do in each',
  };
}

export function cardTooShortOrLong(words: number, fewestWords: number, mostWords: number): CureWords {
  return {
    found: `a card of ${words} words`,
    expected: `a card of ${fewestWords} to ${mostWords} words under its headings`,
    fix:
      words < fewestWords
        ? 'say more of how to set up, how to move and what to look out for'
        : 'leave out what the figure shows or the plan says',
  };
}

/** `ease`: Flesch reading ease; `longWords`: of the hardest sentence. */
export function hardToRead(
  { grade, formula, ease }: { readonly grade: number; readonly formula: string; readonly ease: number },
  mostGrade: number,
  longWords: readonly string[],
): CureWords {
  const first = longWords.length === 0 ? '' : `, here first in place of ${longWords.join(', ')}`;
  return {
    found: `the hardest sentence of a text of grade ${grade.toFixed(1)} (${formula}; reading ease ${Math.round(ease)})`,
    expected: `in a text of grade ${mostGrade} or below`,
    fix: `write shorter sentences and shorter words${first}`,
  };
}

/** `pose`: what the pose has, as the promises name it. */
export function otherDegrees(words: string, pose: string): CureWords {
  return {
    found: `text with “${words}” of the hip, and the pose has ${pose}`,
    expected: 'text without another number than the pose has',
    fix: 'leave the number out: the plan says how far',
  };
}

/** Words that ask for few at first, against the first dose of a protocol. */
export function manyAtFirst(
  words: string,
  {
    protocol,
    slot,
    repetitions,
    few,
  }: {
    readonly protocol: string;
    readonly slot: string;
    readonly repetitions: number;
    readonly few: number;
  },
): CureWords {
  return {
    found: `"${words}", where ${protocol} begins ${slot} with ${repetitions} repetitions`,
    expected: `words that agree with the dose: ${few} repetitions in a first session are few`,
    fix: 'write fewAtFirst: yes in the card, so that a first session has few, or mend the words',
  };
}
