/** What every control of the form has: its sentence, its id, what stands against it, and where it is on the page. */
import type { FieldAbout } from '../catalogue.ts';
import { patternOf } from '../consult/path.ts';
import { catalogue, stopped } from './state.ts';

export function aboutOf(name: string): FieldAbout | undefined {
  return catalogue.value?.fields[patternOf(name)];
}

export function idOf(name: string): string {
  return `field-${name.replaceAll('.', '-')}`;
}

export function describedBy(name: string) {
  const wrong = wrongAt(name);
  return {
    'aria-describedby': `${idOf(name)}-help${wrong === undefined ? '' : ` ${idOf(name)}-wrong`}`,
    ...(wrong === undefined || wrong.code === 'missing-key' ? {} : { 'aria-invalid': true as const }),
  };
}

export function wrongAt(name: string) {
  return stopped.value?.problems.find(({ path }) => path === name);
}

/** A control that is only now being drawn. */
export function focusSoon(name: string): void {
  requestAnimationFrame(() => requestAnimationFrame(() => controlAt(name)?.focus()));
}

/** The control of a path, or of the nearest around it. */
export function controlAt(name: string): HTMLElement | null {
  for (let way = name; way !== ''; way = way.includes('.') ? way.slice(0, way.lastIndexOf('.')) : '') {
    const quoted = CSS.escape(way);
    const found = document.querySelector<HTMLElement>(
      `#form [name="${quoted}"], #form [data-add="${quoted}"], #form [name^="${quoted}."]`,
    );
    if (found !== null) return found;
  }
  return null;
}
