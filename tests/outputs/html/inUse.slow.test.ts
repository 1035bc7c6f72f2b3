/** The leaflet in use, in a real browser: the day, the folds, the log in every state of the storage, and paper. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOG_COLUMNS } from '../../../src/content/log/columns.ts';
import { readLog } from '../../../src/content/log/readLog.ts';
import { classesOf } from '../../../src/drawing/svg.ts';
import type { SideScene } from '../../../src/mechanics/scene.ts';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { otter } from '../../fixtures/programme.ts';
import { alone } from '../../shell/reviewBench.ts';
import { assets } from './assets.ts';
import { launch, violations } from './browser.ts';
import { programmes } from './programmes.ts';
import { faultsOf } from './validate.ts';

const ADDRESS = 'http://sheet.example/leaflet.html';
const programme = { ...otter, mark: '0a1b2c3d' };
const markup = leafletHtml(programme, assets);
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true } as const;

let browser: Browser;
beforeAll(async () => void (browser = await launch()));
afterAll(() => browser.close());

type Options = NonNullable<Parameters<Browser['newContext']>[0]>;

/** A phone on which the leaflet is opened at `at`, local time there; `before` runs in it before any script of the page. */
async function phone<T>(
  at: string,
  look: (page: Page, context: BrowserContext) => Promise<T>,
  { before = '', text = markup, ...options }: Options & { before?: string; text?: string } = {},
): Promise<T> {
  const context = await browser.newContext({ ...PHONE, timezoneId: 'Europe/London', ...options });
  try {
    await context.route('**/*', (route) => route.fulfill({ body: text, contentType: 'text/html' }));
    context.setDefaultTimeout(4000);
    if (before !== '') await context.addInitScript(before);
    return await look(await openedAt(context, at), context);
  } finally {
    await context.close();
  }
}

async function openedAt(context: BrowserContext, at: string): Promise<Page> {
  const page = await context.newPage();
  await page.clock.setFixedTime(at);
  await page.goto(ADDRESS);
  return page;
}

const kindOf = (page: Page) => page.evaluate<string>("document.querySelector('main').dataset.today");
const nowOf = (page: Page) => page.locator('.now').innerText();
const entry = (page: Page, date: string, name: string, card = '') =>
  page.locator(`[data-log="${date}"][data-log-card="${card}"][data-entry="${name}"]`).first();
const answer = (page: Page, date: string, name: string, card = '') =>
  entry(page, date, name, card).locator('xpath=ancestor::*[@role="group"]').locator('.answer').innerText();
const sharedRows = async (page: Page) => {
  await page.locator('[data-share="log"]').click();
  return (await page.locator('[data-shared]').inputValue()).split(/\r?\n/).filter((line) => line !== '');
};

const DENIED = `Object.defineProperty(globalThis, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } })`;

