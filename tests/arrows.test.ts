/** The house has one arrow, left to right. Reads every import in src and fails on any other arrow, or on a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

// A room may import from the rooms named beside it, and from itself.
const MAY_IMPORT: Record<string, readonly string[]> = {
  units: [],
  mechanics: ['units'],
  figure: ['units', 'mechanics'],
  dose: ['units'],
  week: ['units'],
  content: ['units', 'mechanics', 'dose', 'week'],
  programme: ['units', 'mechanics', 'dose', 'week', 'content'],
  page: ['units', 'mechanics', 'dose', 'week', 'content', 'programme', 'figure'],
  paper: ['units', 'mechanics', 'dose', 'week', 'content', 'programme', 'figure'],
  record: ['units', 'mechanics', 'dose', 'week', 'content', 'programme', 'figure'],
  build: ['units', 'mechanics', 'figure', 'dose', 'week', 'content', 'programme', 'page', 'paper', 'record'],
};

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join('src', file));

const imports = new Map(files.map((file) => [file, localImports(file)]));

function localImports(file: string): string[] {
  const source = readFileSync(file, 'utf8');
  const found = source.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'/g);
  return [...found].map(([, target]) => normalize(join(dirname(file), target ?? '')));
}

const roomOf = (file: string) => file.split(/[\\/]/)[1] ?? '';

describe('the arrows of the house', () => {
  it.each(files)('%s imports only to its left', (file) => {
    const room = roomOf(file);
    const strangers = (imports.get(file) ?? []).filter((target) => {
      if (file.includes('page/client/'))
        return !target.includes('page/client/') && roomOf(target) !== 'units';
      return roomOf(target) !== room && !(MAY_IMPORT[room] ?? []).includes(roomOf(target));
    });
    expect(strangers).toEqual([]);
  });

  it('every import names a file that is there', () => {
    const missing = [...imports].flatMap(([file, targets]) =>
      targets
        .filter((target) => !imports.has(target) && !target.endsWith('.json'))
        .map((target) => `${file} -> ${target}`),
    );
    expect(missing).toEqual([]);
  });

  it('has no circle', () => {
    const done = new Set<string>();
    const circles: string[] = [];
    const walk = (file: string, trail: readonly string[]): void => {
      if (trail.includes(file)) {
        circles.push([...trail.slice(trail.indexOf(file)), file].join(' -> '));
        return;
      }
      if (done.has(file)) return;
      for (const target of imports.get(file) ?? []) walk(target, [...trail, file]);
      done.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });
});
