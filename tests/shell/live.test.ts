/** What `serve` puts into the pages it shows, and when it works again. */
import { EventEmitter } from 'node:events';
import type { ServerResponse } from 'node:http';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LIVE_SCRIPT, liveChannel, livePage } from '../../src/shell/server/live.ts';
import { rebuilder } from '../../src/shell/server/rebuilder.ts';
import { EXIT } from '../../src/shell/exit.ts';
import { Stop } from '../../src/shell/io/stop.ts';

const quoted = (policy: string) => policy.replaceAll("'", '&#39;');
const page = (policy: string) =>
  `<html><head><meta http-equiv="Content-Security-Policy" content="${quoted(policy)}" /></head><body></body></html>`;
const policyOf = (markup: string) =>
  /Content-Security-Policy" content="([^"]*)"/.exec(markup)?.[1]?.replaceAll('&#39;', "'");

describe('a page that is shown', () => {
  const { notice } = liveChannel();

  it.each([
    // policy of the file                        policy of the page that is shown
    ["script-src 'none'; a 'b'", "script-src 'self' ; a 'b'; worker-src 'self'"],
    ["script-src 'self'; a 'b'", "script-src 'self' ; a 'b'; worker-src 'self'"],
    ["script-src 'sha256-x='; a", "script-src 'self' 'sha256-x='; a; worker-src 'self'"],
    [
      "script-src 'sha256-x=' 'sha256-y='; a",
      "script-src 'self' 'sha256-x=' 'sha256-y='; a; worker-src 'self'",
    ],
  ])('with the policy %j may run the one script more, and share its worker', (policy, wider) => {
    const shown = livePage(page(policy), 'public', notice(), '/way');
    expect(policyOf(shown)).toBe(wider);
    expect(shown.split(`<script src="/way${LIVE_SCRIPT}"`)).toHaveLength(2);
    expect(shown).toMatch(/data-part="public" data-build="1" [^>]*><\/script><\/head>/);
  });
});

describe('the channel', () => {
  function followed() {
    const live = liveChannel();
    const told: unknown[] = [];
    const response = Object.assign(new EventEmitter(), {
      write: (text: string) => told.push(JSON.parse(text.replace(/^data: /, ''))),
    });
    live.follow(response as unknown as ServerResponse);
    return { live, told, response };
  }
  const good = { builds: { public: 1, private: 1 }, heading: '', text: '' };

  it('tells a page at once how things stand, and then every change', () => {
    const { live, told } = followed();
    live.rebuilt('public');
    live.say('Not built', 'a.md:1:1');
    live.say('', '');
    const next = { ...good, builds: { public: 2, private: 1 } };
    expect(told).toEqual([good, next, { ...next, heading: 'Not built', text: 'a.md:1:1' }, next]);
  });

  it('says nothing twice, and nothing to a page that is gone', () => {
    const { live, told, response } = followed();
    live.say('', '');
    response.emit('close');
    live.rebuilt('private');
    expect(told).toEqual([good]);
  });
});

describe('working again', () => {
  const faults: unknown[] = [];
  const report = { fault: (error: unknown) => faults.push(error) };
  // A clock that goes only when told, so that a busy machine changes nothing.
  const after = (ms: number) => vi.advanceTimersByTimeAsync(ms);
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('waits until things have settled, and works once', async () => {
    let times = 0;
    const again = rebuilder(async () => void (times += 1), report, 20, 20);
    for (let save = 0; save < 5; save += 1) again.wake();
    await after(100);
    expect(times).toBe(1);
  });

  it('never works twice at a time, tells the older work that it is stale, and works once more', async () => {
    const seen: boolean[] = [];
    let atWork = 0;
    const again = rebuilder(
      async ({ isStale }) => {
        expect((atWork += 1)).toBe(1);
        await new Promise((done) => setTimeout(done, 60));
        seen.push(isStale());
        atWork -= 1;
      },
      report,
      10,
      10,
    );
    again.wake();
    await after(30);
    again.wake();
    await after(200);
    expect(seen).toEqual([true, false]);
  });

  it('tries by itself again where another build was in the way, and prints every other fault', async () => {
    let times = 0;
    const again = rebuilder(
      async () => {
        times += 1;
        if (times === 1) throw new Stop(EXIT.busy, 'another build');
        throw new Stop(EXIT.cannotWrite, 'disk full');
      },
      report,
      10,
      10,
    );
    again.wake();
    await after(100);
    expect(times).toBe(2);
    expect(faults).toMatchObject([{ message: 'disk full' }]);
  });

  it('gives work that asks for it the time until the last save is a while ago', async () => {
    let settledAtMs = 0;
    const again = rebuilder(
      async ({ settled }) => {
        await settled();
        settledAtMs = Date.now();
      },
      report,
      10,
      10,
      150,
    );
    const start = Date.now();
    again.wake();
    await after(100);
    expect(settledAtMs).toBe(0);
    await after(100);
    expect(settledAtMs - start).toBe(150);
  });

  it('begins nothing any more when it was stopped', async () => {
    let times = 0;
    const again = rebuilder(async () => void (times += 1), report, 10, 10);
    again.wake();
    again.stop();
    again.wake();
    await after(40);
    expect(times).toBe(0);
  });
});