describe('today', () => {
  // Tuesday, Friday and Sunday from Tuesday 3 March, as the invented plan has it.
  const kinds = programme.plan.map(({ on, sessions, between, daily, runs }) => [
    on,
    sessions.length > 0
      ? 'session'
      : runs.length > 0
        ? 'run'
        : between.length + daily.length > 0
          ? 'between'
          : 'free',
  ]);

  it('is what the plan has, on each day, the day before and after the end', async () => {
    const days = [['2026-03-02', 'before'], ...kinds, ['2026-03-24', 'after'], ['2027-01-01', 'after']];
    const seen = await phone('2026-03-02T09:00:00Z', async (page) => {
      const all: string[][] = [];
      for (const [day = ''] of days) {
        await page.clock.setFixedTime(`${day}T12:00:00Z`);
        await page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
        all.push([(await page.locator('main').getAttribute('data-today-on'))!, await kindOf(page)]);
      }
      return all;
    });
    expect(seen).toEqual(days);
  });

  it.each([
    ['Pacific/Auckland', '2026-03-05T10:59:00Z', '2026-03-05'],
    ['Pacific/Auckland', '2026-03-05T11:01:00Z', '2026-03-06'],
    // The clock goes forward at 2:00 on 8 March 2026.
    ['America/New_York', '2026-03-08T04:59:00Z', '2026-03-07'],
    ['America/New_York', '2026-03-08T05:01:00Z', '2026-03-08'],
    ['America/New_York', '2026-03-09T03:59:00Z', '2026-03-08'],
    ['America/New_York', '2026-03-09T04:01:00Z', '2026-03-09'],
    // And back at 2:00 on 1 November.
    ['America/New_York', '2026-11-02T04:59:00Z', '2026-11-01'],
  ])('in %s at %s is %s', async (timezoneId, at, day) => {
    const seen = await phone(at, (page) => page.locator('main').getAttribute('data-today-on'), {
      timezoneId,
    });
    expect(seen).toBe(day);
  });

  it('says what is next, and that the review was', async () => {
    expect(await phone('2026-03-03T09:00:00Z', nowOf)).toContain('Your next session: Friday 6 March.');
    expect(await phone('2026-03-01T09:00:00Z', nowOf)).toContain('You begin on Tuesday 3 March.');
    expect(await phone('2026-03-30T09:00:00Z', nowOf)).toContain('Your review was on Tuesday 24 March.');
  });

  it('moves the next session when one was late, in words', async () => {
    const seen = await phone('2026-03-05T09:00:00Z', async (page) => {
      await page.locator('[data-entry="morning"]').first().selectOption('2');
      await page.locator('.hang#log .fold').first().click();
      await page.locator('#log-day-choice').selectOption('2026-03-05');
      await entry(page, '2026-03-05', 'painDuring', '').waitFor({ state: 'attached' });
      // A session of the day before stands in the log of another tab.
      await page.evaluate(
        (row) => {
          const { localStorage: place } = globalThis as unknown as {
            localStorage: Map<string, string> & Record<string, (...a: string[]) => string>;
          };
          const key = 'loadleaf:log:otter:0a1b2c3d';
          const kept = JSON.parse(place['getItem']!(key));
          place['setItem']!(key, JSON.stringify({ ...kept, rows: [...kept.rows, row] }));
        },
        row('2026-03-05', 'prone-leg-curl'),
      );
      await page.clock.setFixedTime('2026-03-06T09:00:00Z');
      await page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
      return [await kindOf(page), await nowOf(page)];
    });
    expect(seen[0]).not.toBe('session');
    expect(seen[1]).toMatch(/last session was on Thursday 5 March, so the one planned for today waits/);
    expect(seen[1]).toContain('Your next session: Saturday 7 March.');
  });
});

const row = (date: string, card: string) => ({
  date, occasion: 1, kind: 'session', card, side: 'both', edit: 0, done: 'yes', sets: null, repetitions: null,
  seconds: null, loadKg: null, painDuring: null, morning: null, minutes: null, km: null, note: '',
}); // prettier-ignore

/** The fullest programme of the demo, on a day with a run and a session. */
const marten = programmes.find(([, { alias }]) => alias === 'marten')![1];
const MARTEN_DAY = '2026-11-23';
const martenPhone = <T>(look: (page: Page) => Promise<T>, at = `${MARTEN_DAY}T09:00:00Z`) =>
  phone(at, look, { text: leafletHtml(marten, assets) });

describe('the length', () => {
  const measured = (page: Page) =>
    page.evaluate<[number, number]>(`[
      document.querySelector('[data-exercise]:not(.off)').getBoundingClientRect().top,
      document.querySelector('.log-bar').getBoundingClientRect().bottom,
    ]`);

  it('is under six screens of a phone with the log of the day, the first exercise begins on the first', async () => {
    const lengths = await Promise.all([phone('2026-03-06T09:00:00Z', measured), martenPhone(measured)]);
    for (const [first, last] of lengths) {
      expect(first).toBeLessThan(844);
      expect(last).toBeLessThan(6 * 844);
    }
  });

  it('is all reached from the list at the top', async () => {
    const places = await martenPhone((page) =>
      page.evaluate<string[]>(`[...document.querySelectorAll('.opening a[href^="#"]')]
        .filter((one) => one.checkVisibility({ visibilityProperty: true })).map((one) => one.getAttribute('href'))`),
    );
    const ofToday = ['1', '2', '3', '4', '5'].map((place) => `#exercise-${place}`);
    expect(places.slice(0, 7)).toEqual([...ofToday, '#running', '#log-bar-heading']);
    expect(places).toEqual(
      expect.arrayContaining(['#precautions', '#pain-rule', '#flare', '#get-help', '#emergency']),
    );
  });

  it('opens what a link leads to', async () => {
    await phone('2026-03-06T09:00:00Z', async (page) => {
      await page.locator('.ways a[href="#flare"]').click();
      expect(await page.locator('#flare .text').isVisible()).toBe(true);
      expect(await page.locator('#steps .text').isVisible()).toBe(false);
    });
  });

  it('on paper is what it is without scripts, word by word', async () => {
    const printed = async (page: Page) => {
      await page.emulateMedia({ media: 'print' });
      return (await page.locator('body').innerText()).replace(/\s+/g, ' ');
    };
    const [withScript, without] = await Promise.all([
      phone('2026-03-06T09:00:00Z', printed),
      phone('2026-03-06T09:00:00Z', printed, { javaScriptEnabled: false }),
    ]);
    expect(without.length).toBeGreaterThan(5000);
    expect(withScript).toBe(without);
  });
});

