/** Where the numbers of a programme come from, as a text for the terminal. */
import type { Programme } from '../../programme/programme.ts';

/** Lines without a line feed at the end. */
export function explanationText(programme: Programme): string {
  return [
    ...opening(programme),
    ...programme.steps.flatMap(stepLines),
    '',
    'Passed over',
    ...programme.record.passedOver.map(
      ({ card, slot, stage, because }) => `  ${String(stage)}  ${card} for ${slot}: ${because}`,
    ),
    '',
    'Week',
    ...programme.record.week.days.map(({ weekday, entries }) => `  ${weekday}  ${entries.join('; ') || '-'}`),
    ...programme.record.week.gaveUp.map((gave) => `  gave up: ${gave}`),
    '',
    'Remarks',
    ...programme.record.remarks.map((remark) => `  ${remark}`),
  ].join('\n');
}

function opening({ alias, revision, stage, step }: Programme): string[] {
  const where = stage.chosen === 'keepGoing' ? 'keep-going stage' : `stage ${stage.chosen}`;
  return [
    `${alias}, revision ${revision}: ${where} (${stage.name}), step ${step}`,
    ...stage.because.map((because) => `  ${because}`),
  ];
}

function stepLines({ heading, change, prescriptions }: Programme['steps'][number]): string[] {
  return [
    '',
    `${heading}${change === '' ? '' : `. ${change}`}`,
    ...prescriptions.flatMap(({ title, slot, cells }) => [
      '',
      `  ${title} (${slot})`,
      ...cells.flatMap(cellLines),
    ]),
  ];
}

const NAME_WIDTH = 14;
const VALUE_WIDTH = 12;

type Cell = Programme['steps'][number]['prescriptions'][number]['cells'][number];

function cellLines({ cell, value, text, rule, decidedBy, source }: Cell): string[] {
  if (text === '' && value === null) return [];
  return [
    `    ${cell.padEnd(NAME_WIDTH)} ${String(value ?? '-').padEnd(VALUE_WIDTH)} ${text}`,
    `    ${' '.repeat(NAME_WIDTH)} by ${decidedBy}: ${rule} [${source.mark}: ${source.cite}]`,
  ];
}
