/** Stands for the package that knows the named signs of HTML: its table comes with the first text that has one. */
import { laterScript } from '../worker/laterScript.ts';

/** The few that every text of ours may have. */
const COMMON: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&nbsp;': '\u00a0',
};

export function decodeHTMLStrict(text: string): string {
  return COMMON[text] ?? laterScript().decodeHTMLStrict(text);
}