describe('the log', () => {
  const CARD = 'prone-leg-curl';
  const TODAY = '2026-03-06';

  const PAIN = [
    ['3', '3: all right.'],
    ['4', '4: finish the set. Next time do the same again, add nothing.'],
    ['5', '5: finish the set. Next time do the same again, add nothing.'],
    ['6', '6: stop this exercise for today. Use the easier numbers next time. See the easier numbers'],
  ];
  const MORNING = [
    ['3', '3: carry on as planned.'],
    ['4', '4: do the same again, add nothing.'],
    ['6', '6: ease back: use the easier numbers. See the easier numbers'],
  ];

  it('answers pain during an exercise and in the morning by the rules of the leaflet, usual 2', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (page) => {
      for (const [pain = '', words] of PAIN) {
        await entry(page, TODAY, 'painDuring', CARD).selectOption(pain);
        expect(await answer(page, TODAY, 'painDuring', CARD)).toBe(words);
      }
      for (const [score = '', words] of MORNING) {
        await entry(page, TODAY, 'morning').selectOption(score);
        expect(await answer(page, TODAY, 'morning')).toBe(words);
      }
    });
  });

  it('is kept over a reload, corrected, shared, deleted and brought back', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (page) => {
      await entry(page, TODAY, 'done', CARD).selectOption('part');
      await entry(page, TODAY, 'repetitions', CARD).fill('7');
      await entry(page, TODAY, 'note', CARD).fill('slow, "heavy"');
      await page.reload();
      expect(await entry(page, TODAY, 'note', CARD).inputValue()).toBe('slow, "heavy"');
      await entry(page, TODAY, 'done', CARD).selectOption('yes');
      const rows = await sharedRows(page);
      expect(rows.slice(0, 2)).toEqual(['loadleaf-log 1 otter r2', LOG_COLUMNS.join(',')]);
      expect(rows).toHaveLength(3);
      expect(rows[2]).toMatch(/^2026-03-06,1,session,prone-leg-curl,right,\d+,yes,,7,.*,"slow, ""heavy"""$/);
      await page.locator('[data-clear="log"]').click();
      expect(await entry(page, TODAY, 'note', CARD).inputValue()).toBe('');
      expect(await page.evaluate('localStorage.length')).toBe(0);
      await page.locator('[data-undo="log"]').click();
      expect(await sharedRows(page)).toEqual(rows);
    });
  });

  it('takes no word for a number', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (page) => {
      const field = entry(page, TODAY, 'sets', CARD);
      for (const wrong of ['three', '-1', '1e3', '999', '2.5']) {
        await field.fill(wrong);
        expect([
          await field.getAttribute('aria-invalid'),
          await page.evaluate('localStorage.length'),
        ]).toEqual(['', 0]);
      }
      await field.fill('3');
      expect(await field.getAttribute('aria-invalid')).toBeNull();
    });
  });

  it('stays with its day over midnight while a session goes on', async () => {
    await phone(`${TODAY}T23:58:00Z`, async (page) => {
      await entry(page, TODAY, 'done', CARD).selectOption('yes');
      await page.clock.setFixedTime('2026-03-07T00:05:00Z');
      await page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
      // Heading, folds and fields are of one day.
      expect(await page.locator('main').getAttribute('data-today-on')).toBe(TODAY);
      expect(await page.locator(`[data-exercise="${CARD}"].off`).count()).toBe(0);
      await entry(page, TODAY, 'painDuring', CARD).selectOption('2', { force: true });
      expect((await sharedRows(page))[2]).toMatch(/^2026-03-06,1,session,prone-leg-curl,right,1,yes,,,,,2,/);
      await page.clock.setFixedTime('2026-03-07T07:00:00Z');
      await page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
      expect(await entry(page, '2026-03-07', 'morning').count()).toBe(1);
      expect(await page.locator('main').getAttribute('data-today-on')).toBe('2026-03-07');
    });
  });

  it('leaves a day whose pacer was left waiting overnight', async () => {
    await phone(`${TODAY}T22:00:00Z`, async (page) => {
      await page.locator(`[data-exercise="${CARD}"] [data-pacer="start"]`).click();
      await page.clock.setFixedTime('2026-03-07T07:00:00Z');
      await page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
      expect(await page.locator('main').getAttribute('data-today-on')).toBe('2026-03-07');
      expect(await entry(page, TODAY, 'morning').count()).toBe(0);
      expect(await entry(page, '2026-03-07', 'morning').count()).toBe(1);
    });
  });

  it('sends to the easier numbers after a bad morning: said at the top, counted and asked by them', async () => {
    const EASED = 'forward-bend';
    await phone(`${TODAY}T08:00:00Z`, async (page) => {
      const sets = () => entry(page, TODAY, 'sets', EASED).getAttribute('placeholder');
      const said = page.locator('.now .eased');
      const planned = Number(await sets());
      expect(await said.isVisible()).toBe(false);
      await entry(page, TODAY, 'morning').selectOption('8');
      expect(await said.innerText()).toContain('Today use the easier numbers.');
      expect(await page.locator(`[data-exercise="${EASED}"] .eased`).isVisible()).toBe(true);
      const eased = Number(await sets());
      expect(eased).toBeLessThan(planned);
      await page.locator(`[data-exercise="${EASED}"] [data-pacer="start"]`).click();
      expect(await page.locator(`[data-exercise="${EASED}"] .bout`).innerText()).toContain(`of ${eased}`);
      await entry(page, TODAY, 'morning').selectOption('1');
      expect([await said.isVisible(), Number(await sets())]).toEqual([false, planned]);
    });
  });

  it('fills the table and says how many sessions were done', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (page) => {
      await entry(page, TODAY, 'done', CARD).selectOption('yes');
      await entry(page, TODAY, 'morning').selectOption('2');
      await page.locator('#log .fold').first().click();
      expect(await page.locator('#log .log tbody tr').nth(3).innerText()).toMatch(/Fri.*2\s+Done/s);
      expect(await page.locator('#log figcaption').innerText()).toContain(
        'Sessions done: 1 of 2 planned so far.',
      );
    });
  });
});

