/** Everything a patient reads, as lines of plain text: what page and paper print, in the order of the leaflet. */
import type { Block, Inline } from '../../src/content/prose/block.ts';
import { labelsOf } from '../../src/messages/en/labels.ts';
import type { Programme } from '../../src/programme/programme.ts';
import type { Section } from '../../src/messages/shapes.ts';

export const SECTIONS = [
  'precautions',
  'painRule',
  'morningCheck',
  'easier',
  'flare',
  'missedDays',
  'getHelp',
  'week',
  'running',
  'sitting',
  'stretching',
  'activities',
  'whatComesNext',
] as const;

/** The leaflet's own words; the cards' texts come after them, for they are the library's. */
export function leafletLines(programme: Programme): string[] {
  return [...ownLines(programme), ...cardLines(programme)];
}

/** Without the texts of cards and advice. */
export function ownLines(programme: Programme): string[] {
  const { nextSession, exercises, steps, named, emergency, log } = programme;
  return [
    programme.title,
    programme.runningLine,
    programme.dates,
    ...programme.opening,
    emergency.heading,
    ...emergency.lines,
    ...programme.notice,
    `${nextSession.heading}: ${nextSession.when} ${nextSession.minutes}`,
    ...exercises.flatMap(({ title, side, between, dose, doseWords, howFar, facts }) => [
      `# ${title}`,
      side,
      ...(between === null ? [] : [`${between.label}: ${between.text}`]),
      `${dose}, ${doseWords}`,
      ...howFar,
      ...facts.map(({ label, text }) => `${label}: ${text}`),
    ]),
    ...steps.flatMap(({ heading, change, goOnWhen, prescriptions, columns }) => [
      `# ${heading}`,
      ...(change === '' ? [] : [change]),
      ...goOnWhen,
      ...prescriptions.map(
        ({ title, cells }) =>
          `${title}: ${cells
            .filter(({ text }) => text !== '')
            .map(({ cell, text }) => `${columns[cell]} ${text}`)
            .join('; ')}`,
      ),
    ]),
    ...(named.exercises.length === 0 ? [] : [`# ${named.heading}`]),
    ...named.exercises.map(({ title, where, side }) => `${title}: ${where} ${side}`),
    ...SECTIONS.flatMap((name) => sectionLines(programme[name])),
    `# ${log.heading}`,
    log.hint,
    ...log.days.map(({ label, planned }) => `${label}: ${planned}`),
  ];
}

/** Texts of cards and advice, as far as they stand on this leaflet. */
export function cardLines({ exercises, named, advice }: Programme): string[] {
  return [
    ...exercises.flatMap(({ title, body, cautions }) => [`# ${title}`, ...proseLines(body), ...cautions]),
    ...named.exercises.flatMap(({ title, where, body, cautions }) => [
      `# ${title}`,
      where,
      ...proseLines(body),
      ...cautions,
    ]),
    ...advice.flatMap(({ heading, body }) => [`# ${heading}`, ...proseLines(body)]),
  ];
}

/** The labels that stand on every leaflet. */
export function labelLines(programme: Programme): string[] {
  return Object.values(labelsOf(programme.language).leaflet).map(String);
}

export function sectionLines({ heading, parts }: Section): string[] {
  if (parts.length === 0) return [];
  return [
    `# ${heading}`,
    ...parts.flatMap((part) => {
      if (part.kind === 'paragraph') return [part.text];
      if (part.kind === 'list') return part.entries.map((entry) => `- ${entry}`);
      return [
        part.table.caption,
        part.table.columns.join(' | '),
        ...part.table.rows.map((row) => row.join(' | ')),
      ];
    }),
  ];
}

function proseLines(
  body: readonly { readonly heading: string; readonly blocks: readonly Block[] }[],
): string[] {
  return body.flatMap(({ heading, blocks }) => [heading, ...blocks.flatMap(blockLines)]);
}

function blockLines(block: Block): string[] {
  if (block.kind === 'paragraph') return [inlineText(block.text)];
  return block.entries.flatMap(({ text, entries }) => [
    `- ${inlineText(text)}`,
    ...entries.map((entry) => `  - ${inlineText(entry.text)}`),
  ]);
}

function inlineText(inlines: readonly Inline[]): string {
  return inlines.map((one) => (one.kind === 'text' ? one.text : inlineText(one.children))).join('');
}

/** Titles of the library that stand on the leaflet without their words; of titles that lie in one another the longest counts. */
export function namelessTitles(programme: Programme, titles: readonly string[]): string[] {
  const told = new Set([...programme.exercises, ...programme.named.exercises].map(({ title }) => title));
  const longestFirst = titles.toSorted((a, b) => b.length - a.length);
  return leafletLines(programme).flatMap((line) => {
    let rest = line;
    return longestFirst.filter((title) => {
      if (!rest.includes(title)) return false;
      rest = rest.replaceAll(title, '');
      return !told.has(title);
    });
  });
}
