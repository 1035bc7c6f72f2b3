/**
 * How deep YAML nests, told before it is parsed: the parser calls itself at each level, and needs minutes for some
 * heads of a few thousand levels. Real files nest about six deep.
 */

const MOST_OPEN_BRACKETS = 32;
const MOST_INDENT = 64;
const MOST_MARKS_IN_A_ROW = 8;

const OVER_INDENTED = new RegExp(`^ {${MOST_INDENT + 1}}`, 'm');
// `- - - - x`: each mark opens a level in the same line.
const MARKS_IN_A_ROW = new RegExp(`^ *(?:[-?:][ \\t]+){${MOST_MARKS_IN_A_ROW + 1}}`, 'm');

/** Offset from which the text nests too deeply to be meant, or null. Brackets in texts count too; so many is a slip. */
export function tooDeepAt(head: string): number | null {
  const line = OVER_INDENTED.exec(head) ?? MARKS_IN_A_ROW.exec(head);
  return line?.index ?? bracketTooDeep(head);
}

function bracketTooDeep(head: string): number | null {
  let open = 0;
  for (const { 0: bracket, index } of head.matchAll(/[[\]{}]/g)) {
    open = '[{'.includes(bracket) ? open + 1 : Math.max(0, open - 1);
    if (open > MOST_OPEN_BRACKETS) return index;
  }
  return null;
}
