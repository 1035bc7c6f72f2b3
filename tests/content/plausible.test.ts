/** Soft limits: settings of the clinic, and the same where a clinic file leaves them out. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { lastingPaths } from '../../src/content/plausible/lasting.ts';
import { doubtsAbout } from '../../src/content/plausible/plausibility.ts';
import { readFile } from '../../src/content/readFile.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { plausible } from '../../src/content/schema/plausible.ts';
import { fileOf, filesWith, SAMPLE } from './sample.ts';

const OTTER = 'consults/otter-r1.md';

describe('what is taken over into the next revision', () => {
  it('is what was confirmed of body, kit and habits, not of tests, dates or a jump', () => {
    const { known } = readLibrary(filesWith());
    const text = SAMPLE[OTTER].replace('dumbbellsKg: [5, 10]', 'dumbbellsKg: [5, 100]')
      .replace('kettlebellsKg: []', 'kettlebellsKg: [26]')
      .replace('massKg: 68', 'massKg: 180')
      .replace('reviewOn: 2026-03-24', 'reviewOn: 2026-06-24')
      .replace('loadKg: 10', 'loadKg: 290');
    const { value } = readFile(fileOf(OTTER, text), 'consult');
    if (value === null) throw new Error('the consult must be readable');
    expect(doubtsAbout(value, null, known).map(({ path }) => path.join('.'))).toEqual([
      'massKg',
      'testedSets.0.loadKg',
      'kit.dumbbellsKg.1',
      'kit.kettlebellsKg.0',
      'reviewOn',
    ]);
    expect([...lastingPaths(value, known)]).toEqual(['massKg', 'kit.dumbbellsKg.1', 'kit.kettlebellsKg.0']);
  });
});

describe('the soft limits', () => {
  it('stand in the shipped clinic file as they hold in one that leaves them out', () => {
    const text = readFileSync('content/clinic.md', 'utf8');
    const written = parseDocument(text.slice(4, text.indexOf('\n---\n', 4))).toJS() as { plausible: unknown };
    expect(written.plausible).toEqual(plausible.parse({}));
    expect(readLibrary(filesWith()).library?.clinic.plausible).toEqual(plausible.parse({}));
  });

  it('are each a number of our own or one with its source', () => {
    for (const { mark, cite } of Object.values(plausible.parse({})) as { mark: string; cite?: string }[])
      expect(mark === 'choice' || cite !== undefined).toBe(true);
  });

  it('follow a clinic that sets one of them, and leave the others', () => {
    const clinic = SAMPLE['clinic.md'].replace(
      '\n---\n\n## About',
      '\nplausible: { dumbbellToKg: { value: 8, mark: choice } }\n---\n\n## About',
    );
    const { known } = readLibrary(filesWith({ 'clinic.md': clinic }));
    const { problems } = readConsults([fileOf(OTTER, SAMPLE[OTTER])], known);
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual(['implausible kit.dumbbellsKg[1]']);
    expect(known.clinic?.plausible.kettlebellToKg).toEqual(plausible.parse({}).kettlebellToKg);
  });

  it('ask nothing where the clinic file, which holds them, is broken', () => {
    const { known } = readLibrary(filesWith({ 'clinic.md': 'nothing' }));
    const slip = SAMPLE[OTTER].replace('massKg: 68', 'massKg: 180');
    expect(readConsults([fileOf(OTTER, slip)], known).problems).toEqual([]);
  });
});
