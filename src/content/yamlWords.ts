/** Slips in YAML in the author's words, by the parser's own code for each. */
import type { ErrorCode } from 'yaml';

interface SlipWords {
  readonly found: string;
  readonly fix: string;
}

const QUOTE_IT = 'put a text that holds a colon, or begins with a sign, into double quotes';

const COLUMN = {
  found: 'a line that begins in a column of its own',
  fix: 'begin keys of one level in the same column, with spaces',
} as const;

const SLIPS: Partial<Record<ErrorCode, SlipWords>> = {
  BAD_COLLECTION_TYPE: COLUMN,
  BAD_INDENT: COLUMN,
  BAD_DQ_ESCAPE: {
    found: 'a backslash that means nothing here',
    fix: 'write \\\\ for a backslash, or use single quotes',
  },
  BAD_SCALAR_START: { found: 'a text that begins with a sign of its own meaning', fix: QUOTE_IT },
  BLOCK_AS_IMPLICIT_KEY: {
    found: 'a second key in one line, or a line too far in',
    fix: `${QUOTE_IT}; begin keys of one level in the same column`,
  },
  MULTIPLE_DOCS: {
    found: 'front matter that ends early',
    fix: 'take out the line of three dots or hyphens',
  },
  TAB_AS_INDENT: { found: 'a tab at the beginning of a line', fix: 'indent with spaces' },
};

/** What was found and the cure; where we have no words of our own, the parser's first line. */
export function yamlWords(code: ErrorCode, message: string): SlipWords {
  const closing = /end with an? ([\]}])/.exec(message)?.[1];
  if (closing !== undefined)
    return { found: `no ${closing} before this`, fix: 'close the bracket opened above' };
  return SLIPS[code] ?? { found: `a slip in YAML: ${message.split('\n')[0] ?? ''}`, fix: OTHERWISE };
}

const OTHERWISE = `look for a quote, bracket, comma or colon that is missing or too many; ${QUOTE_IT}`;
