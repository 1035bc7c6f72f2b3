/** Addresses of the files beside the page, as the page's own script element names them. */

const own = document.currentScript as HTMLScriptElement | null;
const names = { ...own?.dataset };

export function nearby(
  name: 'yaml' | 'worker' | 'paper' | 'catalogue' | 'shelf' | 'regular' | 'bold',
): string {
  return new URL(names[name] ?? '', location.href).href;
}
