/** html-validate 10.17 on the markup of a page. */
import { HtmlValidate } from 'html-validate';

// Both ways of writing doctype and void elements are HTML; ours is the formatter's. Long titles are the authors'.
const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    'doctype-style': ['error', { style: 'lowercase' }],
    'void-style': ['error', { style: 'selfclosing' }],
    'long-title': 'off',
    'no-trailing-whitespace': 'off',
  },
});

/** What it finds, a line each: rule, message, line. */
export async function faultsOf(markup: string): Promise<string[]> {
  const report = await validator.validateString(markup);
  return report.results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${ruleId}: ${message} (${line})`),
  );
}