/** Whether an element is on the screen as it stands. */
const inView = (selector: string) => `(() => {
  const { top, bottom } = document.querySelector('${selector}').getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight;
})()`;

describe('what comes back', () => {
  it('is read by the review entry by entry, each leg its own', async () => {
    const on = MARTEN_DAY;
    const legs = (page: Page, name: string, side: string) =>
      page.locator(
        `[data-log="${on}"][data-log-card="split-squat"][data-log-side="${side}"][data-entry="${name}"]`,
      );
    const text = await martenPhone(async (page) => {
      await entry(page, on, 'morning').selectOption('5');
      await entry(page, on, 'morning').selectOption('');
      await legs(page, 'done', 'left').first().selectOption('no');
      await legs(page, 'sets', 'left').first().fill('2');
      await legs(page, 'painDuring', 'left').first().selectOption('4');
      await legs(page, 'done', 'right').first().selectOption('yes');
      await entry(page, on, 'loadKg', 'split-squat').fill('7,5');
      await entry(page, on, 'note', 'split-squat').fill('=left knee, "wobbly"');
      await entry(page, on, 'km').fill('6.5');
      await entry(page, on, 'minutes').fill('32');
      await page.locator('#alarm summary').tap();
      const box = page.locator('[data-alarm="fever"]');
      await box.tap();
      expect(await nowOf(page)).toMatch(/^Stop: no exercises\s+Get in touch with us today/);
      expect(await page.evaluate('document.activeElement.id')).toBe('today-heading');
      expect(await page.locator('.run-today').isVisible()).toBe(false);
      expect(await page.evaluate(inView('#today-heading'))).toBe(true);
      expect(await page.locator('[data-exercise]:not(.off)').count()).toBe(0);
      await box.tap();
      expect(await page.locator('[data-exercise]:not(.off)').count()).toBe(5);
      await page.locator('[data-alarm="footDrop"]').tap();
      expect(await nowOf(page)).toContain('Call 112 now.');
      expect(await page.evaluate(inView('.now a[href="tel:112"]'))).toBe(true);
      await page.reload();
      expect(await nowOf(page)).toContain('Call 112 now.');
      return (await sharedRows(page)).join('\r\n');
    });
    const file = {
      file: 'consults/marten-r1.log.csv',
      bytes: new TextEncoder().encode(text),
      link: 'no' as const,
    };
    const { log, problems } = readLog(file, { alias: 'marten', revision: 1 }, null);
    expect(problems).toEqual([]);
    expect(log.entries.map(({ kind, card, side, edit, done, sets, loadKg, painDuring, morning, minutes, km, note }) => [
      kind, card, side, edit, done, sets, loadKg, painDuring, morning, minutes, km, note,
    ])).toEqual([
      ['alarm', 'fever', null, 1, 'no', null, null, null, null, null, null, ''],
      ['alarm', 'footDrop', null, 0, 'yes', null, null, null, null, null, null, ''],
      ['morning', '', null, 1, null, null, null, null, null, null, null, ''],
      ['run', '', null, 1, null, null, null, null, null, 32, 6.5, ''],
      ['session', 'split-squat', 'left', 5, 'part', 2, 7.5, 4, null, null, null, '=left knee, "wobbly"'],
      ['session', 'split-squat', 'right', 1, 'yes', null, 7.5, null, null, null, null, ''],
    ]); // prettier-ignore
    expect(log.alarms).toMatchObject([{ item: 'footDrop', date: on }]);
    const bench = alone();
    const shared = join(bench.folder, 'shared.txt');
    writeFileSync(shared, text);
    const { code, json } = bench.run('review', 'marten', '--json', '--log', shared, '--on', '2026-12-01');
    expect([code, json['decision'], json['problems']]).toEqual([0, 'beSeen', []]);
  });
});

