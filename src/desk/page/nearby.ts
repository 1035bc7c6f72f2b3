/** Addresses of the files beside the page, as the page's own script element names them. */

const own = document.currentScript as HTMLScriptElement | null;
const names = { ...own?.dataset };

type Nearby =
  | 'yaml'
  | 'worker'
  | 'later'
  | 'dress'
  | 'paper'
  | 'post'
  | 'catalogue'
  | 'library'
  | 'sealing'
  | 'regular'
  | 'bold';

export function nearby(name: Nearby): string {
  return new URL(names[name] ?? '', location.href).href;
}
