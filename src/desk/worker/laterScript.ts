/** The worker's second part, fetched when something in it is first called: what is needed to see a leaflet is there without. */
import type { later } from './later.ts';

export type LaterScript = typeof later;

let fetching: () => void = () => {
  throw new Error('asked before the worker knew where its second part lies');
};

/** How it is fetched: at once, so that whoever calls it need not wait. */
export function comesBy(fetched: () => void): void {
  fetching = fetched;
}

export function laterScript(): LaterScript {
  const scope = globalThis as { loadleafLater?: LaterScript };
  if (scope.loadleafLater === undefined) fetching();
  if (scope.loadleafLater === undefined) throw new Error('the second part of the worker is not there');
  return scope.loadleafLater;
}
