/** Beside the form: what stands against a programme, or the programme as it will be, every number with its reason. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Problem } from '../../content/problem.ts';
import {
  BESIDE_WORDS,
  decidedByText,
  faultText,
  lineOf,
  problemText,
  stageText,
  whyText,
} from '../../messages/en/desk/beside.ts';
import { labelOf, placeOf } from '../form/labelOf.ts';
import { reasonKey, type Ready, type Reason } from '../talk.ts';
import { controlAt } from './control.ts';
import { MakeBar } from './make.tsx';
import { Slots } from './slots.tsx';
import { fault, lastGood, stopped, view } from './state.ts';

export function Beside() {
  const good = view.value?.state === 'ready' ? view.value : lastGood.value;
  return (
    <section id="beside" aria-label={BESIDE_WORDS.beside}>
      <MakeBar />
      <Status />
      {good === null ? null : <Programme good={good} />}
    </section>
  );
}

function Status() {
  const now = stopped.value;
  if (fault.value !== null) return <p class="status wrong">{faultText(fault.value)}</p>;
  if (view.value === null) return <p class="status">{BESIDE_WORDS.reading}</p>;
  if (now === null) return null;
  const isUnderWay = now.state === 'incomplete';
  return (
    <div class={isUnderWay ? 'status underway' : 'status wrong'} role="status">
      <h2>{isUnderWay ? BESIDE_WORDS.underWay : BESIDE_WORDS.refused}</h2>
      <ul class="refusals">
        {ordered(now.problems).map((problem, index) => (
          <li key={index}>
            <button type="button" data-problem={problem.path} onClick={() => lead(problem.path)}>
              {sentenceOf(problem, isUnderWay)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function ordered(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted((a, b) => placeOf(a.path) - placeOf(b.path));
}

function lead(path: string): void {
  const control = controlAt(path);
  control?.scrollIntoView({ block: 'center' });
  control?.focus({ preventScroll: true });
}

function sentenceOf(problem: Problem, isShort: boolean): string {
  const { path, code, file, line } = problem;
  const label = path === '' ? lineOf(file, line) : labelOf(path);
  if (code === 'missing-key' && isShort) return label;
  return problemText(label, problem);
}

function Programme({ good }: { good: Ready }) {
  const isOld = view.value?.state !== 'ready';
  const { stage, beside, title } = good;
  return (
    <div class={isOld ? 'programme old' : 'programme'}>
      {isOld ? (
        <p class="oldmark" role="status">
          {BESIDE_WORDS.old}
        </p>
      ) : null}
      <h2 class="who">{title}</h2>
      <p class="lead">{stageText(stage.chosen, stage.name, stage.step)}</p>
      <ul class="because">
        {stage.because.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <h3>{BESIDE_WORDS.week}</h3>
      <Made markup={beside.week} />
      <h3>{BESIDE_WORDS.exercises}</h3>
      <Slots slots={good.slots} />
      <details>
        <summary>{BESIDE_WORDS.why}</summary>
        <Made markup={beside.why} />
      </details>
      <details>
        <summary>{BESIDE_WORDS.ladder}</summary>
        <Made markup={beside.ladder} />
      </details>
      <details>
        <summary>{BESIDE_WORDS.passedOver}</summary>
        <Made markup={beside.passedOver} />
      </details>
      <h3>{BESIDE_WORDS.leaflet}</h3>
      <Leaflet good={good} />
    </div>
  );
}

/** Markup of our own pages, escaped where it was made. */
function Made({ markup }: { markup: string }) {
  return <div dangerouslySetInnerHTML={{ __html: markup }} />;
}

/** The leaflet's own main part; a press on a number opens its reason beneath the line. */
function Leaflet({ good: { beside, reasons } }: { good: Ready }) {
  const place = useRef<HTMLDivElement>(null);
  const [reason, setReason] = useState<Reason | null>(null);
  const opener = useRef<HTMLElement | null>(null);
  useEffect(() => {
    const around = place.current;
    if (around === null) return;
    around.innerHTML = beside.leaflet;
    for (const cell of around.querySelectorAll<HTMLElement>('[data-cell]')) askable(cell);
    setReason(null);
  }, [beside.leaflet]);
  const open = ({ target }: { readonly target: EventTarget | null }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('button.number') : null;
    const cell = button?.closest<HTMLElement>('[data-cell]');
    if (button === null || cell === null || cell === undefined) return;
    const { step = '', card = '', cell: name = '' } = cell.dataset;
    opener.current = button;
    setReason(reasons[reasonKey(step, card, name)] ?? null);
  };
  const close = () => {
    setReason(null);
    opener.current?.focus();
  };
  return (
    // Also from the number itself, which has the focus until the reason is drawn.
    <div onKeyDown={({ key }) => (key === 'Escape' && reason !== null ? close() : undefined)}>
      <div class="paper" ref={place} onClick={open} />
      {reason === null ? null : <ReasonOf reason={reason} close={close} />}
    </div>
  );
}

function askable(cell: HTMLElement): void {
  if (cell.textContent === '') return;
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'number';
  button.append(...cell.childNodes);
  cell.append(button);
}

function ReasonOf({ reason, close }: { reason: Reason; close: () => void }) {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => place.current?.focus(), [reason]);
  return (
    <div class="reason" role="dialog" aria-label={whyText(reason.text)} tabIndex={-1} ref={place}>
      <p class="strong">
        {reason.title}: {reason.label} {reason.text}
      </p>
      <p>{reason.rule}</p>
      <p>{decidedByText(reason.decidedBy)}</p>
      {reason.inputs === '' ? null : <p class="quiet">{reason.inputs}</p>}
      <p class="quiet">
        {reason.source} ({reason.mark})
      </p>
      <button type="button" onClick={close}>
        {BESIDE_WORDS.close}
      </button>
    </div>
  );
}
