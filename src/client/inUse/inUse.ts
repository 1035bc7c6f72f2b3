/**
 * The leaflet in use: it knows today, folds what is not for today, and keeps a log. It only adds: without it, and on
 * paper, the sheet is whole. Whatever goes wrong here leaves the sheet as it was built. It runs as soon as the first screen
 * is read: what lies below that is there once the sheet is.
 */
import { earlierText, IN_USE, keptText } from '../../messages/en/patient/inUse.ts';
import type { DayInUse } from '../../programme/sheetInUse.ts';
import { todayOf, type Today } from '../../scheduling/today.ts';
import type { IsoDate } from '../../units/date.ts';
import { alarmForm, alarmsIn } from './alarm.ts';
import { onceArrived, onceRead } from './arrived.ts';
import { runToday } from './beat.ts';
import { easedCards, easedExercise, isEased, isMorningEased } from './eased.ts';
import { element, spoken } from './element.ts';
import { dateOf, type Book } from './entry.ts';
import { foldSections, foldWhy } from './fold.ts';
import {
  cardsOf,
  exerciseForms,
  lineForm,
  morningForm,
  pacedOf,
  runForm,
  sessionCards,
  sittingForm,
  titleOf,
} from './logForms.ts';
import { fillTable, sessionsDone, weeksPicture } from './logTable.ts';
import { deviceDay, type PageInUse, readSheet } from './sheet.ts';
import { pacer } from './pacer.ts';
import { shareBar } from './share.ts';
import { logStore, type LogStore } from './store.ts';
import { foldOthers, showToday } from './today.ts';
import { shortDay } from '../../messages/en/plain.ts';

// After an entry, or a press of what counts, the page stays with its day for so long: midnight parts no session.
const STAYS_MS = 60 * 60 * 1000;

const sheet = readSheet();
if (sheet !== null) start(sheet);

function start(sheet: PageInUse): void {
  document.documentElement.dataset['inUse'] = '';
  foldWhy();
  const store = logStore(sheet.alias, sheet.mark);
  const book: Book = { store, sheet };
  let shown: IsoDate | null = null;
  let eased = '';
  let lastTouchMs = 0;
  const dayOf = (on: IsoDate) => todayOf(on, sheet.days, sessionsDone(store.rows()), sheet.rules.spacing);
  const touched = (): void => {
    lastTouchMs = Date.now();
  };

  const look = (): void => {
    const stays = Date.now() - lastTouchMs < STAYS_MS;
    const today = dayOf(stays && shown !== null ? shown : deviceDay());
    const alarms = alarmsIn(store.rows(), sheet);
    showToday(today, sheet, alarms);
    foldOthers(today, sheet, alarms);
    const easedNow = easedCards(today.on, store.rows(), sheet).join();
    if (today.on !== shown) putForms(today, book, sheet);
    else if (easedNow !== eased) putExercises(today, book, sheet);
    [shown, eased] = [today.on, easedNow];
    showEased(today.on, book, sheet);
  };
  const first = dayOf(deviceDay());
  showToday(first, sheet, alarmsIn(store.rows(), sheet));
  const warn = keptWarning(store);
  store.onChange(warn);
  warn();
  putTop(first, book, sheet);
  onceRead(() => foldOthers(first, sheet, alarmsIn(store.rows(), sheet)));
  onceArrived(() => {
    foldSections();
    store.onChange(() => {
      touched();
      look();
    });
    document.addEventListener('click', ({ target }) => {
      if (target instanceof Element && target.closest('.pacer') !== null) touched();
    });
    const notes = logNotes(book, sheet);
    store.onChange(notes);
    look();
    notes();
    document.addEventListener('visibilitychange', look);
    addEventListener('pageshow', look);
    setInterval(look, 30_000);
  });
}

/** The forms of the day: morning and running on the first screen, the exercises' under each, the rest after the last. */
function putForms(today: Today, book: Book, sheet: PageInUse): void {
  for (const old of document.querySelectorAll('[data-forms]')) old.remove();
  const { on, kind } = today;
  if (kind === 'before' || kind === 'after') return;
  putTop(today, book, sheet);
  putExercises(today, book, sheet);
  const day = sheet.days.find((one) => one.on === on);
  const rest = [...(kind === 'run' ? [] : runForms(day, book)), sittingForm(book, on), lineForm(book, on)];
  document.querySelector('.log-bar .log-day')?.append(forms(...rest));
}

/** Under each exercise of the day what counts it and what is written of it, by the easier numbers where the log says so. */
function putExercises(today: Today, book: Book, sheet: PageInUse): void {
  for (const old of document.querySelectorAll('[data-exercise] [data-forms]')) old.remove();
  const { on } = today;
  const between = cardsOf(sheet.days.find((one) => one.on === on)).filter((one) => one.between);
  for (const { card, between: isBetween } of [...sessionCards(today, sheet.days), ...between]) {
    const planned = pacedOf(sheet, card);
    const place = document.querySelector(`[data-exercise="${card}"] > .text`);
    if (planned === undefined || place === null) continue;
    const isEasier = isEased(card, on, book.store.rows(), sheet);
    const paced = isEasier ? easedExercise(planned) : planned;
    const counts = pacer(paced, place.parentElement as HTMLElement, sheet.moving);
    const above = [...(isEasier ? [easedLine(IN_USE.eased)] : []), ...(counts === null ? [] : [counts])];
    if (above.length > 0) (place.querySelector('.presses') ?? place).append(forms(...above));
    place.append(forms(...exerciseForms(book, on, paced, titleOf(card), isBetween)));
  }
}

