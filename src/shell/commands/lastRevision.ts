/** The consults of one person that are there already, by the keys in the files. */
import { FOLDERS } from '../../content/kind.ts';
import { isDraft } from '../../content/draft.ts';
import { readFile } from '../../content/readFile.ts';
import type { SourceFile } from '../../content/source.ts';
import { isFolder } from '../io/disk.ts';
import { EXIT } from '../exit.ts';
import { readFolder } from '../io/folder.ts';
import type { LastRevision } from '../../drafting/nextRevision.ts';
import { Stop } from '../io/stop.ts';

/** Null where there is none. `besideDraft`: a draft does not matter. Stops with 73 where a draft is there already, with 65 where the newest file has a Problem. */
export function lastRevisionOf(
  alias: string,
  consultsFolder: string,
  besideDraft = false,
): LastRevision | null {
  const files = isFolder(consultsFolder) ? readFolder(consultsFolder, (file) => file.endsWith('.md')) : [];
  const all = files.map(sheetOf).filter((sheet) => sheet.alias === alias);
  const own = besideDraft ? all.filter((sheet) => !sheet.draft) : all;
  const draft = own.find((sheet) => sheet.draft);
  if (draft !== undefined)
    throw new Stop(EXIT.cannotCreate, `${draft.file} is a draft of ${alias} already; finish that one first`);
  const last = own.toSorted((a, b) => b.revision - a.revision)[0];
  if (last === undefined) return null;
  if (last.reading.value === null)
    throw new Stop(
      EXIT.content,
      `${last.file} has a Problem, so nothing can be taken over from it: loadleaf check`,
    );
  return {
    written: last.reading.front?.value as LastRevision['written'],
    consult: last.reading.value,
  };
}

function sheetOf(file: SourceFile) {
  const reading = readFile({ ...file, file: `${FOLDERS.consult}/${file.file}` }, 'consult');
  const keys = reading.front?.value as { readonly alias?: unknown; readonly revision?: unknown } | undefined;
  const [, name, number] = /([^/\\]+)-r(\d+)\.md$/.exec(file.file) ?? [];
  return {
    file: file.file,
    reading,
    draft: isDraft(file, reading.front),
    alias: typeof keys?.alias === 'string' ? keys.alias : name,
    revision: typeof keys?.revision === 'number' ? keys.revision : Number(number ?? Infinity),
  };
}
