/** The second visit of a person of the shipped content, after a log that was kept to the end: the fullest record there is. */
import type { Consult } from '../../../src/content/library.ts';
import type { LogRow } from '../../../src/content/log/columns.ts';
import type { Log } from '../../../src/content/log/log.ts';
import { assembleProgramme, type Workshop } from '../../../src/programme/assemble.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { addDays, type IsoDate } from '../../../src/units/date.ts';
import { readRows, row } from '../../content/log/logs.ts';

/** Where the pain of each day stands, over and over: settled by the next morning. */
const PAIN = [2, 3, 2, 1];

/** The programme of the visit three weeks after the first; the log lets nothing out. */
export function reviewed(consult: Consult, first: Programme, workshop: Workshop): Programme {
  const { reviewOn } = consult;
  const next: Consult = {
    ...consult,
    id: `${consult.alias}-r2`,
    revision: 2,
    seenOn: reviewOn,
    startOn: addDays(reviewOn, 1),
    reviewOn: addDays(reviewOn, 29),
    outcomes: [...consult.outcomes, { ...consult.outcomes.at(-1)!, on: reviewOn }],
  };
  const made = assembleProgramme(next, first, workshop, { consult, log: keptLog(consult, first) });
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  return made.programme;
}

function keptLog({ startOn, reviewOn }: Consult, { exercises }: Programme): Log {
  const rows: LogRow[] = [];
  for (let at = 0, date: IsoDate = startOn; date < reviewOn; date = addDays(startOn, ++at)) {
    const pain = PAIN[at % PAIN.length]!;
    rows.push(
      row(date, 'morning', { morning: pain - 1 }),
      row(date, 'sitting', { minutes: 40 + at, painDuring: pain }),
    );
    if (at % 2 === 0)
      for (const { card } of exercises)
        rows.push(
          row(date, 'session', {
            card,
            side: 'both',
            done: 'yes',
            sets: 3,
            repetitions: 8,
            painDuring: pain,
          }),
        );
    else if (at % 4 === 1) rows.push(row(date, 'run', { done: 'yes', minutes: 30, km: 5, painDuring: pain }));
  }
  const { log, problems } = readRows(rows);
  if (problems.length > 0) throw new Error(JSON.stringify(problems));
  return log;
}