/** Says on the first screen that this morning sends to the easier numbers. */
function showEased(on: IsoDate, { store }: Book, sheet: PageInUse): void {
  const line = document.querySelector<HTMLElement>('.now .eased');
  if (line !== null) line.hidden = !isMorningEased(on, store.rows(), sheet);
}

function easedLine(words: string, attributes: Readonly<Record<string, boolean>> = {}): HTMLElement {
  const link = element('a', { href: '#easier' }, IN_USE.seeEasier);
  return element('p', { class: 'eased on-screen strong', ...attributes }, `${words} `, link);
}

/** What the first screen has to write into: there from the first frame, so that nothing moves under a thumb. */
function putTop({ on, kind }: Today, book: Book, sheet: PageInUse): void {
  if (kind === 'before' || kind === 'after') return;
  const day = sheet.days.find((one) => one.on === on);
  const beat = day?.run || day?.race ? [runToday(day, sheet.stepRate)] : [];
  const run = kind === 'run' ? runForms(day, book) : [];
  document
    .querySelector('.now .warning')
    ?.after(forms(morningForm(book, on), easedLine(IN_USE.easedToday, { hidden: true }), ...beat, ...run));
}

/** A run is noted on the first screen where it is all there is; beside a session, with the rest of the day. */
function runForms(day: DayInUse | undefined, book: Book): readonly HTMLElement[] {
  return day?.run || day?.race ? [runForm(book, day.on)] : [];
}

function forms(...all: readonly HTMLElement[]): HTMLElement {
  return element('div', { 'data-forms': '' }, ...all);
}

/** That the log is not kept, before the first entry and in the way of it. */
function keptWarning(store: LogStore): () => void {
  const warning = element('p', { class: 'on-screen warning', hidden: true });
  document.querySelector('.now .today-lines')?.after(warning);
  return () => {
    warning.hidden = store.kept() === 'kept' && !store.damaged();
    warning.replaceChildren(
      `${keptText(store.kept(), store.damaged())} `,
      element('a', { href: '#log-bar-heading' }, IN_USE.share),
    );
  };
}

/** Where the log is kept and how it is shared, after the exercises; in the log itself any day to look at and to correct. */
function logNotes(book: Book, sheet: PageInUse): () => void {
  const { store } = book;
  const kept = spoken({ class: 'quiet kept' });
  const bar = element(
    'section',
    { class: 'log-bar on-screen', 'aria-labelledby': 'log-bar-heading' },
    element('h3', { id: 'log-bar-heading' }, IN_USE.log),
    element('div', { class: 'log-day' }),
    alarmForm(book),
    kept,
    shareBar(store, sheet),
  );
  document.querySelector('.next')?.append(bar);
  const place = document.querySelector<HTMLElement>('#log > .text');
  const picture = element('div', {});
  const days = element('div', { class: 'on-screen' });
  place?.prepend(picture, days);
  let choosable = '';
  return () => {
    const rows = store.rows();
    const today = deviceDay();
    const earlier = rows.filter(({ date }) => date < sheet.startOn).length;
    const words = `${keptText(store.kept(), store.damaged())} ${earlierText(earlier)}`.trim();
    if (kept.textContent !== words) kept.textContent = words;
    fillTable(sheet, rows);
    picture.replaceChildren(...[weeksPicture(sheet, rows, today)].filter((one) => one !== null));
    const until = sheet.days.filter(({ on }) => on <= today).map(({ on }) => on);
    if (until.join() === choosable) return;
    choosable = until.join();
    days.replaceChildren(...dayPicker(book, sheet, until));
  };
}

/** Any day up to today, to look at and to correct. */
function dayPicker(book: Book, sheet: PageInUse, until: readonly IsoDate[]): readonly HTMLElement[] {
  if (until.length === 0) return [];
  const forms = element('div', {});
  const choice = element(
    'select',
    { id: 'log-day-choice' },
    element('option', { value: '' }, '–'),
    ...[...until].reverse().map((on) => element('option', { value: on }, shortDay(on))),
  );
  choice.addEventListener('change', () => {
    forms.replaceChildren(...(choice.value === '' ? [] : dayForms(book, sheet, dateOf(choice.value))));
  });
  return [
    element('p', { class: 'field' }, element('label', { for: 'log-day-choice' }, IN_USE.day), choice),
    forms,
  ];
}

/** Named with their day as well: the groups of today's forms stand on the same page. */
function dayForms(book: Book, sheet: PageInUse, on: IsoDate): readonly HTMLElement[] {
  const forms = formsOfDay(book, sheet, on);
  for (const form of forms)
    for (const group of [form, ...form.querySelectorAll<HTMLElement>('[role="group"]')])
      if (group.getAttribute('role') === 'group')
        group.setAttribute('aria-label', `${group.getAttribute('aria-label') ?? ''}, ${shortDay(on)}`);
  return forms;
}

function formsOfDay(book: Book, sheet: PageInUse, on: IsoDate): readonly HTMLElement[] {
  const exercises = cardsOf(sheet.days.find((day) => day.on === on)).flatMap(({ card, between }) => {
    const paced = pacedOf(sheet, card);
    const title = titleOf(card);
    return paced === undefined
      ? []
      : [element('h3', {}, title), ...exerciseForms(book, on, paced, title, between)];
  });
  return [
    morningForm(book, on),
    ...exercises,
    element('h3', {}, IN_USE.run),
    runForm(book, on),
    sittingForm(book, on),
    lineForm(book, on),
  ];
}