describe('the storage', () => {
  const TODAY = '2026-03-06';
  const KEY = 'loadleaf:log:otter:0a1b2c3d';
  const FULL = `Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }`;

  it.each([
    ['denied', DENIED, 'This browser keeps nothing.'],
    ['full', FULL, 'The storage of this browser is full.'],
  ])('%s: the page says so, and what is written can be shared', async (state, before, words) => {
    await phone(
      `${TODAY}T09:00:00Z`,
      async (page) => {
        const warning = page.locator('.warning');
        if (state === 'denied') expect(await warning.innerText()).toContain(words);
        await entry(page, TODAY, 'morning').selectOption('4');
        await entry(page, TODAY, 'note').fill('one');
        expect(await warning.innerText()).toContain(words);
        expect(await answer(page, TODAY, 'morning')).toContain('add nothing');
        expect((await sharedRows(page)).slice(2)).toHaveLength(2);
      },
      { before },
    );
  });

  it.each([
    ['no JSON', '{"format":1,"rows":[{'],
    ['another format', '{"format":9,"rows":[]}'],
    ['a row without a date', '{"format":1,"rows":[{"date":"soon"}]}'],
  ])('spoilt (%s): it is laid aside, and the log goes on', async (_, spoilt) => {
    await phone(
      `${TODAY}T09:00:00Z`,
      async (page) => {
        expect(await page.locator('.warning').innerText()).toContain('could not be read');
        await entry(page, TODAY, 'morning').selectOption('4');
        expect((await sharedRows(page)).slice(2)).toHaveLength(1);
        const kept = await page.evaluate<string>('JSON.stringify(Object.values(localStorage))');
        expect(JSON.parse(kept)).toContain(spoilt);
      },
      { before: `if (localStorage.length === 0) localStorage.setItem('${KEY}', ${JSON.stringify(spoilt)})` },
    );
  });

  it('of two tabs loses nothing, and each sees the other', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (one, context) => {
      const two = await openedAt(context, `${TODAY}T09:00:00Z`);
      await entry(one, TODAY, 'morning').selectOption('3');
      await entry(two, TODAY, 'done', 'prone-leg-curl').selectOption('yes');
      await entry(one, TODAY, 'painDuring', 'prone-leg-curl').selectOption('2');
      await expect
        .poll(() => entry(two, TODAY, 'painDuring', 'prone-leg-curl').inputValue(), { timeout: 10_000 })
        .toBe('2');
      const rows = await sharedRows(two);
      expect(rows).toEqual(await sharedRows(one));
      expect(rows.slice(2).sort()).toEqual([
        expect.stringMatching(/^2026-03-06,1,morning,,,0,,,,,,,3,/),
        expect.stringMatching(/^2026-03-06,1,session,prone-leg-curl,right,1,yes,,,,,2,/),
      ]);
    });
  });

  it('that another tab wrote over in the same moment is written again, but not when it was deleted there', async () => {
    await phone(`${TODAY}T09:00:00Z`, async (page, context) => {
      const two = await openedAt(context, `${TODAY}T09:00:00Z`);
      await entry(page, TODAY, 'morning').selectOption('3');
      await two.evaluate(`localStorage.setItem('${KEY}', JSON.stringify({ format: 1, rows: [] }))`);
      const kept = (tab: Page) =>
        tab.evaluate<number>(`JSON.parse(localStorage.getItem('${KEY}') ?? '{"rows":[]}').rows.length`);
      // Seen from the other tab, which has none of its own: this page may not have been told of the writing yet.
      await expect.poll(() => kept(two), { timeout: 10_000 }).toBe(1);
      await two.evaluate(`localStorage.removeItem('${KEY}')`);
      await expect.poll(() => entry(page, TODAY, 'morning').inputValue(), { timeout: 10_000 }).toBe('');
      expect(await kept(page)).toBe(0);
    });
  });

  it('of another make of the same person is kept and shared on; of another person it is not touched', async () => {
    const older = JSON.stringify({
      format: 1,
      rows: [row('2026-03-04', 'forward-bend'), row('2026-02-20', 'forward-bend')],
    });
    const before = `localStorage.setItem('loadleaf:log:otter:ffff0000', ${JSON.stringify(older)});
      localStorage.setItem('loadleaf:log:heron:11112222', 'theirs')`;
    await phone(
      `${TODAY}T09:00:00Z`,
      async (page) => {
        expect((await sharedRows(page)).slice(2)).toEqual([
          '2026-03-04,1,session,forward-bend,both,0,yes,,,,,,,,,',
        ]);
        expect(await page.locator('.kept').innerText()).toContain('1 entry of an earlier sheet is kept');
        await page.locator('[data-clear="log"]').click();
        expect(await page.evaluate('localStorage.getItem("loadleaf:log:heron:11112222")')).toBe('theirs');
      },
      { before },
    );
  });
});

