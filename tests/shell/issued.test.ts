/** The list of what was given out: lines are only added, and every change of one shows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenAt, hashOf, linesOf, withLine, type Happening } from '../../src/shell/io/issued.ts';
import { isoDate } from '../../src/units/date.ts';

const happening = (revision: number, event: Happening['event'] = 'issued'): Happening => ({
  on: isoDate('2026-11-25')!,
  event,
  alias: 'otter',
  revision,
  mark: '0a1b2c3d',
  files: [{ path: 'leaflet.html', sha256: hashOf(`leaflet ${revision}`) }],
  loadleaf: '0.1.0',
  library: '2b9c4deb6738',
});
const chain = withLine(withLine(withLine('', happening(1)), happening(1, 'withdrawn')), happening(2));

describe('the chain', () => {
  it('keeps every line that was there, byte for byte', () => {
    expect(withLine(chain, happening(3)).startsWith(chain)).toBe(true);
    expect(linesOf(chain).map(({ number, event, revision }) => [number, event, revision])).toEqual([
      [1, 'issued', 1],
      [2, 'withdrawn', 1],
      [3, 'issued', 2],
    ]);
  });

  it('binds each line to the one before', () => {
    const [first, second, third] = linesOf(chain);
    expect([first?.before, second?.before, third?.before]).toEqual([null, first?.hash, second?.hash]);
    expect(brokenAt(chain)).toBe(null);
    expect(brokenAt('')).toBe(null);
  });

  const lines = chain.trimEnd().split('\n');
  it.each([
    ['a date that was moved', chain.replace('2026-11-25', '2026-11-20'), 1],
    ['a line that was taken out', [lines[0], lines[2]].join('\n'), 2],
    ['the first line taken out', lines.slice(1).join('\n'), 1],
    ['two lines in the other order', [lines[0], lines[2], lines[1]].join('\n'), 2],
    ['a line put in twice', [lines[0], lines[0], ...lines.slice(1)].join('\n'), 2],
    ['a line that was cut off', chain.slice(0, -20), 3],
    ['a line that is no JSON', `${chain}not a line\n`, 4],
    ['a blank within a line', chain.replace('"alias":', '"alias": '), 1],
  ])('shows %s, at its line', (_, text, line) => {
    expect(brokenAt(text)).toBe(line);
  });

  it('shows any one character that was changed', () => {
    fc.assert(
      fc.property(fc.nat(chain.length - 2), fc.constantFrom('0', '9', 'x', '"', ' '), (at, letter) => {
        fc.pre(chain[at] !== letter && chain[at] !== '\n');
        expect(brokenAt(chain.slice(0, at) + letter + chain.slice(at + 1))).not.toBe(null);
      }),
    );
  });
});
