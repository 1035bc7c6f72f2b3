/** What any leaflet must be, whatever programme it is of: by the rules, whole, and nothing over anything. */
import type { Programme } from '../../../src/programme/programme.ts';
import { readObjects } from './objects.ts';
import { structureOf, textIn, textsByMark } from './structure.ts';
import { openPdf, textBoxes, type TextBox } from './viewer.ts';

/** Texts of a programme that its leaflet does not say word for word. */
export function unsaid(programme: Programme, bytes: Uint8Array): readonly string[] {
  const structure = structureOf(readObjects(bytes));
  const said = normal(structure.top.map((element) => textIn(element, textsByMark(structure))).join(' '));
  return printed(programme).filter((text) => !said.includes(normal(text)));
}

/** Texts over the edge of a sheet, pairs of texts over one another, and degrees too small to read. */
export async function collisions(bytes: Uint8Array): Promise<readonly string[]> {
  const pdf = await openPdf(bytes);
  const faults: string[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const page = await pdf.getPage(at);
    const { width, height } = page.getViewport({ scale: 1 });
    const boxes = await textBoxes(page);
    faults.push(
      ...boxes.filter((box) => isOver(box, width, height)).map((box) => `page ${at}, edge: ${box.text}`),
    );
    faults.push(...boxes.filter(isTinyAngle).map(({ text }) => `page ${at}, under 7 points: ${text}`));
    faults.push(...overlaps(boxes).map((pair) => `page ${at}: ${pair}`));
  }
  await pdf.destroy();
  return faults;
}

/** What must stand in the leaflet word for word. */
function printed(programme: Programme): readonly string[] {
  const { exercises, steps, named, advice, log, clinic, emergency, nextSession, opening, notice } = programme;
  const sections = [
    programme.precautions,
    programme.painRule,
    programme.morningCheck,
    programme.easier,
    programme.flare,
    programme.missedDays,
    programme.getHelp,
    programme.week,
    programme.running,
    programme.sitting,
    programme.stretching,
    programme.activities,
    programme.whatComesNext,
  ].filter(({ parts }) => parts.length > 0);
  return [
    programme.title,
    programme.dates,
    programme.clinician,
    clinic.name,
    ...clinic.contact,
    ...opening,
    ...notice,
    emergency.heading,
    emergency.call,
    ...emergency.lines,
    ...emergency.then,
    nextSession.heading,
    nextSession.when,
    nextSession.minutes,
    ...exercises.flatMap((one) => [
      one.title,
      one.side,
      // The paper draws the sign by its parts.
      one.doseSign.figures,
      one.doseWords,
      ...one.howFar,
      ...one.cautions,
      ...(one.figures?.captions ?? []),
      ...[one.figures?.legend ?? null].flatMap((legend) => legend ?? []),
      ...one.facts.map(({ text }) => text),
      ...stringsIn(one.body, ['heading', 'text']),
    ]),
    ...steps.flatMap((step) => [
      step.heading,
      step.change,
      ...step.goOnWhen,
      ...(step.present ? [step.caption] : []),
      ...step.prescriptions.flatMap(({ title, cells }) => [title, ...cells.map(({ text }) => text)]),
    ]),
    ...sections.flatMap((section) =>
      stringsIn(section, ['heading', 'text', 'entries', 'caption', 'columns', 'rows']),
    ),
    ...(named.exercises.length === 0 ? [] : [named.heading]),
    ...named.exercises.flatMap((one) => [
      one.title,
      one.where,
      one.side,
      ...one.cautions,
      ...(one.figures === null ? [] : one.figures.captions),
      ...stringsIn(one.body, ['heading', 'text']),
    ]),
    ...advice.flatMap((card) => stringsIn(card, ['heading', 'text'])),
    log.heading,
    log.hint,
    ...log.columns,
    ...log.days.flatMap(({ label, planned }) => [label, planned]),
  ].filter((text) => normal(text) !== '');
}

function stringsIn(node: unknown, keys: readonly string[], key = ''): readonly string[] {
  if (typeof node === 'string') return keys.includes(key) ? [node] : [];
  if (Array.isArray(node)) return node.flatMap((one) => stringsIn(one, keys, key));
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([name, value]) => stringsIn(value, keys, name));
}

/** White space plays no part: a long word is broken without one, a paragraph ends without one. */
function normal(text: string): string {
  return text.normalize('NFC').replace(/\s+/g, '');
}

// The number beside an arc; 0.68 of its size is the height of its digits.
function isTinyAngle({ text, top, bottom }: TextBox): boolean {
  return /^−?\d+°$/.test(text.trim()) && (bottom - top) / 0.68 < 6.99;
}

function isOver({ left, top, right, bottom }: TextBox, width: number, height: number): boolean {
  return left < 20 || top < 20 || right > width - 20 || bottom > height - 20;
}

/** Pairs of boxes that share more than a hair of paper. */
function overlaps(boxes: readonly TextBox[]): readonly string[] {
  const sorted = [...boxes].sort((a, b) => a.top - b.top);
  return sorted.flatMap((one, at) => {
    const found: string[] = [];
    for (const other of sorted.slice(at + 1)) {
      if (other.top > one.bottom) break;
      const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const down = Math.min(one.bottom, other.bottom) - other.top;
      if (across > 1 && down > 1) found.push(`${one.text} | ${other.text}`);
    }
    return found;
  });
}
