/** What is asked before treatment ends, beside what was found. */
import type { Decided } from '../../../../decisions/decide.ts';
import { dischargeCriteria } from '../../../../decisions/person/discharge.ts';
import { criterionRow, CRITERION_COLUMNS } from '../discharge.ts';
import type { Table } from '../../../shapes.ts';
import { stagesAfter } from '../../../../decisions/stage/stageChoice.ts';

/** One table at the end of treatment and in the last stage before it; none earlier, and none for prevention. */
export function dischargeTable({ person, course, stage }: Decided): Table[] {
  const [next] = stagesAfter(person.protocol, stage.chosen);
  const isNext = next !== undefined && next[0] === 'keepGoing';
  if (course === 'prevention' || (course === 'treatment' && !isNext)) return [];
  return [
    {
      caption: 'Before treatment ends',
      columns: CRITERION_COLUMNS,
      rows: dischargeCriteria(person).map((one) =>
        criterionRow(one, (card) => person.library.exercises.get(card)?.title ?? card),
      ),
    },
  ];
}
