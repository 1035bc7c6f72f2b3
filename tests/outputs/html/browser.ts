/** Debian's Chromium by playwright-core, with nothing to say to anybody. */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createRequire } from 'node:module';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const RULES = {
  all: { runOnly: { type: 'tag', values: TAGS } },
  // The enhanced contrast is of level AAA, which the tags above do not ask for.
  colour: {
    runOnly: { type: 'tag', values: ['cat.color'] },
    rules: { 'color-contrast-enhanced': { enabled: false } },
  },
};

/** One rule of axe by its name. */
function only(rule: string) {
  return { runOnly: { type: 'rule', values: [rule] } };
}

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

/** A session day of the invented otter, on which every leaflet is looked at: what a page shows follows its day. */
const SESSION_DAY = '2026-03-06T09:00:00';

/** Opens the address and waits until all of the page is laid out: what lies below the first screen is so after it. */
export async function visit(page: Page, address: string, at = SESSION_DAY): Promise<void> {
  await page.clock.setFixedTime(at);
  await page.goto(address);
  while (await page.evaluate<boolean>("'arriving' in document.documentElement.dataset"))
    await page.evaluate('new Promise((drawn) => requestAnimationFrame(drawn))');
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
    await visit(page, address);
    return await look(page);
  } finally {
    await context.close();
  }
}

/** A page for all looks at one width: a context for each look would take longer than the look. No policy stops axe. */
export async function pagesAt(
  browser: Browser,
  widths: readonly number[],
): Promise<ReadonlyMap<number, Page>> {
  const pages = widths.map(async (width) => {
    const page = await browser.newPage({ viewport: { width, height: 900 }, bypassCSP: true });
    return [width, page] as const;
  });
  return new Map(await Promise.all(pages));
}

/** Opens the address and waits for its faces: whatever it asks for meanwhile, and what it says to the console. */
export async function heard(
  page: Page,
  address: string,
): Promise<{ readonly asked: readonly string[]; readonly said: readonly string[] }> {
  const asked: string[] = [];
  const said: string[] = [];
  page.on('request', (request) => asked.push(request.url().slice(0, 200)));
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await visit(page, address);
  await page.evaluate('document.fonts.ready');
  page.removeAllListeners();
  return { asked, said };
}

/** What axe finds in a page with all of it unfolded: in light by every rule, in dark by those of colour. */
export interface Sight {
  readonly light: readonly string[];
  readonly dark: readonly string[];
}

export const NOTHING: Sight = { light: [], dark: [] };

/** Opens the address and looks at it in both schemes. That dark changes colours alone is held in assets.test.ts. */
export async function inBothSchemes(page: Page, address: string): Promise<Sight> {
  await unfolded(page, address);
  const light = await violations(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  return { light, dark: await violations(page, 'colour') };
}

/** Opens the address in light, and all that is folded in it. */
export async function unfolded(page: Page, address: string): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await visit(page, address);
  await page.evaluate(`
    document.querySelectorAll('details').forEach((one) => (one.open = true));
    document.querySelectorAll('[aria-expanded="false"]').forEach((one) => one.click());`);
}

/**
 * Violations axe finds, a line each: rule, how often, the first place. The content policy must be bypassed.
 * Throws for a page that holds back content from being drawn, for axe would pass over it.
 */
export async function violations(
  page: Page,
  rules: keyof typeof RULES | { readonly rule: string } = 'all',
): Promise<string[]> {
  const heldBack = await page.evaluate<number>(
    "[...document.querySelectorAll('*')].filter((one) => getComputedStyle(one).contentVisibility !== 'visible').length",
  );
  if (heldBack > 0) throw new Error(`${heldBack} elements are held back from being drawn`);
  if (await page.evaluate("!('axe' in globalThis)")) await page.evaluate(AXE);
  return page.evaluate(
    async (options) => {
      const { axe, document } = globalThis as unknown as { axe: Axe; document: unknown };
      const found = await axe.run(document, options);
      return found.violations.map(
        ({ id, nodes }) =>
          `${id} × ${nodes.length}: ${nodes[0]?.target.join(' ')} ${nodes[0]?.failureSummary}`,
      );
    },
    // What passes need not be described, which would take a third of the time.
    { ...(typeof rules === 'string' ? RULES[rules] : only(rules.rule)), resultTypes: ['violations'] },
  );
}

const packaged = (file: string) => readFileSync(createRequire(import.meta.url).resolve(file), 'utf8');
const SNIFFER = packaged('html_codesniffer/build/HTMLCS.js');
const CHECKER = packaged('accessibility-checker-engine/ace.js');

/** Errors HTML_CodeSniffer finds by WCAG 2 AA, a line each: technique and place. Warnings and notices ask a person. */
export async function sniffed(page: Page): Promise<string[]> {
  await page.evaluate(SNIFFER);
  return page.evaluate(() => {
    const ERROR = 1;
    const { HTMLCS, document } = globalThis as unknown as { HTMLCS: Sniffer; document: unknown };
    return new Promise<string[]>((resolve, reject) => {
      HTMLCS.process(
        'WCAG2AA',
        document,
        () =>
          resolve(
            HTMLCS.getMessages()
              .filter(({ type }) => type === ERROR)
              .map(({ code, element }) => `${code}: ${element.outerHTML?.slice(0, 120) ?? ''}`),
          ),
        reject,
      );
    });
  });
}

/** Violations IBM's engine finds by its rules for WCAG 2.2, a line each: rule and place. What it leaves open asks a person. */
export async function ruled(page: Page): Promise<string[]> {
  await page.evaluate(`{ ${CHECKER}; globalThis.ace = ace }`);
  return page.evaluate(async () => {
    const { ace, document } = globalThis as unknown as { ace: Engine; document: unknown };
    const { results } = await new ace.Checker().check(document, ['WCAG_2_2']);
    return results
      .filter(({ value: [kind, verdict] }) => kind === 'VIOLATION' && verdict === 'FAIL')
      .map(({ ruleId, path: { dom }, message }) => `${ruleId}: ${message} ${dom}`);
  });
}

interface Sniffer {
  process(standard: string, document: unknown, done: () => void, failed: (why: unknown) => void): void;
  getMessages(): readonly { type: number; code: string; element: { outerHTML?: string } }[];
}

interface Engine {
  Checker: new () => {
    check(
      document: unknown,
      guidelines: readonly string[],
    ): Promise<{
      results: readonly {
        value: readonly [string, string];
        ruleId: string;
        message: string;
        path: { dom: string };
      }[];
    }>;
  };
}

interface Axe {
  run(root: unknown, options: object): Promise<{ readonly violations: readonly Violation[] }>;
}

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[];
}
