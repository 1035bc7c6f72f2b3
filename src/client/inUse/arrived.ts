/** What is not needed for the first screen waits until that is drawn (`data-arriving`, see `leaflet.ts`). */

/** Does the work at once, or in the moment in which the rest of the page is let in after the first frame. */
export function onceArrived(work: () => void): void {
  const root = document.documentElement;
  if (!('arriving' in root.dataset)) {
    work();
    return;
  }
  const watch = new MutationObserver(() => {
    if ('arriving' in root.dataset) return;
    watch.disconnect();
    work();
  });
  watch.observe(root, { attributeFilter: ['data-arriving'] });
}
