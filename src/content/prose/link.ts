/** Which targets a link may have: pages over https, mail, telephone, and files of this folder. */

/**
 * What is wrong with a target, in words that read after "must be", or null when it may stand. `file` is the file it
 * stands in: a relative target must not leave the content folder. @example linkFault('http://a.org', 'clinic.md')
 */
export function linkFault(href: string, file: string): string | null {
  const scheme = /^[a-z][a-z0-9+.-]*(?=:)/i.exec(href)?.[0].toLowerCase();
  switch (scheme) {
    case 'https':
      return isWebPage(href) ? null : 'https:// with the name of a site';
    case 'mailto':
      return /^mailto:[^\s?@%]+@[^\s?@%]+$/i.test(href) ? null : 'mailto: with one address';
    case 'tel':
      return /^tel:\+?[0-9.()-]+$/i.test(href) ? null : 'tel: with digits and hyphens';
    case undefined:
      return staysInside(href, file) ? null : 'the way to a file of this folder';
    default:
      return 'a link by https, mailto or tel, or to a file of this folder';
  }
}

// A name before @ is not the site, though it reads like one.
function isWebPage(href: string): boolean {
  if (!/^https:\/\/[^/]/i.test(href) || !URL.canParse(href)) return false;
  const { hostname, username, password } = new URL(href);
  return hostname !== '' && username === '' && password === '';
}

// Browsers read \ as / and %2e as a dot, so both are taken for what they become.
function staysInside(href: string, file: string): boolean {
  const path = href
    .replace(/[?#].*$/s, '')
    .replace(/%5c/gi, '/')
    .replace(/%2e/gi, '.');
  if (path.startsWith('/') || path.includes('//') || path.includes('\\') || path.includes(':')) return false;
  let depth = file.split('/').length - 1;
  for (const step of path.split('/')) {
    if (step === '..') depth -= 1;
    else if (step !== '.' && step !== '') depth += 1;
    if (depth < 0) return false;
  }
  return true;
}
