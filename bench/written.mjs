// Pages written to a folder that is taken away again: through Eleventy, and by a plain writer of the same bytes.
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { median, processorMs } from './clock.mjs';
import { program } from './command.mjs';

const ROUNDS = 3;

/**
 * For a part that is started with `plain` or `eleventy`: renders and writes that way, and prints as JSON the
 * milliseconds it took, how many pages there were and the hash of them all.
 */
export async function writeOut(render) {
  const out = mkdtempSync(join(tmpdir(), 'bench-pages-'));
  let pages = [];
  const ms = await processorMs(async () => {
    pages = await render();
    for (const { path, content } of pages) {
      mkdirSync(dirname(join(out, path)), { recursive: true });
      writeFileSync(join(out, path), content);
    }
  });
  rmSync(out, { recursive: true });
  process.stdout.write(JSON.stringify({ ms, pages: pages.length, hash: hashOf(pages) }));
}

/** Medians of the two ways, each round in processes of its own, in turn; that both wrote the same is made sure of. */
export function bothWays(part) {
  const file = fileURLToPath(part);
  const rounds = Array.from({ length: ROUNDS }, () => {
    const [plain, eleventy] = ['plain', 'eleventy'].map((way) => JSON.parse(program(file, [way])));
    if (plain.hash !== eleventy.hash) throw new Error('Eleventy and the plain writer differ');
    return { plain, eleventy };
  });
  return {
    pages: rounds[0].plain.pages,
    plainMs: median(rounds.map(({ plain }) => plain.ms)),
    eleventyMs: median(rounds.map(({ eleventy }) => eleventy.ms)),
  };
}

function hashOf(pages) {
  const hash = createHash('sha256');
  for (const { path, content } of pages.toSorted((a, b) => (a.path < b.path ? -1 : 1)))
    hash.update(`${path}\0`).update(content);
  return hash.digest('hex');
}
