/** What is shown beside the consult, made from its programme. */
import type { Problem } from '../../content/problem.ts';
import { labelsOf } from '../../messages/en/labels.ts';
import type { LeafletPhotos } from '../../outputs/html/assets.ts';
import { besideOf } from '../../outputs/html/desk/beside.ts';
import type { Cell, Programme } from '../../programme/programme.ts';
import { reasonKey, type Ready, type Reason, type Stopped, type View } from '../talk.ts';
import type { Made } from './make.ts';
import { offersOf } from './offers.ts';
import { isMissing } from './refused.ts';
import { toMakeOf } from './toMake.ts';

export function viewOf(made: Made, photos: LeafletPhotos | undefined = new Map()): View {
  return 'problems' in made ? stopped(made.problems) : ready(made, photos);
}

/** Nothing but keys that are not there yet: the consult is on its way. */
function stopped(problems: readonly Problem[]): Stopped {
  return {
    state: problems.every(isMissing) ? 'incomplete' : 'refused',
    // As the controls are named.
    problems: problems.map((problem) => ({ ...problem, path: problem.path.replace(/\[(\d+)\]/g, '.$1') })),
  };
}

function ready(made: Extract<Made, { programme: Programme }>, photos: LeafletPhotos): Ready {
  const { programme } = made;
  const { alias, revision, title, stage, step } = programme;
  return {
    state: 'ready',
    alias,
    revision,
    title,
    stage: {
      chosen: `${stage.chosen}`,
      name: stage.name,
      proposed: `${stage.proposed}`,
      because: stage.because,
      step,
    },
    beside: besideOf(programme, photos),
    reasons: reasonsOf(programme),
    slots: offersOf(made),
    cards: programme.exercises.map(({ card }) => card),
    toMake: toMakeOf(programme),
  };
}

function reasonsOf({ steps, language }: Programme): Readonly<Record<string, Reason>> {
  const labels = labelsOf(language).record;
  return Object.fromEntries(
    steps.flatMap(({ prescriptions, columns }) =>
      prescriptions.flatMap(({ title, cells }) =>
        cells.map((cell): [string, Reason] => [
          reasonKey(cell.step, cell.card, cell.cell),
          reasonOf(cell, title, columns[cell.cell], labels.decided[cell.decidedBy]),
        ]),
      ),
    ),
  );
}

function reasonOf(cell: Cell, title: string, label: string, decidedBy: string): Reason {
  const inputs = Object.entries(cell.inputs).map(([name, value]) => `${name} ${value ?? '-'}`);
  return {
    title,
    label,
    text: cell.text,
    rule: cell.rule,
    inputs: inputs.join(', '),
    decidedBy,
    source: cell.source.cite,
    mark: cell.source.mark,
  };
}