/** What axe 4.14 and html-validate 10.17 find in the page as it stands now. */
async function faultsIn(page: Page): Promise<string[]> {
  // A browser writes out every attribute with a value, and no element as closed.
  const whole = await page
    .locator('html')
    .evaluate((one) => (one as unknown as { outerHTML: string }).outerHTML);
  const faults = await faultsOf(`<!doctype html>${whole}`);
  return [
    ...(await violations(page)),
    ...faults.filter((fault) => !/^(attribute-(boolean|empty)|void)-style/.test(fault)),
  ];
}

describe('every state', () => {
  const TODAY = '2026-03-06';
  const openAll = `
    document.querySelectorAll('details').forEach((one) => (one.open = true));
    document.querySelectorAll('[aria-expanded="false"]').forEach((one) => one.click());`;
  const settled = (page: Page) => page.waitForFunction("!('arriving' in document.documentElement.dataset)");

  it('passes axe and html-validate: a session day, its pacer, its log, a stop, after the end, storage denied', async () => {
    await phone(
      `${TODAY}T09:00:00Z`,
      async (page, context) => {
        await settled(page);
        const found: Record<string, readonly string[]> = { session: await faultsIn(page) };
        await page.locator('[data-pacer="start"]').first().tap();
        found['pacer'] = await faultsIn(page);
        await page.locator('[data-pacer="stop"]').first().tap();
        await page.evaluate(openAll);
        await page.locator('#log-day-choice').selectOption('2026-03-05');
        await entry(page, TODAY, 'sets', 'prone-leg-curl').fill('x');
        await entry(page, TODAY, 'morning').selectOption('6');
        await sharedRows(page);
        found['log'] = await faultsIn(page);
        await page.locator('[data-alarm="fever"]').check();
        found['stop'] = await faultsIn(page);
        await page.locator('[data-alarm="fever"]').uncheck();
        await page.clock.setFixedTime('2026-03-30T09:00:00Z');
        await page.reload();
        await settled(page);
        found['after'] = await faultsIn(page);
        const denied = await context.newPage();
        await denied.addInitScript(DENIED);
        await denied.clock.setFixedTime(`${TODAY}T09:00:00Z`);
        await denied.goto(ADDRESS);
        await settled(denied);
        expect(await denied.locator('.warning').isVisible()).toBe(true);
        found['denied'] = await faultsIn(denied);
        expect(found).toEqual({ session: [], pacer: [], log: [], stop: [], after: [], denied: [] });
      },
      { bypassCSP: true },
    );
  });

  it.each([320, 390])('fits into %i px, all of it open', async (width) => {
    await phone(
      `${TODAY}T09:00:00Z`,
      async (page) => {
        await page.evaluate(openAll);
        await page.locator('#log-day-choice').selectOption('2026-03-05');
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      },
      { viewport: { width, height: 844 } },
    );
  });
});

