/** Watching a folder: what goes is no fault, what cannot be watched is. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, watch } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { watchTree } from '../../src/shell/server/watch.ts';

let top: string;
beforeAll(() => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'loadleaf-watch-')));
});
afterAll(() => rmSync(top, { recursive: true }));

/** What was warned of when the watching of `below` fails, in the way that `spoil` makes it. */
function warned(below: string, spoil: (folder: string) => void): readonly string[] {
  mkdirSync(join(top, below), { recursive: true });
  const said: string[] = [];
  const watching = watchTree(
    top,
    () => undefined,
    ({ message }) => said.push(message),
    (folder, changed) => {
      if (folder === join(top, below)) spoil(folder);
      return watch(folder, changed);
    },
  );
  watching.close();
  return said;
}

it('does not warn of a folder that went between the look and the watching', () => {
  expect(warned('going', (folder) => rmSync(folder, { recursive: true }))).toEqual([]);
});

it('warns of one that stays and cannot be watched', () => {
  const spoil = () => {
    throw new Error('ENOSPC: no more watchers');
  };
  expect(warned('staying', spoil)).toEqual(['ENOSPC: no more watchers']);
});
