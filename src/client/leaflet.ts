/**
 * What runs at the end of a sheet: print, light or dark, and no tab stop where nothing scrolls. Without it nothing is
 * missing but these two buttons.
 * One plain script without imports. Of all that is chosen only light or dark is kept, where the browser lets it.
 */
(() => {
  const root = document.documentElement;
  // The file is read, and `arrival.ts` held back what is below the first screen. Where that was fast and nothing is drawn
  // yet, only what is near the screen is laid out for the first frame. The scripts after this one come before that frame,
  // for they put today on the first screen.
  const letIn = () => {
    if (!('arriving' in root.dataset)) return;
    root.dataset['arriving'] = 'drawing';
    requestAnimationFrame(() => setTimeout(() => delete root.dataset['arriving']));
  };
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', letIn);
  else letIn();

  // Without this script every wide table is a stop of the tab key, lest one that scrolls could not be reached.
  const stop = ({ target }: Pick<ResizeObserverEntry, 'target'>) => {
    if (target.scrollWidth > target.clientWidth) target.setAttribute('tabindex', '0');
    else target.removeAttribute('tabindex');
  };
  const widths = new ResizeObserver((entries) => entries.forEach(stop));
  for (const wide of document.querySelectorAll('.wide')) widths.observe(wide);

  const tools = document.querySelector<HTMLElement>('[data-tools]');
  if (!tools) return;
  tools.hidden = false;

  const dark = matchMedia('(prefers-color-scheme: dark)');
  const isDark = () => (root.dataset['theme'] ?? (dark.matches ? 'dark' : 'light')) === 'dark';
  const theme = tools.querySelector<HTMLButtonElement>('[data-tool="theme"]');
  const name = () => {
    if (theme) theme.textContent = (isDark() ? theme.dataset['toLight'] : theme.dataset['toDark']) ?? '';
  };
  theme?.addEventListener('click', () => {
    root.dataset['theme'] = isDark() ? 'light' : 'dark';
    keep(root.dataset['theme']);
    name();
  });
  // Asking for the store may throw where it is denied, and writing where it is full.
  function keep(chosen: string): void {
    try {
      localStorage.setItem('loadleaf:theme', chosen);
    } catch {
      // It holds for this page then.
    }
  }
  dark.addEventListener('change', name);
  name();

  tools.querySelector('[data-tool="print"]')?.addEventListener('click', () => print());
})();