describe('the pacer', () => {
  const CARD = 'prone-leg-curl';
  const TODAY = '2026-03-06T09:00:00Z';

  /** A phone whose time goes on only when it is told to. */
  const paced = (look: (page: Page) => Promise<void>) =>
    phone(TODAY, async (page) => {
      await page.clock.install({ time: TODAY });
      await page.goto(ADDRESS);
      await page.clock.pauseAt('2026-03-06T09:01:00Z');
      await look(page);
    });
  const box = (page: Page) => page.locator(`[data-exercise="${CARD}"] .pacer`);
  const stateOf = async (page: Page) => {
    const marks = ['data-pacer-state', 'data-set', 'data-rep'];
    return Promise.all(marks.map((mark) => box(page).getAttribute(mark)));
  };
  const press = (page: Page, name: string) => box(page).locator(`[data-pacer="${name}"]`).tap();
  const dose = programme.inUse.exercises.find(({ card }) => card === CARD)!;
  const { goSeconds, holdSeconds, backSeconds } = dose.tempo!;
  const repetitionMs = 1000 * (goSeconds + holdSeconds + backSeconds);
  const setMs = 5000 + repetitionMs * dose.repetitions!;

  it('counts one set by a thumb at the pace of the dose, and waits for the person before the next', async () => {
    await paced(async (page) => {
      expect(await stateOf(page)).toEqual(['ready', '1', '0']);
      await press(page, 'start');
      await page.clock.runFor(5100);
      expect(await stateOf(page)).toEqual(['moving', '1', '1']);
      expect(await page.locator(`[data-exercise="${CARD}"] .frame`).last().isVisible()).toBe(true);
      await page.clock.runFor(repetitionMs);
      expect(await stateOf(page)).toEqual(['moving', '1', '2']);
      await page.clock.runFor(setMs - repetitionMs - 5100 + 200);
      expect(await stateOf(page)).toEqual(['waiting', '1', '0']);
      expect(await box(page).locator('[role="status"]').innerText()).toMatch(
        /Set 1 of 3, left leg, 12 repetitions/,
      );
      await page.clock.runFor(600_000);
      expect(await stateOf(page)).toEqual(['waiting', '1', '0']);
      await press(page, 'start');
      await page.clock.runFor(setMs + 100);
      expect(await stateOf(page)).toEqual(['resting', '1', '0']);
      expect(await box(page).locator('.count').innerText()).toBe(String(dose.restSeconds));
      await page.clock.runFor(1000 * dose.restSeconds);
      expect(await stateOf(page)).toEqual(['waiting', '2', '0']);
    });
  });

  it('is paused, gone on with, begun again, passed over and stopped by keys alone', async () => {
    await paced(async (page) => {
      await box(page).locator('[data-pacer="start"]').focus();
      await page.keyboard.press('Enter');
      await page.clock.runFor(5100);
      expect(await page.evaluate('document.activeElement.dataset.pacer')).toBe('pause');
      await page.keyboard.press('Space');
      await page.clock.runFor(60_000);
      expect(await stateOf(page)).toEqual(['moving', '1', '1']);
      await page.keyboard.press('Space');
      await page.clock.runFor(repetitionMs);
      expect(await stateOf(page)).toEqual(['moving', '1', '2']);
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      expect(await stateOf(page)).toEqual(['waiting', '1', '0']);
      for (let bout = 0; bout < 2 * dose.sets; bout += 1) await press(page, 'next');
      expect(await stateOf(page)).toEqual(['done', '3', '0']);
      await press(page, 'stop');
      expect(await stateOf(page)).toEqual(['ready', '1', '0']);
    });
  });

  it('drifts by less than 50 ms in ten minutes of pauses', async () => {
    await paced(async (page) => {
      await press(page, 'start');
      for (let at = 0; at < 10; at += 1) {
        await press(page, 'pause');
        await page.clock.runFor(60_000 - 7 * at);
        await press(page, 'pause');
      }
      await page.clock.runFor(4950);
      expect((await stateOf(page))[0]).toBe('ready');
      await page.clock.runFor(100);
      expect(await stateOf(page)).toEqual(['moving', '1', '1']);
    });
  });

  // The turn of a drawn limb on the page itself, read off what the browser has placed.
  const drawnDeg = (page: Page) =>
    page
      .locator(`[data-exercise="${CARD}"] .moving .${classesOf('workLeg', null)}[stroke-width="0"]`)
      .evaluateAll((limbs) =>
        limbs.map((limb) => {
          const { a, b } = (limb as unknown as { getCTM(): { a: number; b: number } }).getCTM();
          return (Math.atan2(b, a) * 180) / Math.PI;
        }),
      );
  const curlScene = programme.exercises.find(({ card }) => card === CARD)!.figures!.scene as SideScene;

  it('moves the figure by the model at the pace of the dose, when the person starts it and not before', async () => {
    await paced(async (page) => {
      const moving = page.locator('.moving');
      expect(await moving.count()).toBe(0);
      await press(page, 'start');
      await page.clock.runFor(5000);
      const [, , shankAtStart] = (await drawnDeg(page)).slice(-4);
      await page.clock.runFor(500 * goSeconds);
      const halfway = (await drawnDeg(page)).slice(-4);
      const [from, to] = [curlScene.moments![0]!.posture.pose, curlScene.moments!.at(-1)!.posture.pose];
      const knee = (from.work.knee + to.work.knee) / 2 - from.work.knee;
      expect(shankAtStart).toBeDefined();
      expect(Math.abs(Math.abs(halfway[2]! - shankAtStart!) - Math.abs(knee))).toBeLessThan(1);
      expect(await page.locator(`[data-exercise="${CARD}"] .frame:visible`).count()).toBe(1);
      await press(page, 'stop');
      expect(await moving.count()).toBe(0);
    });
  });

  it('changes the still pictures where less motion is wanted', async () => {
    await phone(
      TODAY,
      async (page) => {
        await page.clock.install({ time: TODAY });
        await page.goto(ADDRESS);
        await page.clock.pauseAt('2026-03-06T09:01:00Z');
        const shown = () =>
          page
            .locator(`[data-exercise="${CARD}"] .frame`)
            .evaluateAll((frames) =>
              frames.map((frame) => (frame as unknown as { offsetHeight: number }).offsetHeight > 0),
            );
        await press(page, 'start');
        await page.clock.runFor(4000);
        expect(await shown()).toEqual([true, false]);
        await page.clock.runFor(1100);
        expect(await shown()).toEqual([false, true]);
        await page.clock.runFor(1000 * (goSeconds + holdSeconds));
        expect(await shown()).toEqual([true, false]);
        expect(await page.locator('.moving').count()).toBe(0);
      },
      { reducedMotion: 'reduce' },
    );
  });

  it('beats the steps of the run at the advised rate, without drift, until it is stopped', async () => {
    const { on } = programme.plan.find(({ runs }) => runs.length > 0)!;
    await phone(`${on}T09:00:00Z`, async (page) => {
      await page.clock.install({ time: `${on}T09:00:00Z` });
      await page.goto(ADDRESS);
      await page.clock.pauseAt(`${on}T09:01:00Z`);
      const beat = page.locator('.run-today');
      const [run] = programme.calendar.filter((one) => one.on === on && one.kind === 'run');
      expect(await beat.innerText()).toContain(`Today's run: ${run!.text}.`);
      expect(await beat.locator('.counting').isVisible()).toBe(false);
      await beat.locator('[data-beat]').tap();
      await page.clock.runFor(600_000);
      expect(await beat.locator('[data-beats]').getAttribute('data-beats')).toBe('1701');
      expect(await beat.locator('.lit').count()).toBe(1);
      await beat.locator('[data-beat]').tap();
      await page.clock.runFor(60_000);
      expect(await beat.locator('[data-beats]').getAttribute('data-beats')).toBe('1701');
      expect(await beat.locator('.counting').isVisible()).toBe(false);
    });
  });

  it('gives way to another, and is silent of voice at first', async () => {
    await phone(
      TODAY,
      async (page) => {
        await press(page, 'start');
        expect(await box(page).locator('[data-signal="voice"]').isChecked()).toBe(false);
        await page.locator('[data-exercise="forward-bend"] [data-pacer="start"]').tap();
        expect(await stateOf(page)).toEqual(['ready', '1', '0']);
      },
      { bypassCSP: true },
    );
  });
});
