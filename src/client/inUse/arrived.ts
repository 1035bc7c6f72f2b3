/** What is not needed for the first screen waits until that is drawn (`data-arriving`, see `leaflet.ts`). */

/** Does the work once the whole sheet is read, drawn or not. */
export function onceRead(work: () => void): void {
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', work);
  else work();
}

/** Does the work once the sheet is read, or in the moment in which the rest of it is let in after the first frame. */
export function onceArrived(work: () => void): void {
  const root = document.documentElement;
  if (!('arriving' in root.dataset)) return onceRead(work);
  const watch = new MutationObserver(() => {
    if ('arriving' in root.dataset) return;
    watch.disconnect();
    work();
  });
  watch.observe(root, { attributeFilter: ['data-arriving'] });
}
