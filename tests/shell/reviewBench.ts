/** The compiled program on the demo's consults, copied to a folder of their own. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Bench {
  readonly folder: string;
  consult(name: string): string;
  run(...words: string[]): { readonly code: number | null; readonly json: Record<string, unknown> };
}

export function alone(): Bench {
  const folder = mkdtempSync(join(tmpdir(), 'loadleaf-review-'));
  cpSync('content/consults', join(folder, 'consults'), { recursive: true });
  return {
    folder,
    consult: (name) => join(folder, 'consults', name),
    run: (...words) => {
      const places = ['--consults', join(folder, 'consults'), '--out', join(folder, 'out')];
      const { status, stdout } = spawnSync('node', ['dist/shell/main.js', ...words, ...places], {
        encoding: 'utf8',
      });
      return { code: status, json: (stdout === '' ? {} : JSON.parse(stdout)) as Record<string, unknown> };
    },
  };
}
