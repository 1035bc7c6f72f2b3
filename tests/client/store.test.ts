/** Two tabs that write one entry within the same moment, each without having seen the other. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

// By its address: what a browser gives is unknown to the types of these tests.
const { logStore } = (await import(new URL('../../src/client/inUse/store.ts', import.meta.url).href)) as {
  readonly logStore: (
    alias: string,
    mark: string,
  ) => { write(key: object, field: string, value: string | number | null): void };
};

const PLACE = 'loadleaf:log:otter:mark';
const KEY = { date: '2026-11-25', occasion: 1, kind: 'session', card: 'hip-hinge', side: 'both' } as const;

let kept: Map<string, string>;
let hear: (event: { key: string | null; newValue: string | null }) => void;

beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    get length() {
      return kept.size;
    },
    key: (at: number) => [...kept.keys()][at] ?? null,
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => void kept.set(name, text),
    removeItem: (name: string) => void kept.delete(name),
  });
  vi.stubGlobal('location', { protocol: 'https:' });
  vi.stubGlobal('navigator', {});
  vi.stubGlobal('addEventListener', (_: string, listener: typeof hear) => (hear = listener));
});
afterEach(() => void vi.unstubAllGlobals());

const rowsKept = () => (JSON.parse(kept.get(PLACE) ?? '{"rows":[]}') as { rows: { edit: number }[] }).rows;

/** What another tab wrote in the same moment comes in the place of what this one did. */
function writtenOver(from: string | undefined, change: object): void {
  const { rows } = JSON.parse(from ?? '{"format":1,"rows":[]}') as { rows: object[] };
  const text = JSON.stringify({ format: 1, rows: rows.map((row) => ({ ...row, ...change })) });
  kept.set(PLACE, text);
  hear({ key: PLACE, newValue: text });
}

describe('two tabs', () => {
  it('another field of the same entry: both stand', async () => {
    const store = logStore('otter', 'mark');
    store.write(KEY, 'done', 'yes');
    const before = kept.get(PLACE);
    store.write(KEY, 'painDuring', 4);
    await Promise.resolve();
    writtenOver(before, { sets: 3, edit: 1 });
    expect(rowsKept()).toMatchObject([{ done: 'yes', painDuring: 4, sets: 3, edit: 2 }]);
  });

  it('the same field: the later one stands', async () => {
    const store = logStore('otter', 'mark');
    store.write(KEY, 'done', 'yes');
    const before = kept.get(PLACE);
    store.write(KEY, 'painDuring', 4);
    await Promise.resolve();
    writtenOver(before, { painDuring: 2, edit: 1 });
    expect(rowsKept()).toMatchObject([{ painDuring: 2, edit: 1 }]);
  });

  it('one that corrects a later edit stands, though it goes back to what stood before', async () => {
    const store = logStore('otter', 'mark');
    store.write(KEY, 'done', 'yes');
    store.write(KEY, 'painDuring', 4);
    await Promise.resolve();
    writtenOver(kept.get(PLACE), { painDuring: null, edit: 2 });
    expect(rowsKept()).toMatchObject([{ painDuring: null, edit: 2 }]);
  });

  it('another entry: both stand', async () => {
    const store = logStore('otter', 'mark');
    store.write(KEY, 'done', 'yes');
    const before = kept.get(PLACE);
    store.write({ ...KEY, card: 'calf-raise' }, 'done', 'part');
    await Promise.resolve();
    writtenOver(before, {});
    expect(rowsKept()).toHaveLength(2);
  });
});
