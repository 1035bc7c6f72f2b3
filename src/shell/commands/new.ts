/** The command that writes a starter file, and beside it the schema by which an editor explains the keys. */
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { FOLDERS, SCHEMAS, type Kind } from '../../content/kind.ts';
import { logFile } from '../../content/log/format.ts';
import { keyOf } from '../../content/layers.ts';
import { readLibrary } from '../../content/readLibrary.ts';
import { jsonSchemaOf } from '../../content/schema/jsonSchema.ts';
import { ID_PATTERN } from '../../content/schema/words.ts';
import type { IsoDate } from '../../units/date.ts';
import {
  contains,
  isFolder,
  keepsMode,
  makeFolder,
  onDisk,
  PRIVATE_FILE_MODE,
  PRIVATE_FOLDER_MODE,
  putFile,
} from '../io/disk.ts';
import { EXIT } from '../exit.ts';
import { CONTENT, type Flags } from '../flags.ts';
import { contentFolder, sourceFolders, type Folders } from '../io/folders.ts';
import { readLayers, upperFiles, type Layers } from '../io/layers.ts';
import { lastRevisionOf } from './lastRevision.ts';
import { nearestOf } from '../nearest.ts';
import { nextDraft } from '../../drafting/nextDraft.ts';
import type { LastRevision } from '../../drafting/nextRevision.ts';
import type { Reviewed } from '../../drafting/reviewedDraft.ts';
import type { Report } from '../report.ts';
import { starterText } from '../io/assets.ts';
import { shownPath } from '../io/shownPath.ts';
import { starterOf, type StarterKind, type StarterName } from '../../drafting/starter.ts';
import { fillingFor, hintsFor } from './starterFilling.ts';
import { Stop } from '../io/stop.ts';
import { onDay } from '../io/today.ts';

/**
 * Writes a starter, or the next revision of a consult that is there already. Exit 64 for a kind or id that cannot be, 66
 * when the library lacks what the starter names, 73 when the file is there, 65 when the last revision has a Problem.
 */
export async function writeNew(flags: Flags, kind: string, id: string, report: Report): Promise<number> {
  if (kind === LOG) return writeLog(flags, id, report);
  if (!isKind(kind)) throw unknownKind(kind);
  if (id === '') throw new Stop(EXIT.usage, 'new needs <kind> <id>');
  const wish = nameOf(kind, id);
  report.answer({ ok: true, files: writeStarter(flags, kind, wish, report, null) });
  return EXIT.good;
}

/** No kind of the library: a log is lines beside a consult. */
const LOG = 'log';

/** A log with its header alone, beside the newest revision, or beside the one that was named. */
function writeLog(flags: Flags, id: string, report: Report): number {
  const { consults } = sourceFolders(flags);
  const { alias, revision: asked, given } = nameOf('consult', id);
  const last = lastRevisionOf(alias, consults, true);
  if (last === null) throw new Stop(EXIT.noSuchFile, `there is no consult of ${alias}`);
  const revision = given ? asked : last.consult.revision;
  const file = `${alias}-r${revision}.log.csv`;
  const twin = twinOf(consults, file);
  if (twin !== null)
    throw new Stop(EXIT.cannotCreate, `${shownPath(twin)} is there already; nothing was written`);
  const place = join(consults, file);
  onDisk(place, () => {
    writeFileSync(place, logFile([]), { flag: 'wx', mode: PRIVATE_FILE_MODE });
    keepsMode(place, PRIVATE_FILE_MODE);
  });
  report.say(
    `${shownPath(place)} is written: a line for each thing that was done. Then: loadleaf review ${alias}`,
  );
  report.answer({ ok: true, files: [place] });
  return EXIT.good;
}

/** The draft of the next revision, with what a review led to. Returns the files; stops as `writeNew` does. */
export function writeRevision(flags: Flags, alias: string, report: Report, reviewed: Reviewed): string[] {
  return writeStarter(flags, 'consult', nameOf('consult', alias), report, reviewed);
}

