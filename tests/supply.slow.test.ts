/** What others' software comes along: named with its licence, without scripts at its installation, listed for a release. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';

interface Package {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly isRunTime: boolean;
  readonly hasInstallScript: boolean;
  readonly places: readonly string[];
}
interface Component {
  readonly name: string;
  readonly version: string;
  readonly purl: string;
  readonly hashes?: unknown;
  readonly licenses?: unknown;
}

const script = async <T>(name: string): Promise<T> =>
  (await import(pathToFileURL(resolve(`scripts/${name}.mjs`)).href)) as T;
const { lockedPackages } = await script<{ lockedPackages: () => readonly Package[] }>('lock');
const { thirdPartyText } = await script<{ thirdPartyText: () => string }>('thirdParty');
const { components } = await script<{
  components: () => { readonly components: readonly Component[] } & Record<string, unknown>;
}>('components');
const { verdictOf } = await script<{ verdictOf: (answer: string) => { exit: number; says: string } }>(
  'advisories',
);

const packages = lockedPackages();
const manifestOf = (place: string) =>
  JSON.parse(readFileSync(join(place, 'package.json'), 'utf8')) as {
    license?: string;
    scripts?: Readonly<Record<string, string>>;
  };
const installed = packages.flatMap((one) =>
  one.places.filter((place) => existsSync(join(place, 'package.json'))).map((place) => ({ ...one, place })),
);

/** Packages for developers that may run something at their installation; the project must do without its doing. */
const MAY_RUN_SCRIPTS: readonly string[] = ['esbuild'];

function runsAtInstallation(place: string): boolean {
  const scripts = Object.keys(manifestOf(place).scripts ?? {});
  // npm builds a package that has such a file, script or none.
  return scripts.some((name) => /^(pre|post)?install$/.test(name)) || existsSync(join(place, 'binding.gyp'));
}

describe('THIRD-PARTY.md', () => {
  it('is what the lock gives now; else: npm run third-party', () => {
    expect(readFileSync('THIRD-PARTY.md', 'utf8')).toBe(thirdPartyText());
  });

  it('names every package with its version, and libvips with its licence', () => {
    const text = thirdPartyText();
    for (const { name, version } of packages) expect(text).toContain(`- ${name} ${version}`);
    expect(text).toContain('libvips, LGPL-3.0-or-later');
    expect(text).toMatch(/\| @img\/sharp-libvips-linux-x64 \| [\d.]+ \| LGPL-3\.0-or-later \|/);
  });

  it('has the licences that the installed packages say themselves', () => {
    expect(installed.length).toBeGreaterThan(100);
    for (const { name, licence, place } of installed) {
      const own = manifestOf(place).license;
      if (own !== undefined) expect([name, own]).toEqual([name, licence]);
      else
        expect(readFileSync(join(place, 'LICENSE'), 'utf8'), name).toMatch(new RegExp(`^${licence} License`));
    }
  });
});

describe('scripts at installation', () => {
  it('no package that runs has one, by the lock and as it is installed', () => {
    const told = packages.filter(({ isRunTime, hasInstallScript }) => isRunTime && hasInstallScript);
    const there = installed.filter(({ isRunTime, place }) => isRunTime && runsAtInstallation(place));
    expect([...told, ...there].map(({ name }) => name)).toEqual([]);
  });

  it('of packages for developers only those have one that are listed here', () => {
    const told = packages.filter(({ hasInstallScript }) => hasInstallScript);
    const there = installed.filter(({ place }) => runsAtInstallation(place));
    const names = new Set([...told, ...there].map(({ name }) => name));
    expect([...names].sort()).toEqual([...MAY_RUN_SCRIPTS].sort());
  });
});

describe('the component list of a release, against npm’s own', () => {
  const npm = (...words: string[]) =>
    JSON.parse(
      spawnSync('npm', [...words, '--omit=dev', '--package-lock-only'], {
        encoding: 'utf8',
        maxBuffer: 2 ** 26,
      }).stdout,
    ) as { components: readonly Component[]; dependencies: Tree };
  type Tree = Readonly<Record<string, { version?: string; dependencies?: Tree }>>;
  const list = components();
  const byPurl = new Map(list.components.map((one) => [one.purl, one]));

  it('has each component of `npm sbom` under the same package URL, with the same hashes and licences', () => {
    const theirs = npm('sbom', '--sbom-format=cyclonedx').components;
    expect(theirs.length).toBeGreaterThan(100);
    for (const { purl, hashes, licenses } of theirs) {
      const own = byPurl.get(purl);
      expect(own, purl).toBeDefined();
      expect(own?.hashes, purl).toEqual(hashes);
      // Of what the lock has no licence for, npm gives none.
      if (licenses !== undefined) expect(own?.licenses, purl).toEqual(licenses);
    }
  });

  it('has every package of `npm ls`, which names what was installed under another name by that', () => {
    const names = new Set<string>();
    const walk = (tree: Tree = {}): void => {
      for (const [name, { version, dependencies }] of Object.entries(tree)) {
        if (version !== undefined) names.add(`${name}@${version}`);
        walk(dependencies);
      }
    };
    walk(npm('ls', '--all', '--json').dependencies);
    expect(names.size).toBeGreaterThan(100);
    const own = new Set(list.components.map(({ name, version }) => `${name}@${version}`));
    expect([...names].filter((name) => !own.has(name))).toEqual(['gray-matter@1.0.0']);
  });

  it('is of a form and version that is named, says each thing once, and is the same every time', () => {
    expect(list).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.5', version: 1 });
    expect(list['serialNumber']).toMatch(/^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(byPurl.size).toBe(list.components.length);
    expect(components()).toEqual(list);
  });
});

describe('the source of advisories', () => {
  const none = { metadata: { vulnerabilities: { total: 0 } } };
  const some = {
    metadata: { vulnerabilities: { total: 1 } },
    vulnerabilities: { bridge: { name: 'bridge', severity: 'high', range: '<2' } },
  };
  it.each([
    ['knows none', JSON.stringify(none), 0, /^No advisory is known/],
    ['knows one', JSON.stringify(some), 1, /high: bridge <2/],
    [
      'refuses',
      '{"message":"405 - POST https://x.example/y"}',
      75,
      /\(405 - POST the registry\): nothing was checked/,
    ],
    ['is not reached', '', 75, /could not be asked/],
    ['answers something else', '[]', 75, /could not be asked/],
  ])('%s: that is said, and in the exit code', (_, answer, exit, says) => {
    expect(verdictOf(answer)).toEqual({ exit, says: expect.stringMatching(says) });
  });
});
