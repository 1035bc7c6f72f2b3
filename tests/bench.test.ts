/** What the bench and the searches outside `npm test` take from the program is there: they are run too seldom to tell. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const FILES = ['bench', 'scripts', 'fuzz'].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.mjs'))
    .map((name) => `${folder}/${name}`),
);
const IMPORT = /import \{([^}]+)\} from '#dist\/([^']+)\.js'/g;

const taken = FILES.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].flatMap(([, names = '', room = '']) =>
    names
      .split(',')
      .map((name) => name.trim().replace(/ as .*/, ''))
      .filter((name) => name !== '')
      .map((name): [file: string, room: string, name: string] => [file, room, name]),
  ),
);

it('finds what is taken', () => {
  expect(taken.length).toBeGreaterThan(30);
});

describe.each(taken)('%s takes from %s', (_, room, name) => {
  it(name, () => {
    expect(exportsOf(`src/${room}.ts`)).toMatch(
      new RegExp(`export [^;{]*\\b${name}\\b|export \\{[^}]*\\b${name}\\b`),
    );
  });
});

function exportsOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
