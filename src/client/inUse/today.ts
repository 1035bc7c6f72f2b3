/** The first screen says what today is, what comes next, and leads to it. */
import { ALARM, alarmLines } from '../../messages/en/patient/alarm.ts';
import { IN_USE, todayWords } from '../../messages/en/patient/inUse.ts';
import { shortDay } from '../../messages/en/plain.ts';
import type { AlarmItem, DayInUse, SheetInUse } from '../../programme/sheetInUse.ts';
import { type Today, weekAround } from '../../scheduling/today.ts';
import { element, withCall } from './element.ts';
import { toggle } from './fold.ts';
import { cardsOf, type CardOfDay, sessionCards } from './logForms.ts';

/** Writes today over the printed next session, which stays for paper. The sheet below need not be read yet. */
export function showToday(today: Today, sheet: SheetInUse, alarms: readonly AlarmItem[]): void {
  const { startOn, reviewOn, rules, days } = sheet;
  const main = document.querySelector('main');
  const now = document.querySelector<HTMLElement>('.now');
  if (main === null || now === null) return;
  const dates = { startOn, reviewOn, gapDays: rules.spacing.gapDays };
  const day = days.find(({ on }) => on === (today.kind === 'before' ? startOn : today.on));
  const stops = alarms.length > 0;
  const words = stops
    ? { heading: ALARM.heading, lines: alarmLines(alarms, sheet.emergencyNumber) }
    : todayWords(today, dates, day ?? NOTHING);
  const key = JSON.stringify([today, words]);
  if (now.dataset['shows'] === key) return;
  now.dataset['shows'] = key;
  main.dataset['today'] = today.kind;
  main.dataset['todayOn'] = today.on;
  const [heading, lines, week] = panelOf(now);
  heading.textContent = words.heading;
  lines.replaceChildren(
    ...words.lines.map((line, at) =>
      element(
        'p',
        at === 0 ? { class: 'when' } : {},
        ...(stops ? withCall(line, sheet.emergencyNumber) : [line]),
      ),
    ),
    ...(stops ? [element('p', {}, element('a', { href: '#alarm' }, ALARM.toAlarm))] : []),
  );
  week.replaceChildren(...weekAround(today.on, days).map((one) => dayLine(one, today)));
  now.querySelector('.week-now')?.toggleAttribute('hidden', today.kind === 'after');
  showWays(
    { run: !stops && !isOutside(today) && (day?.runText ?? '') !== '', log: !isOutside(today) },
    sheet,
  );
  now.classList.toggle('stops', stops);
  now.classList.toggle('without-session', stops || !hasSession(today));
  listExercises(cardsShown(today, sheet, stops), sheet);
}

/** The list has a line for each exercise of the page, in its order. */
function listExercises(shown: readonly string[], { exercises }: SheetInUse): void {
  document.querySelector('.glance')?.classList.toggle('off-list', shown.length === 0);
  document.querySelectorAll('.glance li').forEach((line, at) => {
    line.classList.toggle('off-list', !shown.includes(exercises[at]?.card ?? ''));
  });
}

/** Below it what is not for today waits behind its name. */
export function foldOthers(today: Today, sheet: SheetInUse, alarms: readonly AlarmItem[]): void {
  const cards = cardsShown(today, sheet, alarms.length > 0);
  for (const exercise of document.querySelectorAll<HTMLElement>('[data-exercise]'))
    setOff(exercise, !cards.includes(exercise.dataset['exercise'] ?? ''));
  const logHeading = document.getElementById('log-bar-heading');
  if (logHeading !== null) logHeading.textContent = isOutside(today) ? IN_USE.logAlone : IN_USE.log;
}

function isOutside({ kind }: Today): boolean {
  return kind === 'before' || kind === 'after';
}

const NOTHING = { text: '', runText: '' };

/** Ways to what is for today besides the exercises, before those to what must be found at once. */
function showWays(shown: { readonly run: boolean; readonly log: boolean }, { runHeading }: SheetInUse): void {
  const ways = document.querySelector('.ways');
  if (ways === null) return;
  if (ways.querySelector('[data-way]') === null)
    ways.prepend(way('run', '#running', runHeading), way('log', '#log-bar-heading', IN_USE.log));
  for (const one of ways.querySelectorAll<HTMLElement>('[data-way]'))
    one.hidden = !shown[one.dataset['way'] as keyof typeof shown];
}

function way(name: string, address: string, words: string): HTMLElement {
  return element('li', { class: 'on-screen', 'data-way': name }, element('a', { href: address }, words));
}

/** The panel, made once before what is printed there. */
function panelOf(now: HTMLElement): readonly [HTMLElement, HTMLElement, HTMLElement] {
  const there = [...now.querySelectorAll<HTMLElement>('#today-heading, .today-lines, .week-now ul')];
  const [heading, lines, week] = there;
  if (heading !== undefined && lines !== undefined && week !== undefined) return [heading, lines, week];
  const made = [
    element('h2', { id: 'today-heading', class: 'on-screen' }),
    element('div', { class: 'today-lines on-screen', 'aria-live': 'polite' }),
    element('ul', {}),
  ] as const;
  for (const old of now.querySelectorAll('h2, .when')) old.classList.add('on-paper');
  now.prepend(
    made[0],
    made[1],
    element('details', { class: 'week-now on-screen' }, element('summary', {}, IN_USE.thisWeek), made[2]),
  );
  now.closest('section')?.setAttribute('aria-labelledby', 'today-heading');
  return made;
}

function dayLine({ on, text }: DayInUse, today: Today): HTMLElement {
  const label = element('strong', {}, on === today.on ? `${shortDay(on)}, ${IN_USE.today}` : shortDay(on));
  const words = text === '' ? IN_USE.free : text;
  return element('li', on === today.on ? { 'aria-current': 'date' } : {}, label, ` ${words}`);
}

function hasSession({ kind, moved }: Today): boolean {
  return kind === 'session' || kind === 'before' || moved === 'late';
}

/** Before the start those of the first session. */
function cardsShown(today: Today, { days }: SheetInUse, stops: boolean): readonly string[] {
  return stops ? [] : cardsToday(today, days).map(({ card }) => card);
}

function cardsToday(today: Today, days: readonly DayInUse[]): readonly CardOfDay[] {
  const { kind, on, nextOn } = today;
  const dayOf = (date: string | null) => days.find((day) => day.on === date);
  if (kind === 'after') return [];
  if (kind === 'before') return cardsOf(dayOf(nextOn));
  const between = cardsOf(dayOf(on)).filter((one) => one.between);
  return hasSession(today) ? [...sessionCards(today, days), ...between] : between;
}

function setOff(exercise: HTMLElement, off: boolean): void {
  if (exercise.querySelector('.not-today') === null) {
    const fold = toggle(exercise, 'off', exercise.id);
    fold.classList.add('not-today');
    fold.append(IN_USE.notToday);
    exercise.querySelector('h3')?.after(element('p', { class: 'on-screen' }, fold));
  }
  exercise.classList.toggle('off', off);
  exercise.classList.toggle('is-off-today', off);
}
