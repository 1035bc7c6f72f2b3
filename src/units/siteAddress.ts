/** Where a site stands on the web. */

/**
 * The address with a slash at its end; null for one at which no sealed leaflet can be opened: only over HTTPS does a
 * browser give a page the means to, a machine's own pages excepted.
 */
export function siteAddress(text: string): string | null {
  const url = URL.canParse(text) ? new URL(text) : null;
  const isHere = url?.protocol === 'http:' && ['localhost', '127.0.0.1'].includes(url.hostname);
  if (url === null || (url.protocol !== 'https:' && !isHere) || url.search + url.hash + url.username !== '')
    return null;
  return url.href.endsWith('/') ? url.href : `${url.href}/`;
}
