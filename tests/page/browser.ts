/** Debian's Chromium by playwright-core, with nothing to say to anybody. */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createRequire } from 'node:module';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const AXE_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

export function launch(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM'] ?? PLACES.find((place) => existsSync(place));
  if (executablePath === undefined)
    throw new Error(`no browser at ${PLACES.join(' or ')}, and CHROMIUM is not set`);
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** The markup as a file, and its address. */
export function fileOf(markup: string, name: string): string {
  const path = join(mkdtempSync(join(tmpdir(), 'sheet-')), `${name}.html`);
  writeFileSync(path, markup);
  return pathToFileURL(path).href;
}

/** Opens the file in a context of its own, hands the page to `look`, closes the context. */
export async function opened<T>(
  browser: Browser,
  address: string,
  options: BrowserContextOptions,
  look: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    await page.goto(address);
    return await look(page);
  } finally {
    await context.close();
  }
}

/** Violations axe finds, a line each: rule, how often, the first place. The content policy must be bypassed. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async (tags) => {
    const { axe } = globalThis as unknown as { axe: { run(root: unknown, options: object): Promise<Found> } };
    interface Found {
      readonly violations: readonly {
        readonly id: string;
        readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[];
      }[];
    }
    const { document } = globalThis as unknown as { document: unknown };
    const found = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
    return found.violations.map(
      ({ id, nodes }) => `${id} × ${nodes.length}: ${nodes[0]?.target.join(' ')} ${nodes[0]?.failureSummary}`,
    );
  }, AXE_TAGS);
}
