/** The house has one arrow, left to right. Reads every import in src and fails on any other arrow, or on a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

// A room may import from the rooms named beside it, and from itself. Outputs are siblings: none imports another.
const MAY_IMPORT: Record<string, readonly string[]> = {
  units: [],
  mechanics: ['units'],
  drawing: ['units', 'mechanics'],
  dosing: ['units'],
  scheduling: ['units'],
  content: ['units', 'mechanics', 'dosing', 'scheduling'],
  wording: ['units', 'mechanics', 'content'],
  programme: ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'wording'],
  lint: ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'wording', 'programme'],
  'outputs/html': ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'programme', 'drawing'],
  'outputs/pdf': ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'programme', 'drawing'],
  'outputs/text': ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'programme', 'drawing'],
  client: ['units'],
  shell: [
    'units',
    'mechanics',
    'drawing',
    'dosing',
    'scheduling',
    'content',
    'wording',
    'programme',
    'lint',
    'outputs/html',
    'outputs/pdf',
    'outputs/text',
  ],
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

// The rooms of `outputs` are named by two folders.
const roomOf = (file: string) => {
  const [, room = '', inner = ''] = file.split(/[\\/]/);
  return room === 'outputs' ? `${room}/${inner}` : room;
};

describe('the arrows of the house', () => {
  it.each(files)('%s imports only to its left', (file) => {
    const room = roomOf(file);
    const strangers = (imports.get(file) ?? []).filter((target) => {
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
