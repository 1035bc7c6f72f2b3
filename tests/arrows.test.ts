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
  ...allLeftOf(['decisions', 'review', 'messages', 'programme', 'catalogue', 'lint']),
  ...outputs('html', 'pdf', 'text', 'calendar', 'mail', 'sealed'),
  // Words, rules and shapes that page and shell share; a script's bundle holds what it calls alone.
  client: ['units', 'content/log', 'scheduling', 'dosing', 'drawing', 'messages', 'programme'],
  'content/log': [],
};
// A file to be filled in: a starter, or the next revision of a consult after its review.
MAY_IMPORT['drafting'] = [
  ...new Set(Object.values(allLeftOf(['decisions', 'review', 'messages', 'programme', 'drafting'])).flat()),
];
// Of several outputs, for the shell and for the desk: the set of one person, and what is sealed for sending.
MAY_IMPORT['post'] = Object.keys(MAY_IMPORT).filter((room) => room !== 'client');
MAY_IMPORT['set'] = MAY_IMPORT['post'];
// The desk runs the house in a browser: all rooms but the shell, and what the shell lays out for it.
MAY_IMPORT['desk'] = Object.keys(MAY_IMPORT).filter((room) => room !== 'client');
MAY_IMPORT['shell'] = Object.keys(MAY_IMPORT).filter((room) => room !== 'client');

/** Each may import from everything that decides less than it, and from those before it. */
function allLeftOf(rooms: readonly string[]): Record<string, readonly string[]> {
  const left = ['units', 'mechanics', 'dosing', 'scheduling', 'content', 'wording'];
  return Object.fromEntries(rooms.map((room, index) => [room, [...left, ...rooms.slice(0, index)]]));
}

/** Siblings: none imports another. */
function outputs(...names: readonly string[]): Record<string, readonly string[]> {
  const { catalogue = [] } = allLeftOf(['decisions', 'review', 'messages', 'programme', 'catalogue']);
  return Object.fromEntries(names.map((name) => [`outputs/${name}`, [...catalogue, 'catalogue', 'drawing']]));
}

/** Inside `decisions` the folders stand in the order in which a consult is walked through them. */
const DECISIONS = ['terms', 'screen', 'stage', 'person', 'candidates', 'session', 'days'];

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
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
  // What a log is made of stands inside `content` and imports nothing of it.
  if (/^src[\\/]content[\\/]log[\\/](columns|format)\.ts$/.test(file)) return 'content/log';
  return room === 'outputs' ? `${room}/${inner}` : room;
};

const mayImport = (room: string) => {
  const rooms = MAY_IMPORT[room] ?? [];
  return room === 'content' || rooms.includes('content') ? [...rooms, 'content/log'] : rooms;
};

describe('the arrows of the house', () => {
  it.each(files)('%s imports only to its left', (file) => {
    const room = roomOf(file);
    const strangers = (imports.get(file) ?? []).filter((target) => {
      return roomOf(target) !== room && !mayImport(room).includes(roomOf(target));
    });
    expect(strangers).toEqual([]);
  });

  it.each(files.filter((file) => roomOf(file) === 'decisions'))(
    '%s decides after what it imports',
    (file) => {
      const place = (one: string) => {
        const [, , folder = '', rest] = one.split(/[\\/]/);
        return rest === undefined ? DECISIONS.length : DECISIONS.indexOf(folder);
      };
      const later = (imports.get(file) ?? []).filter(
        (target) => roomOf(target) === 'decisions' && place(target) > place(file),
      );
      expect(later).toEqual([]);
      expect(place(file)).toBeGreaterThanOrEqual(0);
    },
  );

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
