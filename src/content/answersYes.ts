/** Whether a file answers yes to a question, however wrong the rest of it is. */
import type { FrontMatter } from './frontMatter.ts';
import { valueAt } from './path.ts';
import { decode, type SourceFile } from './source.ts';

/** By its key; where no key of the file can be read, by the line that holds it. `under`: the key above it. */
export function answersYes(
  file: SourceFile,
  front: FrontMatter | null,
  key: string,
  under: string | null = null,
): boolean {
  if (front?.value === undefined) return lineSaysYes(textOf(file), key, under === null ? '' : '[ \\t]+');
  const value = valueAt(front.value, under === null ? [key] : [under, key]);
  return value === true || value === 'yes';
}

function lineSaysYes(text: string, key: string, indent: string): boolean {
  return new RegExp(`^${indent}${key}:[ \\t]*["']?(?:yes|true)\\b`, 'm').test(text);
}

// A file that is no text may still hold lines of it.
function textOf(file: SourceFile): string {
  return decode(file).source?.text ?? new TextDecoder().decode(file.bytes);
}
