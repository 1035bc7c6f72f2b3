/** One person of a folder in a line: where the newest revision stands, when the next review is, and the last of the log. */
import { readLogs } from '../../content/log/readLogs.ts';
import { readFile } from '../../content/readFile.ts';
import { FOLDERS } from '../../content/kind.ts';
import { isoDate } from '../../units/date.ts';
import { sourceOf } from '../deskData.ts';
import type { PersonShown, SheetText } from '../talk.ts';
import type { Bench } from './bench.ts';
import { makeSheet } from './make.ts';

export function personOf(sheet: SheetText, bench: Bench): PersonShown {
  const own = sourceOf({ file: `${FOLDERS.consult}/${sheet.name}`, text: sheet.text });
  const { front } = readFile(own, 'consult');
  const written = (front?.value ?? {}) as Readonly<Record<string, unknown>>;
  const made = makeSheet(sheet, bench);
  const reviewOn = written['reviewOn'];
  return {
    state:
      written['draft'] === true || written['draft'] === 'yes'
        ? 'draft'
        : 'problems' in made
          ? 'stopped'
          : 'made',
    stage:
      'problems' in made ? null : { chosen: `${made.programme.stage.chosen}`, step: made.programme.step },
    isEnded: !('problems' in made) && made.programme.letter !== null,
    reviewOn: typeof reviewOn === 'string' ? isoDate(reviewOn) : null,
    lastLog: lastLog(sheet, bench),
  };
}

/** The newest day of any log of the person; null where nothing was written down. */
function lastLog({ name, others }: SheetText, { known }: Bench): string | null {
  const alias = name.replace(/-r\d+\.md$/, '');
  const { logs } = readLogs(others.map(sourceOf), known, new Set([alias]));
  const days = [...logs.values()].flatMap(({ entries }) => entries.map(({ date }) => date)).sort();
  return days.at(-1) ?? null;
}
