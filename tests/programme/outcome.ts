/** What comes of one case: the files that stand in its `out` folder. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Programme } from '../../src/programme/programme.ts';
import { noteText } from '../../src/outputs/text/noteText.ts';
import { sectionLines, ownLines } from './leafletText.ts';
import { filesBelow, make, workshop, workshopOver, type Made } from './shipped.ts';

export const CASES = readdirSync('tests/cases', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();

/** Text by the name of its file. A case that becomes no programme has what is printed instead. */
export type Outcome = ReadonlyMap<string, string>;

const made = new Map<string, Made>();

/** A case's consults over the shipped library, and over a `library` of its own where `in` has one; made once. */
export function caseMade(name: string): Made {
  const found = made.get(name) ?? makeCase(name);
  made.set(name, found);
  return found;
}

function makeCase(name: string): Made {
  const folder = join('tests/cases', name, 'in');
  const own = join(folder, 'library');
  const over = existsSync(own) ? workshopOver(filesBelow(own)) : workshop;
  return make(filesBelow(folder, 'library/'), over);
}

export function outcomeOf(name: string): Outcome {
  const found = caseMade(name);
  if ('printed' in found) return new Map([['problems.txt', `${found.printed}\n`]]);
  const { programme } = found;
  return new Map([
    ['explain.json', explainText(programme)],
    ['leaflet.txt', `${ownLines(programme).join('\n')}\n`],
    ['note.txt', noteText(programme)],
    ['record.txt', `${recordLines(programme).join('\n')}\n`],
  ]);
}

/** What the case's `out` folder holds. */
export function expectedOf(name: string): Outcome {
  const folder = join('tests/cases', name, 'out');
  if (!existsSync(folder)) return new Map();
  return new Map(readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), 'utf8')]));
}

/** The answer of `explain --json` by contract, an entry a line so that a change is seen where it is. */
export function explainText(programme: Programme): string {
  const { alias, revision, stage, step, steps, record } = programme;
  const cells = steps.flatMap(({ prescriptions }) => prescriptions.flatMap((one) => one.cells));
  const passedOver = record.passedOver.map(({ card, slot, stage: of, because, limit, value }) => ({
    card,
    slot,
    stage: of,
    because,
    limit,
    value,
  }));
  const list = (entries: readonly unknown[]) =>
    entries.length === 0 ? '[]' : `[\n${entries.map((entry) => `  ${JSON.stringify(entry)}`).join(',\n')}\n]`;
  return `{
"alias": ${JSON.stringify(alias)},
"revision": ${revision},
"stage": ${JSON.stringify(stage.chosen)},
"step": ${step},
"cells": ${list(cells)},
"passedOver": ${list(passedOver)},
"week": { "days": ${list(record.week.days)}, "gaveUp": ${list(record.week.gaveUp)} },
"running": ${list(record.running.parts)},
"sitting": ${list(record.sitting.parts)}
}
`;
}

/** What the clinician keeps beside the note, as plain lines. */
function recordLines({ record, stage, letter, advice }: Programme): string[] {
  const table = ({ caption, rows }: { caption: string; rows: readonly (readonly string[])[] }) => [
    `# ${caption}`,
    ...rows.map((row) => row.join(' | ')),
  ];
  return [
    `${stage.chosenBy}: ${stage.chosen}, proposed ${stage.proposed}`,
    ...stage.because,
    ...record.effects,
    ...record.findings.flatMap(table),
    ...table({ ...record.screen, rows: record.screen.rows.filter(([, answer]) => answer !== 'no') }),
    ...record.exercises.flatMap(({ card, because, estimate, remarks }) => [
      `# ${card}: ${because}`,
      ...(estimate === null
        ? ['no estimate']
        : [
            `pull ${estimate.tensionBw}, squeeze ${estimate.compressionBw} (${estimate.squeeze}), strength ${estimate.demand}`,
          ]),
      ...remarks,
    ]),
    ...table(record.totals),
    '# Remarks',
    ...record.remarks,
    ...sectionLines(record.stepsAhead),
    ...(record.changes.length === 0 ? [] : ['# Changes', ...record.changes]),
    ...(letter === null ? [] : sectionLines(letter)),
    `# Advice: ${advice.map(({ id }) => id).join(', ')}`,
  ];
}
