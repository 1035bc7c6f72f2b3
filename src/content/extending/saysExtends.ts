/** Which protocol a file says it extends. */
import type { SourceFile } from '../source.ts';

// By its line alone, so that a slip elsewhere in the file does not make it a protocol of which all keys are missing.
const SAYS = /^(["']?)extends\1[ \t]*:[ \t]*(["']?)([^\s"'#]*)\2/m;

/** The id as written, empty where nothing stands there; null where the file extends none. */
export function saysExtends({ bytes }: SourceFile): string | null {
  const text = new TextDecoder().decode(bytes).replaceAll('\r\n', '\n');
  const end = text.indexOf('\n---', 3);
  return SAYS.exec(end < 0 ? text : text.slice(0, end))?.[3] ?? null;
}
