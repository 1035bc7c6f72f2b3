/** What was left out of the desk's scripts to keep them small. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { builtDeskScript, bundledDeskScript, OTHERS_WORDS } from '../../scripts/bundle.mjs';

const sourcesOf = async (name: 'worker' | 'later') =>
  (await builtDeskScript(name)).sources.filter((file) => file.startsWith('src/'));

/** Functions and tables that a file of sentences gives away. */
function given(file: string): string[] {
  return [...readFileSync(file, 'utf8').matchAll(/^export (?:function|const) (\w+)/gm)].map(
    ([, name = '']) => name,
  );
}

it('nothing in the worker asks for the sentences that were left out of it', async () => {
  const files = (await Promise.all([sourcesOf('worker'), sourcesOf('later')])).flat();
  const sentences = readdirSync('src/messages/en', { recursive: true, encoding: 'utf8' });
  const others = new Set(
    sentences
      .map((file) => `src/messages/en/${file}`)
      .filter((file) => OTHERS_WORDS.test(file))
      .flatMap(given),
  );
  expect(others.size).toBeGreaterThan(50);
  const asked = files
    .filter((file) => !OTHERS_WORDS.test(file))
    .flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/\bsay\.(\w+)/g)].map(([, name = '']) => name),
    );
  expect(asked.length).toBeGreaterThan(100);
  expect(asked.filter((name) => others.has(name))).toEqual([]);
});

it.each(['desk', 'worker'] as const)('the script %s leaves YAML to the one they share', async (name) => {
  const text = await bundledDeskScript(name);
  expect(text).toContain('loadleafYaml');
  expect(text).not.toContain('Nested mappings are not allowed');
});

it('the worker leaves to its second part what no leaflet beside the form needs', async () => {
  const [worker, later] = await Promise.all([sourcesOf('worker'), sourcesOf('later')]);
  for (const file of ['src/review/review.ts', 'src/outputs/html/record.ts', 'src/drafting/nextDraft.ts']) {
    expect(worker).not.toContain(file);
    expect(later).toContain(file);
  }
});
