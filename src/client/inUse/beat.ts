/** The run of the day, and a beat for its steps that the person starts and stops. */
import { BEAT, beatText, runOfToday } from '../../messages/en/patient/pacer.ts';
import type { DayInUse, StepRateInUse } from '../../programme/sheetInUse.ts';
import { button, element } from './element.ts';
import { beatIn, keepAwake, readySignals } from './signals.ts';
import { switches } from './switches.ts';
import { takeTurn } from './turn.ts';

const TICK_MS = 25;
/** Beats are set so far ahead, for a page's timers come late. */
const AHEAD_MS = 120;

/** What today's run is; with the beat from the day on which quicker steps begin. */
export function runToday({ on, runText }: DayInUse, stepRate: StepRateInUse | null): HTMLElement {
  const beats = stepRate !== null && on >= stepRate.fromOn;
  return element(
    'div',
    { class: 'run-today' },
    element('p', {}, element('strong', {}, runOfToday(runText))),
    ...(beats ? [stepBeat(stepRate.stepsPerMin)] : []),
  );
}

/** Two lights take turns, left and right foot: no light flashes more than twice a second (WCAG 2.2, 2.3.1: three). */
function stepBeat(stepsPerMin: number): HTMLElement {
  const beatMs = 60_000 / stepsPerMin;
  const lights = [element('span', { class: 'light' }), element('span', { class: 'light' })];
  const running = element(
    'div',
    { class: 'counting', hidden: true },
    element('p', { class: 'feet', 'aria-hidden': 'true' }, ...lights),
    switches(['sound', 'vibration']),
  );
  let [timer, beganMs, set] = [0, 0, 0];

  /** Always from the time that has gone by, so nothing drifts. */
  function tick(): void {
    const ms = performance.now() - beganMs;
    for (; set * beatMs <= ms + AHEAD_MS; set += 1)
      if (set * beatMs >= ms) beatIn((set * beatMs - ms) / 1000);
    const beat = Math.floor(ms / beatMs);
    box.dataset['beats'] = String(beat + 1);
    lights.forEach((light, foot) => light.classList.toggle('lit', beat % 2 === foot));
  }

  function begin(): void {
    takeTurn(end);
    readySignals();
    keepAwake(true);
    [beganMs, set] = [performance.now(), 0];
    running.hidden = false;
    toggle.textContent = BEAT.stop;
    timer = setInterval(tick, TICK_MS) as unknown as number;
    tick();
  }

  function end(): void {
    clearInterval(timer);
    keepAwake(false);
    running.hidden = true;
    toggle.textContent = BEAT.start;
  }

  const toggle = button(BEAT.start, { class: 'press', 'data-beat': '' }, () =>
    running.hidden ? begin() : end(),
  );
  const words = element('p', { class: 'quiet' }, beatText(stepsPerMin));
  const box = element('div', { class: 'pacer' }, words, running, element('p', { class: 'buttons' }, toggle));
  return box;
}
