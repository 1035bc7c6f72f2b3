/** The consult on the desk looked back on by its log, and the draft of the next revision: as the command `review` does. */
import { FOLDERS } from '../../content/kind.ts';
import type { Log } from '../../content/log/log.ts';
import { readLogs } from '../../content/log/readLogs.ts';
import { readConsults } from '../../content/readConsults.ts';
import { readFile } from '../../content/readFile.ts';
import { nextDraft } from '../../drafting/nextDraft.ts';
import { askText, decisionText, reviewTable, weeksTable } from '../../messages/en/clinician/review.ts';
import type { Consult } from '../../content/library.ts';
import { reviewDay, reviewLogged } from '../../programme/reviewed.ts';
import { assembled } from '../../programme/revisions.ts';
import { sourceOf } from '../deskData.ts';
import type { ReviewOn, ReviewShown, SheetText } from '../talk.ts';
import type { Bench } from './bench.ts';

/** Null while the consult has a Problem, or is itself still a draft. */
export function reviewSheet(sheet: SheetText, { on, isAsked }: ReviewOn, bench: Bench): ReviewShown | null {
  const own = sourceOf({ file: `${FOLDERS.consult}/${sheet.name}`, text: sheet.text });
  const files = [own, ...sheet.others.filter(({ file }) => file !== own.file).map(sourceOf)];
  const { aliases, current, consults } = readConsults(files, bench.known);
  const consult = current.find(({ alias }) => alias === aliases.get(own.file));
  if (consult === undefined) return null;
  const { logs } = readLogs(files, bench.known, new Set([consult.alias]));
  const { library } = bench;
  const made = assembled(consult, { consults, logs }, bench.workshop);
  if ('refusals' in made) return null;
  const { programme } = made;
  const log = logs.get(consult.id) ?? noLog(consult);
  const review = reviewLogged({ consult, programme, log }, reviewDay({ consult, log }, on, isAsked), library);
  const { value, front } = readFile(own, 'consult');
  if (value === null || front === null) return null;
  const titleOf = (card: string) => library.exercises.get(card)?.title ?? card;
  const revision = consult.revision + 1;
  return {
    decision: decisionText(review),
    move: review.decision,
    table: reviewTable(review, titleOf),
    weeks: weeksTable(review, titleOf),
    asks: review.asks.map((one) => askText(one, titleOf)),
    next: {
      name: `${consult.alias}-r${revision}.md`,
      text: nextDraft(
        { written: front.value as Readonly<Record<string, unknown>>, consult: value },
        bench.known,
        {
          revision,
          today: on,
          schema: schemaWay(sheet.text),
          reviewed: { review, eased: programme.eased },
        },
      ),
    },
  };
}

function noLog({ alias, revision }: Consult): Log {
  return { alias, revision, file: '', entries: [], contradicted: [], unread: 0, alarms: [] };
}

/** As the revision before names it; else where the schema lies for consults inside a content folder. */
function schemaWay(text: string): string {
  return /^# yaml-language-server: \$schema=(\S+)$/m.exec(text)?.[1] ?? '../.schema/consult.json';
}
