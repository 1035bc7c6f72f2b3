/** However many pages of `serve` are open in a browser, one stream tells them all: of six connections one is taken. */
import type { Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout } from 'node:timers/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { liveChannel } from '../../src/shell/server/live.ts';
import { siteServer } from '../../src/shell/server/server.ts';
import { liveScripts } from '../../src/shell/io/assets.ts';
import { launch } from '../outputs/html/browser.ts';
import { smallClinic, type Clinic } from './workbench.ts';

const PAGES = ['public/index.html', 'private/finch/leaflet.html', 'private/finch/record.html'];
const OPEN = 9;

const live = liveChannel();
const streams = new Set<ServerResponse>();
let own: Clinic;
let server: Server;
let browser: Browser;
let at: string;
beforeAll(async () => {
  own = smallClinic();
  expect((await own.run('build')).exit).toBe(0);
  const follow = (response: ServerResponse) => {
    streams.add(response);
    response.on('close', () => streams.delete(response));
    live.follow(response);
  };
  server = siteServer(own.site, { ...live, follow }, liveScripts(), '/way');
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  at = `http://127.0.0.1:${(server.address() as AddressInfo).port}/way`;
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  server.closeAllConnections();
  server.close();
  own.remove();
});

it('loads nine pages, tells each of them what stands against a build, and reloads those that were built anew', async () => {
  const context = await browser.newContext();
  const wrong: string[] = [];
  const pages: Page[] = [];
  for (let index = 0; index < OPEN; index += 1) {
    const page = await context.newPage();
    page.on('console', (message) => wrong.push(message.text()));
    page.on('pageerror', ({ message }) => wrong.push(message));
    await page.goto(`${at}/${PAGES[index % PAGES.length]}`, { timeout: 15_000 });
    pages.push(page);
  }
  const alerts = pages.map((page) => page.locator('[role=alert]'));
  await until(() => streams.size === 1);
  live.say('Not built: finch.', 'finch-r1.md:1:1');
  for (const alert of alerts) await alert.getByText('finch-r1.md:1:1').waitFor({ timeout: 10_000 });
  expect(streams.size).toBe(1);

  // A page that comes later is told at once, and one that goes takes nothing from the others.
  await pages[0]!.close();
  const late = await context.newPage();
  await late.goto(`${at}/${PAGES[0]}`);
  await late.locator('[role=alert]').getByText('finch-r1.md:1:1').waitFor({ timeout: 10_000 });
  live.say('', '');
  for (const alert of alerts.slice(1)) await alert.waitFor({ state: 'detached', timeout: 10_000 });

  const [leaflet, record] = [pages[1]!, pages[2]!];
  const reloaded = [leaflet, record].map((page) => page.waitForEvent('load', { timeout: 10_000 }));
  const before = await late.evaluate<number>('performance.timeOrigin');
  live.rebuilt('private');
  await Promise.all(reloaded);
  expect(await late.evaluate<number>('performance.timeOrigin')).toBe(before);
  expect(streams.size).toBe(1);
  expect(wrong).toEqual([]);
  await context.close();
  await until(() => streams.size === 0);
});

async function until(holds: () => boolean): Promise<void> {
  for (const end = Date.now() + 20_000; !holds(); await setTimeout(50))
    if (Date.now() > end) throw new Error(`waited too long; there are ${streams.size} streams`);
}
