/** Files that the system lets nobody read: each is handed on with the reason, and the others are read. */
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readFolder } from '../../src/shell/io/folder.ts';

const ROOT = 0;
const NOBODY = 65534;

let top: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'loadleaf-folder-'));
  chmodSync(top, 0o755);
  writeFileSync(join(top, 'finch-r1.md'), 'of finch');
  writeFileSync(join(top, 'wren-r1.md'), 'of wren');
  chmodSync(join(top, 'finch-r1.md'), 0o000);
});
afterEach(() => rmSync(top, { recursive: true }));

/** Root may read anything, so the work is done as somebody else. */
function asNobody<T>(work: () => T): T {
  if (process.geteuid?.() !== ROOT) return work();
  process.seteuid?.(NOBODY);
  try {
    return work();
  } finally {
    process.seteuid?.(ROOT);
  }
}

describe('a file that is closed', () => {
  it('is handed on with the reason', () => {
    expect(asNobody(() => readFolder(top, () => true))).toEqual([
      { file: 'finch-r1.md', bytes: new Uint8Array(), link: 'no', closed: 'closed to the reader (EACCES)' },
      { file: 'wren-r1.md', bytes: Buffer.from('of wren'), link: 'no' },
    ]);
  });

  it('is not one where a folder is: that stops, for nobody can tell what lies in it', () => {
    mkdirSync(join(top, 'closed'));
    chmodSync(join(top, 'closed'), 0o000);
    expect(() => asNobody(() => readFolder(top, () => true))).toThrow(/cannot read .*closed/);
  });
});
