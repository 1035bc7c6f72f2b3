/** The Problems of what is not plausible in one consult, and of entries that confirm nothing. */
import type { FrontMatter } from '../frontMatter.ts';
import type { Nameable } from '../library.ts';
import { placeOfValue, writtenAt } from '../locate.ts';
import { pathText } from '../path.ts';
import { errorAt, type Problem } from '../problem.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import { isHeldToLog, isOverride, weighed, type Idle } from './confirmed.ts';
import type { Doubt } from './doubt.ts';
import { doubtWords, idleWords, isWrongWord } from './doubtWords.ts';
import { doubtsAbout } from './plausibility.ts';

/** `last`: the revision before, null for the first. `readFront` is asked only where there is something to place. */
export function plausibilityProblems(
  readFront: () => FrontMatter | null,
  consult: ConsultFrontMatter,
  last: ConsultFrontMatter | null,
  known: Nameable,
): Problem[] {
  // Where the clinic file is broken nothing can be doubted, and no entry be idle.
  if (known.clinic === null) return [];
  const { open, idle } = weighed(
    doubtsAbout(consult, last, known),
    consult.confirmed,
    (path) => !isOverride(path) && !isHeldToLog(path, last),
  );
  const front = open.length + idle.length === 0 ? null : readFront();
  if (front === null) return [];
  return [...open.map((doubt) => doubtProblem(front, doubt)), ...idle.map((one) => idleProblem(front, one))];
}

function doubtProblem(front: FrontMatter, doubt: Doubt): Problem {
  return errorAt(placeOfValue(front, doubt.path), isWrongWord(doubt) ? 'wrong-word' : 'implausible', {
    path: pathText(doubt.path),
    ...doubtWords(doubt),
  });
}

function idleProblem(front: FrontMatter, idle: Idle): Problem {
  const { key, ...words } = idleWords(idle);
  const path = ['confirmed', idle.index, key];
  return errorAt(placeOfValue(front, path), 'does-not-fit', {
    path: pathText(path),
    ...words,
    found: writtenAt(front, path),
  });
}
