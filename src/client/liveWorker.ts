/**
 * What `serve` gives all its open pages together: the one stream of notices, told on to each of them. A browser holds six
 * connections to a server, so that of pages with a stream each the seventh would never load.
 */
(() => {
  const pages = new Set<MessagePort>();
  let last: string | null = null;

  const changes = new EventSource('changes');
  changes.addEventListener('message', ({ data }: MessageEvent<string>) => {
    last = data;
    for (const page of pages) page.postMessage(data);
  });

  addEventListener('connect', (event) => {
    const [page] = (event as MessageEvent).ports;
    if (page === undefined) return;
    pages.add(page);
    // The only thing a page says is that it goes.
    page.onmessage = () => pages.delete(page);
    if (last !== null) page.postMessage(last);
  });
})();
