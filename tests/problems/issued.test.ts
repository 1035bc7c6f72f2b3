/** What was given out and is not as it was made: the whole printed text of each Problem. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { checkIssued } from '../../src/shell/commands/checkIssued.ts';
import { hashOf, linesOf, withLine, type Happening } from '../../src/shell/io/issued.ts';
import { problemText } from '../../src/content/problemText.ts';
import { isoDate } from '../../src/units/date.ts';

let out: string;
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), 'loadleaf-issued-'));
});
afterEach(() => rmSync(out, { recursive: true }));

const page = { path: 'leaflet.html', sha256: hashOf('page') };
const issued: Happening = {
  on: isoDate('2026-11-25')!,
  event: 'issued',
  alias: 'otter',
  revision: 1,
  mark: '0a1b2c3d',
  files: [page],
  loadleaf: '0.1.0',
  library: '2b9c4deb6738',
};
const withdrawn: Happening = { ...issued, event: 'withdrawn', because: ['screen-block'] };

function printedFor(files: Readonly<Record<string, string>>): string {
  for (const [path, text] of Object.entries(files)) {
    const place = join(out, 'private', path);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, text);
  }
  return checkIssued(out)
    .map((problem) => problemText(problem, null).replaceAll(out, 'site'))
    .join('\n\n');
}

describe('issued', () => {
  it('is content with what is as it was given out, and with people of whom nothing was', () => {
    const text = withLine('', issued);
    expect(
      printedFor({ 'otter/issued.jsonl': text, 'otter/leaflet.html': 'page', 'heron/own.txt': '' }),
    ).toBe('');
    expect(checkIssued(join(out, 'nowhere'))).toEqual([]);
  });

  it('shows a chain that was changed', () => {
    const text = withLine(withLine('', issued), withdrawn).replace('"revision":1', '"revision":2');
    expect(printedFor({ 'otter/issued.jsonl': text })).toMatchInlineSnapshot(`
      "site/private/otter/issued.jsonl:1:1: error issued found a line that was changed, or one before it taken out; must be as it was written.
      Fix: put the file back from a copy, and find out who changed it."
    `);
  });

  it('shows a leaflet without its list', () => {
    expect(printedFor({ 'otter/leaflet.html': 'page' })).toMatchInlineSnapshot(`
      "site/private/otter/issued.jsonl:1:1: error issued found no list of what was given out; must be there.
      Fix: put the list back from a copy; the next build begins a new one. Where there is no copy, take the alias out of private/issued.json and build again: the list then counts as it stands."
    `);
  });

  const three = withLine(withLine(withLine('', issued), withdrawn), { ...issued, event: 'returned' });
  const lines = three.trimEnd().split('\n');
  const last = linesOf(three)[2]!;
  const ends = JSON.stringify({ otter: { lines: 3, hash: last.hash } });

  it('shows a list whose last lines are gone', () => {
    const text = `${lines[0]}\n`;
    expect(printedFor({ 'issued.json': ends, 'otter/issued.jsonl': text, 'otter/leaflet.html': 'page' }))
      .toMatchInlineSnapshot(`
      "site/private/otter/issued.jsonl:2:1: error issued found 1 line of what was given out; must be a list that has line 3 as it was written.
      Fix: put the list back from a copy, and find out who changed it. Where there is no copy, take the alias out of private/issued.json and build again: the list then counts as it stands."
    `);
  });

  const other = withLine(withLine(withLine('', issued), issued), issued);
  it.each<[string, string | null, RegExp | null]>([
    ['as it was', three, null],
    ['that went on', withLine(three, { ...issued, revision: 2 }), null],
    ['without its last line', lines.slice(0, 2).join('\n'), /:3:1: error issued found 2 lines/],
    ['emptied', '', /:1:1: error issued found 0 lines/],
    ['written anew to the same length', other, /:4:1: error issued found 3 lines/],
    ['without a line in the middle', [lines[0], lines[2]].join('\n'), /:2:1: error issued found a line/],
    ['in another order', [lines[1], lines[0], lines[2]].join('\n'), /:1:1: error issued found a line/],
    ['with a line that was changed', three.replace('screen-block', 'x'), /:2:1: error issued found a line/],
    ['that is not there', null, /:1:1: error issued found no list/],
  ])('with what is known of its end, of a list %s', (_, text, said) => {
    const list: Record<string, string> = text === null ? {} : { 'otter/issued.jsonl': text };
    const printed = printedFor({ 'issued.json': ends, 'otter/leaflet.html': 'page', ...list });
    const own = printed.split('\n\n').filter((one) => one.includes('issued.jsonl:'));
    expect(own).toHaveLength(said === null ? 0 : 1);
    if (said !== null) expect(own[0]).toMatch(said);
  });

  it.each(['', 'null', '[]', '{"otter":null}', '{"otter":{"lines":"3"}}', '{'])(
    'is content where what is known of the ends is %j',
    (text) => {
      expect(
        printedFor({ 'issued.json': text, 'otter/issued.jsonl': three, 'otter/leaflet.html': 'page' }),
      ).toBe('');
    },
  );

  it('shows a leaflet that is in force though it was withdrawn', () => {
    const text = withLine(withLine('', issued), withdrawn);
    expect(printedFor({ 'otter/issued.jsonl': text, 'otter/leaflet.html': 'page' })).toMatchInlineSnapshot(`
      "site/private/otter/leaflet.html:1:1: error issued found a leaflet that was withdrawn; must be set aside until its consult was mended.
      Fix: take it away, then build again."
    `);
  });

  it('shows a file that is another one, and one that is gone', () => {
    const text = withLine('', { ...issued, files: [page, { path: 'note.txt', sha256: hashOf('note') }] });
    expect(printedFor({ 'otter/issued.jsonl': text, 'otter/leaflet.html': 'other' })).toMatchInlineSnapshot(`
      "site/private/otter/leaflet.html:1:1: error issued found other than it was given out; must be as it was given out for revision 1, mark 0a1b2c3d, 2026-11-25.
      Fix: put it back from a copy; of the present revision build again.

      site/private/otter/note.txt:1:1: error issued found not there; must be as it was given out for revision 1, mark 0a1b2c3d, 2026-11-25.
      Fix: put it back from a copy; of the present revision build again."
    `);
  });

  it('shows an earlier revision that was changed', () => {
    const text = withLine(withLine('', issued), { ...issued, revision: 2, mark: '4e5f6a7b', files: [] });
    expect(printedFor({ 'otter/issued.jsonl': text, 'otter/r1/leaflet.html': 'other' }))
      .toMatchInlineSnapshot(`
      "site/private/otter/r1/leaflet.html:1:1: error issued found other than it was given out; must be as it was given out for revision 1, mark 0a1b2c3d, 2026-11-25.
      Fix: put it back from a copy; of the present revision build again."
    `);
  });

  it('shows a swap that was stopped', () => {
    expect(printedFor({ '.otter.loadleaf-old/leaflet.html': 'page' })).toMatchInlineSnapshot(`
      "site/private/otter:1:1: error issued found the files of a build that was stopped, under another name; must be in its place.
      Fix: build again; that puts them back."
    `);
  });
});
