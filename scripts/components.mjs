// Prints the component list of a release (CycloneDX 1.5, JSON) from the lock file: what runs, with licences and hashes.
// The same lock gives the same bytes: no time, and a serial number made from the contents.
import { createHash } from 'node:crypto';
import { pathToFileURL } from 'node:url';
import { lockedPackages, ownPackage } from './lock.mjs';

/** The list as a value. */
export function components() {
  const { name, version, license, description } = ownPackage();
  const packages = lockedPackages().filter(({ isRunTime }) => isRunTime);
  const own = { ...identity(name, version), type: 'application', description, licenses: licencesOf(license) };
  const list = packages.map((one) => ({
    type: 'library',
    ...identity(one.name, one.version),
    scope: one.isOptional ? 'optional' : 'required',
    ...(one.sha512 === null ? {} : { hashes: [{ alg: 'SHA-512', content: hexOf(one.sha512) }] }),
    licenses: licencesOf(one.licence),
  }));
  return {
    $schema: 'http://cyclonedx.org/schema/bom-1.5.schema.json',
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    serialNumber: `urn:uuid:${uuidOf(JSON.stringify([own, list]))}`,
    version: 1,
    metadata: { component: own },
    components: list,
  };
}

// A purl (package URL) writes the at of a scope as %40.
function identity(name, version) {
  return {
    'bom-ref': `${name}@${version}`,
    name,
    version,
    purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
  };
}

function licencesOf(licence) {
  return / (AND|OR|WITH) /.test(licence) ? [{ expression: licence }] : [{ license: { id: licence } }];
}

function hexOf(base64) {
  return Buffer.from(base64, 'base64').toString('hex');
}

// Of version 8 (RFC 9562): bits of our own making, here a hash.
function uuidOf(text) {
  const hex = createHash('sha256').update(text).digest('hex');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `8${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  process.stdout.write(`${JSON.stringify(components(), null, 2)}\n`);
