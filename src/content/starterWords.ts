/** Sample texts of a starter that nobody has replaced: none may reach a page. */
import type { FrontMatter } from './frontMatter.ts';
import type { Kind } from './kind.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import { placeAt } from './sourceText.ts';

// Every sample text of the starters begins so, or says that it is one. In a consult the word has no other business.
const SAMPLE = /^starter\b|\bthis is a starter\b/i;
const ANY = /\bstarter\b/i;

/** A Problem for each text of the head that is still the starter's, and for each such line of the body. */
export function starterProblems(front: FrontMatter, kind: Kind): Problem[] {
  const pattern = kind === 'consult' ? ANY : SAMPLE;
  return [...inHead(front, front.value, [], pattern), ...inBody(front, pattern)];
}

function inHead(front: FrontMatter, value: unknown, path: Path, pattern: RegExp): Problem[] {
  if (typeof value === 'string') return pattern.test(value) ? [inHeadAt(front, path)] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    inHead(front, one, [...path, Array.isArray(value) ? Number(key) : key], pattern),
  );
}

function inHeadAt(front: FrontMatter, path: Path): Problem {
  return errorAt(placeOfValue(front, path), 'untouched-starter', {
    path: pathText(path),
    found: writtenAt(front, path),
    ...words('value'),
  });
}

function inBody({ source, bodyOffset }: FrontMatter, pattern: RegExp): Problem[] {
  const lines = source.text.slice(bodyOffset).matchAll(/[^\n]+/g);
  return [...lines].flatMap(({ index, 0: line }) => {
    const at = pattern.exec(line)?.index;
    if (at === undefined) return [];
    const place = placeAt(source, bodyOffset + index + at);
    return [errorAt(place, 'untouched-starter', { found: 'a text of the starter', ...words('text') })];
  });
}

function words(what: string) {
  return {
    expected: `a ${what} of your own: this one is the starter's, and would reach a page`,
    fix: 'write what holds here, or take the line out where it may be left out',
  };
}
