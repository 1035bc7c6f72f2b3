/** What a sealed page lets run: its own style and script, and those of the leaflet that is put into it. */

const NEEDED: Readonly<Record<string, readonly string[]>> = {
  'default-src': ["'none'"],
  'worker-src': ["'self'"],
  'font-src': ['data:'],
  'img-src': ['data:'],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
};

/** The policy (CSP level 3) with these hashes beside the leaflet's own sources. */
export function withSources(leaflet: string, styleHash: string, scriptHash: string): string {
  const own = { ...NEEDED, 'style-src': [`'${styleHash}'`], 'script-src': [`'${scriptHash}'`] };
  const whole = new Map<string, readonly string[]>(Object.entries(own));
  for (const [name = '', ...sources] of leaflet.split(';').map((one) => one.trim().split(/\s+/)))
    if (name !== '') whole.set(name, [...new Set([...(whole.get(name) ?? []), ...sources])]);
  return [...whole].map(([name, sources]) => `${name} ${sourcesText(sources)}`).join('; ');
}

// `none` beside another source is no policy.
function sourcesText(sources: readonly string[]): string {
  const some = sources.filter((one) => one !== "'none'");
  return some.length === 0 ? "'none'" : some.join(' ');
}

/** The policy a page of ours gives in its head. Throws where there is none: nothing of the page would be let run. */
export function policyOf(page: string): string {
  const [, text] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page) ?? [];
  if (text === undefined) throw new TypeError('a page without a policy');
  return text.replaceAll('&#39;', "'").replaceAll('&amp;', '&');
}
