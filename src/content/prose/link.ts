/** Which targets a link may have: pages over https, mail, telephone, and files of this folder. */

/**
 * What is wrong with a target, in words that read after "must be", or null when it may stand. `file` is the file it
 * stands in: a relative target must not leave the content folder. @example linkFault('http://a.org', 'clinic.md')
 */
export function linkFault(href: string, file: string): string | null {
  const scheme = SCHEME.exec(href)?.[0].toLowerCase();
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

/**
 * The file a link leads to, from the top of the content folder, or null when it leads out to the web, a mail or a
 * telephone. `file` is the one it stands in. @example linkedFile('../exercises/bridge.md', 'advice/sitting.md')
 */
export function linkedFile(href: string, file: string): string | null {
  if (isOutward(href)) return null;
  const steps = file.split('/').slice(0, -1);
  for (const step of pathOf(href).split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return pathOf(href) === '' ? file : steps.join('/');
}

/** Whether a target names its own scheme; the others are files of the content folder. */
export function isOutward(href: string): boolean {
  return SCHEME.test(href);
}

const SCHEME = /^[a-z][a-z0-9+.-]*(?=:)/i;

// Browsers read \ as / and %2e as a dot, so both are taken for what they become.
function pathOf(href: string): string {
  return href
    .replace(/[?#].*$/s, '')
    .replace(/%5c/gi, '/')
    .replace(/%2e/gi, '.');
}

// A name before @ is not the site, though it reads like one.
function isWebPage(href: string): boolean {
  if (!/^https:\/\/[^/]/i.test(href) || !URL.canParse(href)) return false;
  const { hostname, username, password } = new URL(href);
  return hostname !== '' && username === '' && password === '';
}

function staysInside(href: string, file: string): boolean {
  const path = pathOf(href);
  if (path.startsWith('/') || path.includes('//') || path.includes('\\') || path.includes(':')) return false;
  let depth = file.split('/').length - 1;
  for (const step of path.split('/')) {
    if (step === '..') depth -= 1;
    else if (step !== '.' && step !== '') depth += 1;
    if (depth < 0) return false;
  }
  return true;
}
