/** One reading of a screen for drafts, broken files and whole ones; a table of what each file still says. */
import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/content/readFile.ts';
import { answeredYes, readScreen, screenPart } from '../../src/content/readScreen.ts';
import { isDraft } from '../../src/content/draft.ts';
import { fileOf, SAMPLE } from './sample.ts';

const OTTER = 'consults/otter-r1.md';
const WHOLE = SAMPLE[OTTER].replace(/\n(\s*)fever: no\b/, '\n$1fever: yes');

function reading(text: string) {
  const file = fileOf(OTTER, text);
  const { front } = readFile(file, 'consult');
  return { said: readScreen(file, front), draft: isDraft(file, front) };
}

describe('a screen', () => {
  it.each([
    ['of a whole file', WHOLE, { yes: ['fever'], whole: true, age: 41 }],
    [
      'beside a wrong mass',
      WHOLE.replace('massKg: 68', 'massKg: heavy'),
      { yes: ['fever'], whole: true, age: 41 },
    ],
    [
      'of someone whose age cannot be read',
      WHOLE.replace('ageYears: 41', 'ageYears: old'),
      { yes: ['fever'], whole: true, age: 0 },
    ],
    [
      'with an answer that is none',
      WHOLE.replace('  fever: yes', '  fever: yes\n  footDrop: perhaps'),
      { yes: ['fever'], whole: false, age: 41 },
    ],
    [
      'whose keys cannot be read',
      WHOLE.replace('massKg: 68', 'massKg: [68'),
      { yes: ['fever'], whole: false, age: 0 },
    ],
  ])('%s', (_, text, { yes, whole, age }) => {
    const { said } = reading(text);
    expect(said.yes).toEqual(yes);
    expect(screenPart('otter-r1', said) !== null).toBe(whole);
    expect(said.ageYears).toBe(age);
    // Both views are made of one reading, so they cannot tell two things of one answer.
    expect(answeredYes('otter-r1', said).screen.fever).toBe('yes');
    if (whole) expect(screenPart('otter-r1', said)?.screen.fever).toBe('yes');
  });

  it('is passed over where it was not asked, and draft goes by its key or its line', () => {
    const asked = SAMPLE[OTTER].replace(/fever: no\b/, 'fever: notAsked');
    expect(answeredYes('otter-r1', reading(asked).said).screen.fever).toBe('no');
    expect(screenPart('otter-r1', reading(asked).said)?.screen.fever).toBe('notAsked');
    expect(reading(SAMPLE[OTTER].replace('alias: otter', 'alias: otter\ndraft: yes')).draft).toBe(true);
    expect(
      reading(SAMPLE[OTTER].replace('alias: otter', 'alias: otter\ndraft: yes\nmassKg: [68')).draft,
    ).toBe(true);
    expect(reading(SAMPLE[OTTER]).draft).toBe(false);
  });
});