function writeStarter(
  flags: Flags,
  kind: StarterKind,
  wish: WishedName,
  report: Report,
  reviewed: Reviewed | null,
): string[] {
  const folders = kind === 'consult' ? sourceFolders(flags) : { content: contentFolder(flags.content) };
  const folder = folderOf(kind, folders);
  const last = kind === 'consult' ? lastRevisionOf(wish.alias, folder) : null;
  const name = last === null ? wish : nameAfter(wish, last.consult.revision);
  const twin = twinOf(folder, name.file);
  if (twin !== null)
    throw new Stop(EXIT.cannotCreate, `${shownPath(twin)} is there already; nothing was written`);
  const layers = readLayers(folders.content);
  const schema = join(schemaFolder(kind, folders, folder), `${kind}.json`);
  const schemaWay = relative(folder, schema).replaceAll(sep, '/');
  const made =
    last === null
      ? starterFor(kind, name, layers, schemaWay, onDay(flags))
      : revisionFor(last, name, layers, schemaWay, onDay(flags), reviewed);
  const place = join(folder, name.file);
  onDisk(place, () => {
    // A consult is a person's; a card is everybody's.
    const isPrivate = kind === 'consult';
    makeFolder(dirname(place), isPrivate ? PRIVATE_FOLDER_MODE : undefined);
    writeFileSync(place, made.text, { flag: 'wx', mode: isPrivate ? PRIVATE_FILE_MODE : 0o666 });
    if (isPrivate) keepsMode(place, PRIVATE_FILE_MODE);
  });
  writeSchemas(dirname(schema), kind);
  const where = flags.content === CONTENT ? '' : ` --content ${flags.content}`;
  report.say(`${shownPath(place)} is written, ${made.what}. Then: loadleaf check${where}`);
  if (kind === 'consult')
    report.warn('Its screen was asked of nobody: ask every item, and write what was said.');
  return [place, schema];
}

interface Made {
  readonly text: string;
  /** What was written, for the one who waits. */
  readonly what: string;
}

function starterFor(
  kind: StarterKind,
  name: StarterName,
  layers: Layers,
  schema: string,
  today: IsoDate,
): Made {
  const shipped = shippedTwin(kind, name, layers);
  const files = upperFiles(layers);
  if (shipped !== null)
    return {
      text: starterOf(kind, shipped, { schema, values: [] }),
      what: 'the shipped file, to be changed: it takes the place of that one',
    };
  const values = fillingFor(kind, files, name, today);
  return {
    text: starterOf(kind, starterText(kind), { schema, values, hints: hintsFor(kind, files) }),
    what: 'a starter to be changed line by line',
  };
}

function revisionFor(
  last: LastRevision,
  { revision }: StarterName,
  layers: Layers,
  schema: string,
  today: IsoDate,
  reviewed: Reviewed | null,
): Made {
  const { known } = readLibrary(...layers.folders);
  return {
    text: nextDraft(last, known, { revision, today, schema, reviewed }),
    what: `a draft made from revision ${last.consult.revision}: ask what is empty, then take draft: yes out`,
  };
}

/** The next revision after the last one, or the later one that was asked for. */
function nameAfter({ alias, revision, given }: WishedName, last: number): StarterName {
  const next = given ? revision : last + 1;
  if (next <= last)
    throw new Stop(
      EXIT.cannotCreate,
      `revision ${last} of ${alias} is there already; nothing was written before it`,
    );
  return { file: `${alias}-r${next}.md`, alias, revision: next };
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

/** `given`: the revision was asked for. */
type WishedName = StarterName & { readonly given: boolean };

const REVISION = /^(.+)-r([1-9]\d{0,2})$/;

// A consult goes by its alias, or by alias and revision from the second on.
function nameOf(kind: StarterKind, id: string): WishedName {
  const found = kind === 'consult' ? REVISION.exec(id) : null;
  const [, alias = id, revision = '1'] = found ?? [];
  if (!ID_PATTERN.test(alias))
    throw new Stop(
      EXIT.usage,
      `${id} is no id: small letters, digits and hyphens, 1 to 64 of them, beginning with a letter or digit`,
    );
  return {
    file: kind === 'consult' ? `${alias}-r${revision}.md` : `${alias}.md`,
    alias,
    revision: Number(revision),
    given: found !== null,
  };
}

function isKind(kind: string): kind is StarterKind {
  return Object.hasOwn(FOLDERS, kind);
}

function unknownKind(kind: string): Stop {
  const kinds = [...Object.keys(FOLDERS), 'secret'];
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
