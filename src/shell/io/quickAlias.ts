/** Whose a consult file is, without reading its keys where name and head say it in so many words. */
import { aliasOf } from '../../content/readConsults.ts';
import { ID_PATTERN } from '../../content/schema/words.ts';
import type { SourceFile } from '../../content/source.ts';

/** As `aliasOf`. */
export function quickAlias(file: SourceFile): string {
  const [, name = ''] = /([^/]+)-r\d+\.md$/.exec(file.file) ?? [];
  const text = new TextDecoder().decode(file.bytes);
  const head = text.slice(0, text.indexOf('\n---', 3));
  const said = [...head.matchAll(/^["']?alias\b.*$/gm)].map(([line]) => line.trimEnd());
  return name !== '' && said.length === 1 && said[0] === `alias: ${name}` && ID_PATTERN.test(name)
    ? name
    : aliasOf(file);
}
