/** A pacer in an exercise: counts what the person starts, set by set, and never goes on by itself to the next. */
import { boutsOf, isPaced, phaseAt, phasesOf, wayAt, type Phase } from '../../dosing/pace.ts';
import { boutText, PACER, PHASE_WORDS } from '../../messages/en/patient/pacer.ts';
import type { PackedFigures } from '../../drawing/moving/packed.ts';
import type { PacedExercise } from '../../programme/sheetInUse.ts';
import { button, element, spoken } from './element.ts';
import { movingPicture } from './moving.ts';
import { keepAwake, readySignals, signal } from './signals.ts';
import { switches } from './switches.ts';
import { takeTurn } from './turn.ts';

const TICK_MS = 50;

type State = 'ready' | 'moving' | 'holding' | 'resting' | 'waiting' | 'done';

const STATES: Readonly<Record<Phase['kind'], State>> = {
  ready: 'ready',
  go: 'moving',
  hold: 'holding',
  back: 'moving',
  rest: 'resting',
};

/** The pacer of one exercise, or null where there is nothing to count. The picture of the exercise goes with it. */
export function pacer(
  paced: PacedExercise,
  exercise: HTMLElement,
  figures: PackedFigures,
): HTMLElement | null {
  if (!isPaced(paced)) return null;
  const bouts = boutsOf(paced);
  const picture = movingPicture(exercise, figures, paced.card);
  let at = 0;
  let phases: readonly Phase[] = [];
  /** When the bout began on the page's own clock; null while nothing runs. */
  let beganMs: number | null = null;
  let elapsedMs = 0;
  let shown: Phase | null = null;
  let timer = 0;

  const number = element('p', { class: 'count', 'aria-hidden': 'true' });
  const word = element('p', { class: 'phase', 'aria-hidden': 'true' });
  const line = spoken({ class: 'bout' });
  const begin = button(PACER.start, { class: 'press', 'data-pacer': 'start' }, () => run());
  const pause = button(PACER.pause, { class: 'press', 'data-pacer': 'pause' }, () =>
    beganMs === null ? goOn() : halt(),
  );
  const back = button(PACER.back, { class: 'press quiet', 'data-pacer': 'back' }, () => wait(at));
  const next = button(PACER.next, { class: 'press quiet', 'data-pacer': 'next' }, () => wait(at + 1));
  const stop = button(PACER.stop, { class: 'press quiet', 'data-pacer': 'stop' }, () => close());
  const running = element('div', { class: 'counting', hidden: true }, number, word, line, switches());
  const box = element(
    'div',
    { class: 'pacer on-screen' },
    running,
    element('p', { class: 'buttons' }, begin, pause, back, next, stop),
  );

  const bout = () => bouts[Math.min(at, bouts.length - 1)] ?? { set: 1, side: null, restSeconds: 0 };

  function tell(state: State, repetition: number): void {
    box.dataset['pacerState'] = state;
    box.dataset['set'] = String(bout().set);
    box.dataset['rep'] = String(repetition);
    const open = running.hidden === false;
    const isRunning = phases.length > 0;
    begin.hidden = isRunning || state === 'done';
    begin.textContent = open ? PACER.begin : PACER.start;
    pause.hidden = !isRunning;
    pause.textContent = beganMs === null ? PACER.goOn : PACER.pause;
    back.hidden = !isRunning;
    next.hidden = !open || state === 'done';
    stop.hidden = !open;
  }

  function run(): void {
    takeTurn(close);
    readySignals();
    keepAwake(true);
    running.hidden = false;
    phases = phasesOf(paced, bout());
    picture.begin(bout().side !== null && bout().side !== paced.firstSide);
    [elapsedMs, shown] = [0, null];
    line.textContent = `${boutText(bout(), paced)}.`;
    keepingFocus(goOn, pause);
  }

  function goOn(): void {
    beganMs = performance.now() - elapsedMs;
    clearInterval(timer);
    timer = setInterval(tick, TICK_MS) as unknown as number;
    tick();
    if (picture.moves) drawOn();
  }

  /** Frame by frame, from the same clock as the counting. */
  function drawOn(): void {
    if (beganMs === null) return;
    const ms = performance.now() - beganMs;
    const phase = phaseAt(phases, ms);
    if (phase !== null) picture.show(phase, wayAt(phase, ms));
    requestAnimationFrame(drawOn);
  }

  function halt(): void {
    elapsedMs = performance.now() - (beganMs ?? performance.now());
    beganMs = null;
    clearInterval(timer);
    word.textContent = PACER.paused;
    tell(shown === null ? 'ready' : STATES[shown.kind], shown?.repetition ?? 0);
  }

  /** Always from the time that has gone by, never from ticks counted: so nothing drifts. */
  function tick(): void {
    if (beganMs === null) return;
    elapsedMs = performance.now() - beganMs;
    const phase = phaseAt(phases, elapsedMs);
    if (phase === null) return wait(at + 1);
    const left = Math.ceil((phase.toMs - elapsedMs) / 1000);
    const count = phase.kind === 'go' || phase.kind === 'back' ? phase.repetition : left;
    if (number.textContent !== String(count)) number.textContent = String(count);
    if (phase === shown) return;
    shown = phase;
    picture.show(phase, wayAt(phase, elapsedMs));
    word.textContent = PHASE_WORDS[phase.kind];
    signal(
      phase.kind !== 'back' && phase.kind !== 'rest',
      phase.kind === 'go' ? String(phase.repetition) : PHASE_WORDS[phase.kind],
    );
    tell(STATES[phase.kind], phase.repetition);
  }

  /** Waits for the person before the bout `which`; after the last one all is done. */
  function wait(which: number): void {
    clearInterval(timer);
    [at, phases, beganMs, shown, elapsedMs] = [which, [], null, null, 0];
    number.textContent = '';
    picture.end();
    const done = at >= bouts.length;
    if (done) {
      word.textContent = '';
      line.textContent = PACER.done;
      keepAwake(false);
    } else {
      word.textContent = PACER.waiting;
      line.textContent = `${boutText(bout(), paced)}. ${PACER.waiting}`;
    }
    signal(false, done ? PACER.done : '');
    keepingFocus(() => tell(done ? 'done' : 'waiting', 0), done ? stop : begin);
  }

  function close(): void {
    clearInterval(timer);
    [at, phases, beganMs, shown, elapsedMs] = [0, [], null, null, 0];
    picture.end();
    running.hidden = true;
    keepAwake(false);
    keepingFocus(() => tell('ready', 0), begin);
  }

  // A button that goes away hands its focus on; focus that is elsewhere stays there.
  function keepingFocus(change: () => void, to: HTMLElement): void {
    const isHere = box.contains(document.activeElement);
    change();
    if (isHere) to.focus();
  }

  tell('ready', 0);
  return box;
}
