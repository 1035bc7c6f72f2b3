/** What is asked before treatment ends, beside what was found. */
import type { Decided } from '../../../../decisions/decide.ts';
import { dischargeCriteria } from '../../../../programme/discharge.ts';
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
      columns: ['Asked', 'Found', 'Met'],
      rows: dischargeCriteria(person).map(({ name, found, asked, met }) => [
        `${name}: ${asked}`,
        found,
        met === null ? 'not recorded' : met ? 'yes' : 'no',
      ]),
    },
  ];
}
