/** Which signs are given; only those the device can give. */
import { PACER } from '../../messages/en/patient/pacer.ts';
import { element } from './element.ts';
import { CAN, signals } from './signals.ts';

type Signal = keyof typeof signals;

/** Switched in one place they are switched in all. */
export function switches(offered: readonly Signal[] = ['sound', 'vibration', 'voice']): HTMLElement {
  const boxes = offered
    .filter((name) => CAN[name])
    .map((name) => element('label', { class: 'switch' }, boxOf(name), ` ${PACER[name]}`));
  return element('p', { class: 'switches' }, ...boxes);
}

function boxOf(name: Signal): HTMLInputElement {
  const box = element('input', { type: 'checkbox', 'data-signal': name, checked: signals[name] });
  box.addEventListener('change', () => {
    signals[name] = box.checked;
    for (const other of document.querySelectorAll<HTMLInputElement>(`[data-signal="${name}"]`))
      other.checked = box.checked;
  });
  return box;
}
