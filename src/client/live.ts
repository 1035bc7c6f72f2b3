/**
 * What `serve` puts into the pages it shows, and no built file holds: the page is fetched anew when it was built anew,
 * and what stands against a build is shown above it. Asks nobody but the server the page came from, and that through the
 * one worker of all open pages.
 */
(() => {
  const own = document.currentScript;
  if (!(own instanceof HTMLScriptElement)) return;
  const { part = '', build = '', worker: address = '' } = own.dataset;
  interface Notice {
    readonly builds: Readonly<Record<string, number>>;
    readonly heading: string;
    readonly text: string;
  }
  let panel: HTMLElement | null = null;

  // A browser without such workers shows the page all the same; it is reloaded by hand then.
  if (!('SharedWorker' in globalThis)) return;
  const { port } = new SharedWorker(address);
  port.onmessage = ({ data }: MessageEvent<string>) => {
    const { builds, heading, text } = JSON.parse(data) as Notice;
    const newest = builds[part] ?? 0;
    // The worker may not have heard yet of the build that this page is of.
    if (newest < Number(build)) return;
    if (newest > Number(build)) location.reload();
    else show(heading, text);
  };
  addEventListener('pagehide', () => port.postMessage('gone'));

  function show(heading: string, text: string): void {
    panel?.remove();
    panel = null;
    if (heading === '') return;
    panel = styled('section', {
      position: 'fixed',
      inset: '0 0 auto 0',
      zIndex: '9',
      maxHeight: '60vh',
      overflow: 'auto',
      padding: '1rem 1.5rem',
      color: 'CanvasText',
      background: 'Canvas',
      borderBottom: '0.25rem solid currentColor',
      boxShadow: '0 0.5rem 1.5rem rgb(0 0 0 / 0.25)',
    });
    panel.setAttribute('role', 'alert');
    const title = styled('h2', { margin: '0 0 0.5rem', fontSize: '1rem' });
    title.textContent = heading;
    const lines = styled('pre', {
      margin: '0',
      font: '0.875rem/1.5 ui-monospace, monospace',
      whiteSpace: 'pre-wrap',
      overflowWrap: 'anywhere',
    });
    lines.textContent = text;
    panel.append(title, lines);
    document.body.append(panel);
  }

  // By properties: the policy of the page lets no style attribute in.
  function styled(name: string, style: Partial<CSSStyleDeclaration>): HTMLElement {
    const element = document.createElement(name);
    Object.assign(element.style, style);
    return element;
  }
})();
