// The leaflet in use in Debian's Firefox: a session of the fullest demo by thumb and by keys, its roles read back, its log
// read as the review reads it. Not part of npm test. Ends with 0 when all is well, 1 when not, 75 when there is no Firefox.
import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import { readLog } from '#dist/content/log/readLog.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { readPageAssets } from '#dist/shell/io/assets.js';
import { demos, programmeOf } from '../bench/shipped.mjs';
import { startFirefox } from './bidi.mjs';

const PLACES = [process.env.FIREFOX, '/usr/bin/firefox-esr', '/usr/bin/firefox'].filter(Boolean);
const SCREEN = { width: 390, height: 844 };
const SCREENS = 6;
const NOTHING_CHECKED = 75;
const WAITS_MS = 10_000;

const path = PLACES.find((place) => existsSync(place));
if (path === undefined) {
  process.stderr.write(
    `There is no Firefox at ${PLACES.join(' or ')} (apt-get install firefox-esr, or set FIREFOX): nothing was checked.\n`,
  );
  process.exit(NOTHING_CHECKED);
}

const marten = programmeOf(demos.find(({ alias }) => alias === 'marten'));
const markup = leafletHtml(marten, await readPageAssets());
const day = marten.plan.find(({ sessions, runs }) => sessions.length > 0 && runs.length > 0).on;
const server = createServer((_, answer) => answer.setHeader('content-type', 'text/html').end(markup));
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://127.0.0.1:${server.address().port}/`;

let failed = 0;
function check(what, found, expected) {
  const [has, wants] = [found, expected].map((value) => JSON.stringify(value));
  const isRight = has === wants;
  if (!isRight) failed += 1;
  process.stdout.write(isRight ? `ok      ${what}\n` : `not ok  ${what}: ${has} instead of ${wants}\n`);
}

const firefox = await startFirefox(path);
try {
  await session(firefox);
} finally {
  await firefox.close();
  server.close();
}
process.stdout.write(failed === 0 ? 'All is well in Firefox.\n' : `${failed} not as they must be.\n`);
process.exitCode = failed === 0 ? 0 : 1;

