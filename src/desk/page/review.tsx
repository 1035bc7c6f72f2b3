/** What the log leads to: the decision with its grounds, and the next revision as a draft. */
import { computed, effect, signal } from '@preact/signals';
import type { Table } from '../../messages/shapes.ts';
import {
  draftLiesText,
  nextRevisionText,
  REVIEW_LEAD,
  REVIEW_NONE,
  REVIEW_ON,
  REVIEW_TITLE,
  TO_ASK,
} from '../../messages/en/desk/review.ts';
import type { ReviewShown } from '../talk.ts';
import { today } from './quick.tsx';
import { fileName, lay, ownLog, said, sheetNow, text, value, view } from './state.ts';
import { review } from './thread.ts';
import { isUnsaved } from './unsaved.ts';

const asked = signal<string | null>(null);
const shown = signal<ReviewShown | null>(null);
const on = computed(() => asked.value ?? today());

let wanted = 0;

/** Looked at again whenever consult, log or day change; the newest answer stands. */
export function followReview(): void {
  effect(() => {
    const sheet = sheetNow();
    const day = { on: on.value, isAsked: asked.value !== null };
    if (view.value === null || ownLog.value === '') {
      shown.value = null;
      return;
    }
    const mine = ++wanted;
    void review(sheet, day).then(
      (found) => {
        if (mine === wanted) shown.value = found;
      },
      () => (shown.value = null),
    );
  });
}

export function Review() {
  if (ownLog.value === '') return null;
  const now = shown.value;
  return (
    <section id="review" aria-labelledby="review-title" data-decision={now?.move}>
      <h2 id="review-title">{REVIEW_TITLE}</h2>
      <p class="field as-date">
        <label for="review-on">{REVIEW_ON}</label>
        <input
          id="review-on"
          type="date"
          value={on.value}
          onInput={({ currentTarget }) =>
            (asked.value = currentTarget.value === '' ? null : currentTarget.value)
          }
        />
      </p>
      {now === null ? <p class="quiet">{REVIEW_NONE}</p> : <Found now={now} />}
    </section>
  );
}

function Found({ now }: { now: ReviewShown }) {
  return (
    <>
      <p class="strong">{now.decision}</p>
      <p class="quiet">{REVIEW_LEAD}</p>
      {now.asks.length === 0 ? null : (
        <>
          <h3>{TO_ASK}</h3>
          <ul>
            {now.asks.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </>
      )}
      <Shown table={now.table} />
      <Shown table={now.weeks} />
      <button type="button" data-next-revision onClick={() => layNext(now)}>
        {nextRevisionText(Number(value.value['revision']) + 1)}
      </button>
    </>
  );
}

function Shown({ table: { caption, columns, rows } }: { table: Table }) {
  return (
    <div class="gridbox" tabIndex={0} role="region" aria-label={caption}>
      <table class="found">
        <caption>
          <span>{caption}</span>
        </caption>
        <thead>
          <tr>
            {columns.map((one) => (
              <th key={one} scope="col">
                {one}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <tr key={at}>
              {row.map((cell, index) => (index === 0 ? <th scope="row">{cell}</th> : <td>{cell}</td>))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The revision before goes beside it with its log; neither is touched, nor can be saved from there. */
function layNext({ next }: ReviewShown): void {
  if (isUnsaved()) return;
  const before = fileName.value;
  const beside = [...sheetNow().others, { file: `consults/${before}`, text: text.value }];
  lay(next.text, { name: next.name, text: null, handle: null, isInFolder: false }, beside);
  said.value = draftLiesText(next.name, before);
}
