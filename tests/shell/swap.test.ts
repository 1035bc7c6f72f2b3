/** What the next command makes of a swap that was stopped. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { putBack } from '../../src/shell/io/swap.ts';

let out: string;
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), 'loadleaf-swap-'));
});
afterEach(() => rmSync(out, { recursive: true }));

const put = (path: string, text: string) => {
  mkdirSync(dirname(join(out, 'private', path)), { recursive: true });
  writeFileSync(join(out, 'private', path), text);
};
const text = (path: string) => {
  const place = join(out, 'private', path);
  return existsSync(place) ? readFileSync(place, 'utf8') : null;
};

describe('the next command', () => {
  it('puts the old folder back where none is, and throws a new one away that was not switched in', () => {
    put('.finch.loadleaf-old/issued.jsonl', 'one\n');
    put('.finch.loadleaf-new/issued.jsonl', 'one\ntwo\n');
    putBack(out);
    expect([text('finch/issued.jsonl'), text('.finch.loadleaf-new/issued.jsonl')]).toEqual(['one\n', null]);
  });

  it.each([
    ['one\n', 'one\ntwo\n'],
    ['one\n', 'one\n'],
    [null, 'one\n'],
  ])('throws the old folder away where the new one goes on from its list (%j, %j)', (old, fresh) => {
    put('.finch.loadleaf-old/leaflet.html', 'old');
    if (old !== null) put('.finch.loadleaf-old/issued.jsonl', old);
    put('finch/issued.jsonl', fresh);
    putBack(out);
    expect([text('finch/issued.jsonl'), text('.finch.loadleaf-old/leaflet.html')]).toEqual([fresh, null]);
  });

  it.each([
    ['without a list', null],
    ['with another list', 'other\n'],
  ])('stops before a folder %s, which was made by hand, and touches neither', (_, list) => {
    put('.finch.loadleaf-old/issued.jsonl', 'one\n');
    put('finch/own.txt', 'own');
    if (list !== null) put('finch/issued.jsonl', list);
    expect(() => putBack(out)).toThrow(/made by hand/);
    expect([text('finch/own.txt'), text('.finch.loadleaf-old/issued.jsonl')]).toEqual(['own', 'one\n']);
  });

  it('follows no link', () => {
    put('elsewhere/leaflet.html', 'theirs');
    symlinkSync(join(out, 'private/elsewhere'), join(out, 'private/.finch.loadleaf-old'));
    expect(() => putBack(out)).toThrow(/it is a link/);
    expect(text('elsewhere/leaflet.html')).toBe('theirs');
  });
});
