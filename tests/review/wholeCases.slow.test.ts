/**
 * Whole reviews of the demo's first revision: a log goes in, what the clinician reads of it and the keys of the draft come
 * out. A mismatch writes `out-changed` beside `out`, to be read and moved over it when it is right; never in CI.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Log } from '../../src/content/log/log.ts';
import { readLog } from '../../src/content/log/readLog.ts';
import type { Consult } from '../../src/content/library.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { askText, decisionText, MOVE_WORDS, reviewTable } from '../../src/messages/en/clinician/review.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { reviewLogged } from '../../src/programme/reviewed.ts';
import { MOVES, type Review } from '../../src/review/terms.ts';
import { withReview } from '../../src/drafting/reviewedDraft.ts';
import type { Part } from '../../src/messages/shapes.ts';
import { addDays } from '../../src/units/date.ts';
import { programmeOf, shipped, workshop } from '../programme/shipped.ts';

const FOLDER = 'tests/reviews';
const CASES = readdirSync(FOLDER).sort();
const file = 'consults/otter-r1.md';
const { consults } = readConsults([{ file, bytes: readFileSync(`content/${file}`), link: 'no' }], shipped);
const consult = consults[0] as Consult;
const programme = programmeOf(consult);

function reviewOfCase(name: string): { readonly review: Review; readonly log: Log } {
  const path = join(FOLDER, name, 'in', 'otter-r1.log.csv');
  const source = { file: path, bytes: readFileSync(path), link: 'no' as const };
  const { log } = readLog(source, { alias: 'otter', revision: 1 }, shipped.exercises);
  return { review: reviewLogged({ consult, programme, log }, consult.reviewOn, shipped), log };
}

function textOf({ review, log }: ReturnType<typeof reviewOfCase>): string {
  const titleOf = (card: string) => shipped.exercises.get(card)?.title ?? card;
  const { values } = withReview(
    { values: { stage: 'auto', running: { runs: true } }, hints: new Map() },
    { review, eased: programme.eased },
    { ...consult, overrides: [] },
  );
  return [
    decisionText(review),
    ...reviewTable(review, titleOf).rows.map((row) => row.join(' | ')),
    '# To ask',
    ...review.asks.map((one) => askText(one, titleOf)),
    '# The draft',
    JSON.stringify(values, null, 1),
    '# The next leaflet',
    ...nextLines(log, values),
    '',
  ].join('\n');
}

/** The draft as it stands, with the answers of the first visit, made into a leaflet: what is new in it. */
function nextLines(log: Log, values: Readonly<Record<string, unknown>>): string[] {
  const next = {
    ...consult,
    ...(values as Partial<Consult>),
    running: { ...consult.running, ...(values['running'] as Partial<Consult['running']>) },
    id: 'otter-r2',
    revision: 2,
    seenOn: consult.reviewOn,
    startOn: addDays(consult.reviewOn, 1),
    reviewOn: addDays(consult.reviewOn, 22),
  };
  const made = assembleProgramme(next, programme, workshop, { consult, log });
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  const { opening, exercises, record, running, step, stage } = made.programme;
  const from = opening.findIndex((line) => line.startsWith('You did') || line.startsWith('No session'));
  const to = opening.findIndex((line) => line.startsWith('So: '));
  return [
    `stage ${stage.chosen} step ${step}`,
    ...opening.slice(from, to + 1),
    ...exercises.map(({ title, dose, facts, howFar }) =>
      [title, dose, facts[0]?.text ?? '', ...howFar].join(' | '),
    ),
    '# Running says',
    ...running.parts.flatMap(partLines).slice(0, 6),
    ...record.remarks.filter((line) => line.startsWith('Running: the review')),
    '# The note says',
    ...record.note.filter((line) => line.startsWith('Review of revision')),
    '# The pictures say',
    ...record.pictures.map(({ heading, sentence }) => `${heading}: ${sentence}`),
  ];
}

function partLines(part: Part): string[] {
  if (part.kind === 'paragraph') return [part.text];
  return part.kind === 'table' ? part.table.rows.map((row) => row.join(' | ')) : [];
}

describe('the draft tells the clinician what the review says of running', () => {
  const hintOf = (name: string) => {
    const { review } = reviewOfCase(name);
    const starter = { values: { running: { runs: true } }, hints: new Map<string, string>() };
    return withReview(starter, { review, eased: [] }, consult).hints.get('running') ?? '';
  };

  it.each([
    ['eases-back-two-bad-mornings', 'The review says of running: ease back.'],
    ['stays-few-sessions', 'The review says of running: stay.'],
  ])('%s', (name, sentence) => {
    expect(hintOf(name)).toContain(sentence);
    expect(hintOf(name)).toContain('decide again');
  });

  it('and nothing where it goes on', () => {
    expect(hintOf('moves-on')).not.toContain('The review says');
    expect(hintOf('moves-on')).toContain('those of the log');
  });
});

describe('whole reviews', () => {
  it.each(CASES)('%s', (name) => {
    const text = textOf(reviewOfCase(name));
    const expected = join(FOLDER, name, 'out', 'review.txt');
    const same = existsSync(expected) && readFileSync(expected, 'utf8') === text;
    if (!same && process.env['CI'] === undefined) {
      mkdirSync(join(FOLDER, name, 'out-changed'), { recursive: true });
      writeFileSync(join(FOLDER, name, 'out-changed', 'review.txt'), text);
    }
    expect(text).toBe(existsSync(expected) ? readFileSync(expected, 'utf8') : '');
  });

  it('come out as each of the five moves', () => {
    const moves = CASES.map((name) => reviewOfCase(name).review.decision);
    for (const move of MOVES) expect(moves, MOVE_WORDS[move]).toContain(move);
  });
});
