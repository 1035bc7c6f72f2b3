/** The command that writes a starter file, and beside it the schema by which an editor explains the keys. */
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { FOLDERS, SCHEMAS, type Kind } from '../content/kind.ts';
import { keyOf } from '../content/layers.ts';
import { jsonSchemaOf } from '../content/schema/jsonSchema.ts';
import { ID_PATTERN } from '../content/schema/words.ts';
import {
  contains,
  isFolder,
  keepsMode,
  makeFolder,
  onDisk,
  PRIVATE_FILE_MODE,
  PRIVATE_FOLDER_MODE,
  putFile,
} from './disk.ts';
import { EXIT } from './exit.ts';
import { CONTENT, type Flags } from './flags.ts';
import { contentFolder, sourceFolders, type Folders } from './folders.ts';
import { readLayers, upperFiles, type Layers } from './layers.ts';
import { nearestOf } from './nearest.ts';
import type { Report } from './report.ts';
import { starterText } from './shelf.ts';
import { shownPath } from './shownPath.ts';
import { starterOf, type StarterKind, type StarterName } from './starter.ts';
import { fillingFor } from './starterFilling.ts';
import { Stop } from './stop.ts';
import { onDay } from './today.ts';

/** Exit 64 for a kind or id that cannot be, 66 when the library lacks what the starter names, 73 when the file is there. */
export async function writeNew(flags: Flags, kind: string, id: string, report: Report): Promise<number> {
  if (!isKind(kind)) throw unknownKind(kind);
  const name = nameOf(kind, id);
  const folders = kind === 'consult' ? sourceFolders(flags) : { content: contentFolder(flags.content) };
  const folder = folderOf(kind, folders);
  const twin = twinOf(folder, name.file);
  if (twin !== null)
    throw new Stop(EXIT.cannotCreate, `${shownPath(twin)} is there already; nothing was written`);
  const layers = readLayers(folders.content);
  const shipped = shippedTwin(kind, name, layers);
  const schema = join(schemaFolder(kind, folders, folder), `${kind}.json`);
  const place = join(folder, name.file);
  const text = starterOf(kind, shipped ?? starterText(kind), {
    schema: relative(folder, schema).replaceAll(sep, '/'),
    values: shipped === null ? fillingFor(kind, upperFiles(layers), name, onDay(flags)) : [],
  });
  onDisk(place, () => {
    // A consult is a person's; a card is everybody's.
    const isPrivate = kind === 'consult';
    makeFolder(dirname(place), isPrivate ? PRIVATE_FOLDER_MODE : undefined);
    writeFileSync(place, text, { flag: 'wx', mode: isPrivate ? PRIVATE_FILE_MODE : 0o666 });
    if (isPrivate) keepsMode(place, PRIVATE_FILE_MODE);
  });
  writeSchemas(dirname(schema), kind);
  const what =
    shipped === null
      ? 'a starter to be changed line by line'
      : 'the shipped file, to be changed: it takes the place of that one';
  const where = flags.content === CONTENT ? '' : ` --content ${flags.content}`;
  report.say(`${shownPath(place)} is written, ${what}. Then: loadleaf check${where}`);
  if (kind === 'consult')
    report.warn('Its screen was asked of nobody: ask every item, and write what was said.');
  report.answer({ ok: true, files: [place, schema] });
  return EXIT.good;
}

/** The text of the shipped file of that id, where the folder lies over the shipped library; else null. */
function shippedTwin(kind: StarterKind, { file }: StarterName, { shipped }: Layers): string | null {
  const twin = shipped.find((one) => keyOf(one.file) === keyOf(`${FOLDERS[kind]}/${file}`));
  return twin === undefined ? null : new TextDecoder().decode(twin.bytes);
}

// Those that are there already are of the program that wrote them; a newer one knows other keys.
function writeSchemas(folder: string, kind: StarterKind): void {
  for (const one of Object.keys(SCHEMAS) as Kind[]) {
    const place = join(folder, `${one}.json`);
    if (one === kind || existsSync(place)) putFile(place, `${JSON.stringify(jsonSchemaOf(one), null, 2)}\n`);
  }
}

const REVISION = /^(.+)-r([1-9]\d{0,2})$/;

// A consult goes by its alias, or by alias and revision from the second on.
function nameOf(kind: StarterKind, id: string): StarterName {
  const [, alias = id, revision = '1'] = (kind === 'consult' ? REVISION.exec(id) : null) ?? [];
  if (!ID_PATTERN.test(alias))
    throw new Stop(
      EXIT.usage,
      `${id} is no id: small letters, digits and hyphens, 1 to 64 of them, beginning with a letter or digit`,
    );
  return {
    file: kind === 'consult' ? `${alias}-r${revision}.md` : `${alias}.md`,
    alias,
    revision: Number(revision),
  };
}

function isKind(kind: string): kind is StarterKind {
  return Object.hasOwn(FOLDERS, kind);
}

function unknownKind(kind: string): Stop {
  const kinds = Object.keys(FOLDERS);
  return new Stop(
    EXIT.usage,
    `there is no kind ${kind}; write one of ${kinds.join(', ')}`,
    nearestOf(kind, kinds),
  );
}

type Places = Pick<Folders, 'content'> & Partial<Pick<Folders, 'consults'>>;

function folderOf(kind: StarterKind, { content, consults }: Places): string {
  return kind === 'consult' && consults !== undefined ? consults : join(content, FOLDERS[kind]);
}

// Consults outside the library have their schema with them: the library may not be there when they are opened.
function schemaFolder(kind: StarterKind, { content }: Places, folder: string): string {
  return join(kind === 'consult' && !contains(content, folder) ? folder : content, '.schema');
}

/** A file of that name anywhere below the folder, in whatever case: two of one id would be a Problem. */
function twinOf(folder: string, file: string): string | null {
  if (!isFolder(folder)) return null;
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const twin = names.find((name) => (name.split(/[/\\]/).at(-1) ?? '').toLowerCase() === file);
  return twin === undefined ? null : join(folder, twin);
}
