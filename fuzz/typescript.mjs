// Lets node take the TypeScript of this checkout as it stands: types are taken out while a file is loaded.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from 'esbuild';

export async function load(url, context, next) {
  if (!url.startsWith('file:') || !url.endsWith('.ts')) return next(url, context);
  const file = fileURLToPath(url);
  const options = { loader: 'ts', format: 'esm', target: 'es2023', sourcefile: file, sourcemap: 'inline' };
  const { code } = await transform(await readFile(file, 'utf8'), options);
  return { format: 'module', source: code, shortCircuit: true };
}
