// The packages of the lock file as records: name, version, licence, and whether they run or are for developers only.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const TOP = dirname(dirname(fileURLToPath(import.meta.url)));

// Where the lock has no licence, as its package says it; each held against the installed package by a test.
const READ = { 'png-js': { licence: 'MIT', source: 'LICENSE in the package' } };

/** Every package once, by name and version. `isRunTime`: goes along when only what runs is installed. */
export function lockedPackages() {
  const { packages } = JSON.parse(readFileSync(join(TOP, 'package-lock.json'), 'utf8'));
  const all = new Map();
  for (const [place, one] of Object.entries(packages)) {
    if (place === '') continue;
    const name = one.name ?? place.slice(place.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const licence = one.license ?? READ[name]?.licence;
    if (licence === undefined)
      throw new Error(`${name} has no licence in the lock; read it and say it in scripts/lock.mjs`);
    const key = `${name}@${one.version}`;
    const before = all.get(key);
    const isRunTime = one.dev !== true;
    all.set(key, {
      name,
      version: one.version,
      licence,
      isRunTime: isRunTime || before?.isRunTime === true,
      isOptional: (one.optional === true || one.devOptional === true) && before?.isOptional !== false,
      hasInstallScript: one.hasInstallScript === true,
      sha512: one.integrity?.replace(/^sha512-/, '') ?? null,
      places: [...(before?.places ?? []), place],
    });
  }
  return [...all.values()].sort((a, b) => compare(a.name, b.name) || compare(a.version, b.version));
}

/** This project itself. */
export function ownPackage() {
  return JSON.parse(readFileSync(join(TOP, 'package.json'), 'utf8'));
}

export function compare(a, b) {
  return a < b ? -1 : a > b ? 1 : 0;
}
