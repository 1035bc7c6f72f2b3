// A browser driven by WebDriver BiDi (W3C), as much of it as the check of the leaflet in Firefox asks for.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import WebSocket from 'ws';

const STARTS_WITHIN_MS = 60_000;
const LISTENS = /WebDriver BiDi listening on (ws:\S+)/;

// Nothing of its own goes out: no first page, no update, no pings.
const PREFERENCES = `
  user_pref('app.update.disabledForTesting', true);
  user_pref('browser.startup.page', 0);
  user_pref('datareporting.policy.dataSubmissionEnabled', false);
  user_pref('network.captive-portal-service.enabled', false);
  user_pref('network.connectivity-service.enabled', false);
  user_pref('remote.active-protocols', 1);
  user_pref('services.settings.server', 'data:,');
  user_pref('toolkit.telemetry.server', 'data:,');
`;

/** A headless Firefox of its own profile: `send` a command and get its result, `hear` events, `close` all of it. */
export async function startFirefox(path) {
  const profile = mkdtempSync(join(tmpdir(), 'firefox-'));
  writeFileSync(join(profile, 'user.js'), PREFERENCES);
  const browser = spawn(path, ['--headless', '--remote-debugging-port', '0', '--profile', profile], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const gone = new Promise((done) => browser.once('exit', done));
  const close = async () => {
    browser.kill();
    await gone;
    rmSync(profile, { recursive: true, force: true });
  };
  try {
    const { send, hear, hangUp } = await connected(`${await addressOf(browser)}/session`);
    const closeAll = async () => {
      hangUp();
      await close();
    };
    await send('session.new', { capabilities: {} });
    return { send, hear, close: closeAll };
  } catch (error) {
    await close();
    throw error;
  }
}

function addressOf(browser) {
  return new Promise((found, failed) => {
    const late = setTimeout(() => failed(new Error('Firefox did not start in time')), STARTS_WITHIN_MS);
    browser.once('error', failed);
    browser.once('exit', () => failed(new Error('Firefox ended at its start')));
    createInterface({ input: browser.stderr }).on('line', (line) => {
      const [, address] = LISTENS.exec(line) ?? [];
      if (address === undefined) return;
      clearTimeout(late);
      found(address);
    });
  });
}

async function connected(address) {
  const socket = new WebSocket(address, { perMessageDeflate: false });
  await new Promise((open, failed) => socket.once('open', open).once('error', failed));
  const waiting = new Map();
  const listeners = [];
  socket.on('message', (text) => {
    const message = JSON.parse(text);
    if (message.type === 'event') return listeners.forEach((hear) => hear(message));
    const { done, failed } = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.type === 'success') done(message.result);
    else failed(new Error(`${message.error}: ${message.message}`));
  });
  let id = 0;
  return {
    send: (method, params) =>
      new Promise((done, failed) => {
        waiting.set((id += 1), { done, failed });
        socket.send(JSON.stringify({ id, method, params }));
      }),
    hear: (listener) => void listeners.push(listener),
    hangUp: () => socket.close(),
  };
}
