/** Whether what was given out is as it was made: the chain of every person, the set in force, and those kept for good. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { errorAt, type Problem, type ProblemWords } from '../../content/problem.ts';
import { isFolder } from '../io/disk.ts';
import { brokenAt, hashOf, ISSUED, linesOf, type Line } from '../io/issued.ts';
import { shownPath } from '../io/shownPath.ts';
import { readEnds, reaches, type End } from '../io/issuedEnds.ts';
import { isRegularFile, peopleIn } from '../io/people.ts';
import { namesIn } from '../io/standing.ts';
import { personFolder, unsettledIn, type Unsettled } from '../io/swap.ts';

/** Problems of all persons in an output folder; none where there is no such folder. Their files are named as from here. */
export function checkIssued(out: string): Problem[] {
  if (!isFolder(out)) return [];
  const unsettled = unsettledIn(out).map((one) => unsettledAt(personFolder(out, one.alias), one));
  const ends = readEnds(out);
  return [...unsettled, ...peopleIn(out).flatMap((alias) => checkPerson(out, alias, ends[alias]))];
}

function checkPerson(out: string, alias: string, end: End | undefined): Problem[] {
  const folder = personFolder(out, alias);
  const place = shownPath(join(folder, ISSUED));
  const text = textAt(join(folder, ISSUED));
  if (text === null)
    return end !== undefined || isRegularFile(join(folder, 'leaflet.html')) ? [chainLost(place)] : [];
  const broken = brokenAt(text);
  if (broken !== null) return [chainBroken(place, broken)];
  const lines = linesOf(text);
  if (end !== undefined && !reaches(text, end)) return [chainCut(place, lines.length, end)];
  return [...checkPresent(folder, lines), ...checkKept(folder, lines)];
}

/** The set in force is the one of the last line, and nothing is in force after a withdrawal. */
function checkPresent(folder: string, lines: readonly Line[]): Problem[] {
  const last = lines.at(-1);
  if (last === undefined || last.event === 'withdrawn')
    return isRegularFile(join(folder, 'leaflet.html')) ? [inForce(folder)] : [];
  return differing(folder, last).map((name) => changed(join(folder, name), last));
}

/** What is kept of an earlier revision is one of the sets that were given out for it, byte for byte. */
function checkKept(folder: string, lines: readonly Line[]): Problem[] {
  return namesIn(folder).flatMap((name) => {
    const [, revision] = /^r([1-9]\d*)(?:-\d+)?$/.exec(name) ?? [];
    const own = lines.filter((line) => `${line.revision}` === revision && line.files.length > 0);
    const kept = join(folder, name);
    if (own.length === 0 || own.some((line) => differing(kept, line).length === 0)) return [];
    const nearest = own.toSorted((a, b) => differing(kept, a).length - differing(kept, b).length)[0];
    return nearest === undefined
      ? []
      : differing(kept, nearest).map((file) => changed(join(kept, file), nearest));
  });
}

function differing(folder: string, { files }: Line): string[] {
  return files.filter(({ path, sha256 }) => hashAt(join(folder, path)) !== sha256).map(({ path }) => path);
}

function hashAt(place: string): string | null {
  return isRegularFile(place) ? hashOf(readFileSync(place)) : null;
}

function textAt(place: string): string | null {
  return isRegularFile(place) ? readFileSync(place, 'utf8') : null;
}

function problem(file: string, line: number, words: ProblemWords): Problem {
  return errorAt({ file, line, column: 1 }, 'issued', words);
}

function unsettledAt(person: string, { place, is }: Unsettled): Problem {
  return problem(shownPath(is === 'clashes' ? place : person), 1, UNSETTLED[is]);
}

const UNSETTLED: Readonly<Record<Unsettled['is'], ProblemWords>> = {
  waiting: {
    found: 'the files of a build that was stopped, under another name',
    expected: 'in its place',
    fix: 'build again; that puts them back',
  },
  away: {
    found: 'files that were taken away from here because they must not be followed, when the disk was full',
    expected: 'set aside, and written in the list of what was given out',
    fix: 'make room on the disk and build again; that sets them aside',
  },
  clashes: {
    found: 'the files of a build that was stopped, and a folder made by hand since in their place',
    expected: 'one of the two',
    fix: 'move the folder made by hand away, then build again; that puts the others back',
  },
};

function chainLost(file: string): Problem {
  return problem(file, 1, {
    found: 'no list of what was given out',
    expected: 'there',
    fix: `put the list back from a copy; the next build begins a new one. ${WITHOUT_A_COPY}`,
  });
}

function chainCut(file: string, lines: number, end: End): Problem {
  return problem(file, lines + 1, {
    found: `${lines === 1 ? '1 line' : `${lines} lines`} of what was given out`,
    expected: `a list that has line ${end.lines} as it was written`,
    fix: `put the list back from a copy, and find out who changed it. ${WITHOUT_A_COPY}`,
  });
}

const WITHOUT_A_COPY =
  'Where there is no copy, take the alias out of private/issued.json and build again: the list then counts as it stands';

function chainBroken(file: string, line: number): Problem {
  return problem(file, line, {
    found: 'a line that was changed, or one before it taken out',
    expected: 'as it was written',
    fix: 'put the file back from a copy, and find out who changed it',
  });
}

function inForce(folder: string): Problem {
  return problem(shownPath(join(folder, 'leaflet.html')), 1, {
    found: 'a leaflet that was withdrawn',
    expected: 'set aside until its consult was mended',
    fix: 'take it away, then build again',
  });
}

function changed(place: string, { revision, mark, on }: Line): Problem {
  return problem(shownPath(place), 1, {
    found: isRegularFile(place) ? 'other than it was given out' : 'not there',
    expected: `as it was given out for revision ${revision}, mark ${mark ?? 'none'}, ${on}`,
    fix: 'put it back from a copy; of the present revision build again',
  });
}
