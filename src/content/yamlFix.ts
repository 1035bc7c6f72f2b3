/** What to do about a slip in YAML, by the parser's own code for it. */
import type { ErrorCode } from 'yaml';

const QUOTE_IT = 'put a text that holds a colon or begins with a sign into double quotes';
const ALIGN = 'begin keys of one level in the same column, with spaces';

const FIXES: Partial<Record<ErrorCode, string>> = {
  BAD_COLLECTION_TYPE: ALIGN,
  BAD_DQ_ESCAPE: 'write \\\\ for a backslash, or use single quotes',
  BAD_INDENT: ALIGN,
  BAD_SCALAR_START: QUOTE_IT,
  BLOCK_AS_IMPLICIT_KEY: QUOTE_IT,
  BLOCK_IN_FLOW: 'write a list inside brackets with commas, as [a, b]',
  IMPOSSIBLE: QUOTE_IT,
  MISSING_CHAR: 'look for a quote, bracket or colon that is not there',
  MULTILINE_IMPLICIT_KEY: `write the key and its colon in one line; ${QUOTE_IT}`,
  MULTIPLE_DOCS: 'take out the line that ends the front matter early (... or ---)',
  TAB_AS_INDENT: 'indent with spaces',
  UNEXPECTED_TOKEN: QUOTE_IT,
};

/** The cure for a slip, in words for the author. */
export function yamlFix(code: ErrorCode): string {
  return FIXES[code] ?? QUOTE_IT;
}
