/** Keys of settings and inputs as words: who reads the record is no author of files. */

/** Units at the end of a key. */
const UNITS: Readonly<Record<string, string>> = {
  Deg: '°',
  Bw: 'body weights',
  Kg: 'kg',
  Nm: 'N m',
  Km: 'km',
  Bws: 'body weights × s',
};

const UNIT = new RegExp(`(?<=[a-z])(${Object.keys(UNITS).join('|')})$`);

/** @example 'stage 1.hipFlexionDeg' becomes 'stage 1: hip flexion, °' */
export function keyWords(key: string): string {
  return key.split('.').map(wordsOf).join(': ');
}

function wordsOf(part: string): string {
  // Words already.
  if (part.includes(' ')) return part;
  const unit = UNITS[UNIT.exec(part)?.[1] ?? ''] ?? '';
  const words = part
    .replace(UNIT, '')
    .replace(/(?<=[a-z])(?=[A-Z0-9])/g, ' ')
    .replace(/[-_]/g, ' ')
    .toLowerCase();
  return unit === '' ? words : `${words}, ${unit}`;
}