async function session({ send, hear }) {
  const { contexts } = await send('browsingContext.getTree', {});
  const context = contexts[0].context;
  const heard = [];
  hear(({ method, params }) => {
    if (method === 'log.entryAdded' && params.level === 'error') heard.push(params.text);
    if (method === 'network.beforeRequestSent' && !params.request.url.startsWith('data:'))
      heard.push(`asks for ${params.request.url.replace(/\#.*/, '')}`);
  });
  await send('session.subscribe', { events: ['log.entryAdded', 'network.beforeRequestSent'] });
  await send('browsingContext.setViewport', { context, viewport: SCREEN });
  await send('script.addPreloadScript', { functionDeclaration: clockAt(`${day}T09:00:00`) });
  await send('browsingContext.navigate', { context, url: address, wait: 'complete' });

  const value = async (expression) => {
    const { type, result, exceptionDetails } = await send('script.evaluate', {
      expression: `JSON.stringify(${expression} ?? null)`,
      target: { context },
      awaitPromise: true,
    });
    if (type !== 'success') throw new Error(exceptionDetails.text);
    return JSON.parse(result.value);
  };
  const until = async (expression) => {
    const end = performance.now() + WAITS_MS;
    while (performance.now() < end) {
      if (await value(expression)) return true;
      await new Promise((soon) => setTimeout(soon, 50));
    }
    return false;
  };
  const act = (actions) => send('input.performActions', { context, actions });
  const tap = async (place) => {
    const at = await value(`(() => {
      const one = document.querySelector(${JSON.stringify(place)});
      one.scrollIntoView({ block: 'center', behavior: 'instant' });
      const { x, y, width, height } = one.getBoundingClientRect();
      return { x: Math.round(x + width / 2), y: Math.round(y + height / 2) };
    })()`);
    await act([
      {
        type: 'pointer',
        id: 'thumb',
        parameters: { pointerType: 'touch' },
        actions: [
          { type: 'pointerMove', ...at },
          { type: 'pointerDown', button: 0 },
          { type: 'pointerUp', button: 0 },
        ],
      },
    ]);
  };
  const keys = (...pressed) =>
    act([
      {
        type: 'key',
        id: 'keys',
        actions: pressed.flatMap((key) => [
          { type: 'keyDown', value: key },
          { type: 'keyUp', value: key },
        ]),
      },
    ]);
  const role = async (name, called) => {
    const locator = { type: 'accessibility', value: { role: name, name: called } };
    return (await send('browsingContext.locateNodes', { context, locator })).nodes.length;
  };

  const first = marten.exercises[0].card;
  const state = `document.querySelector('[data-exercise="${first}"] .pacer').dataset.pacerState`;
  const presses = (name) => `[data-exercise="${first}"] [data-pacer="${name}"]`;

  check('knows today', await value('document.querySelector("main").dataset.today'), 'session');
  check(
    'the first exercise begins on the first screen',
    (await value(`document.querySelector('[data-exercise]:not(.off)').getBoundingClientRect().top`)) <
      SCREEN.height,
    true,
  );
  check(
    `today's session ends within ${SCREENS} screens`,
    (await value(`document.querySelector('.log-bar').getBoundingClientRect().bottom`)) <
      SCREENS * SCREEN.height,
    true,
  );
  check('heading of the day', await role('heading', 'Today: exercises'), 1);
  check(
    'a pacer in each exercise of today',
    await role('button', 'Count with me'),
    await value(`document.querySelectorAll('[data-exercise]:not(.off)').length`),
  );
  check('a group for the left leg', (await role('group', 'Left leg')) > 0, true);

  await tap('.glance a');
  check('a thumb on the list leads to the exercise', await until(`location.hash === '#exercise-1'`), true);
  await tap(presses('start'));
  check('the pacer gets ready', await until(`${state} === 'ready'`), true);
  check('and goes on by itself into the first repetition', await until(`${state} === 'moving'`), true);
  await tap(presses('pause'));
  check('waits when paused', await role('button', 'Go on'), 1);
  for (let bout = 0; bout < 20 && (await value(state)) !== 'done'; bout += 1) await tap(presses('next'));
  check('ends after the last set', await value(state), 'done');
  await tap(presses('stop'));

  const [TAB, DOWN] = ['\uE004', '\uE015'];
  await value(`document.querySelector('[data-exercise="${first}"] [data-entry="done"]').focus()`);
  await keys(DOWN, TAB, ...Array.from({ length: 6 }, () => DOWN), TAB, '3', TAB, '1', '0');
  const answer = `document.querySelector('[data-exercise="${first}"] .answer').textContent`;
  check(
    'an entry by keys is answered',
    await value(answer),
    '5: finish the set. Next time do the same again, add nothing.',
  );
  await tap('#alarm summary');
  await tap('[data-alarm="footDrop"]');
  check('what stops the programme stops the page', await role('heading', 'Stop: no exercises'), 1);
  await tap('[data-alarm="footDrop"]');

  await send('browsingContext.reload', { context, wait: 'complete' });
  await tap('[data-share="log"]');
  const text = await value(`document.querySelector('[data-shared]').value`);
  const file = { file: 'consults/marten-r1.log.csv', bytes: new TextEncoder().encode(text), link: 'no' };
  const { log, problems } = readLog(file, { alias: 'marten', revision: marten.revision }, null);
  check('the log comes back over a reload, without a Problem', problems, []);
  check(
    'entry by entry',
    log.entries.map(({ kind, card, side, done, sets, repetitions, painDuring }) => [
      kind,
      card,
      side,
      done,
      sets,
      repetitions,
      painDuring,
    ]),
    [
      ['alarm', 'footDrop', null, 'no', null, null, null],
      ['session', first, 'both', 'yes', 3, 10, 5],
    ],
  );
  check('nothing is asked for, and no error said', [...new Set(heard)], [`asks for ${address}`]);
}

/** A page's clock that begins at this time where the page is. */
function clockAt(time) {
  return `() => {
    const Real = Date;
    const shift = new Real('${time}').getTime() - Real.now();
    globalThis.Date = class extends Real {
      constructor(...parts) {
        if (parts.length === 0) super(Real.now() + shift);
        else super(...parts);
      }
      static now() {
        return Real.now() + shift;
      }
    };
  }`;
}
