/** The desk as files of the public folder: its page, its scripts, and the library as one text. */
import type { Library } from '../../content/library.ts';
import { isHidden } from '../../content/fileName.ts';
import { isPicture } from '../../content/fileSize.ts';
import { CLINIC_FILE, FOLDERS } from '../../content/kind.ts';
import type { SourceFile } from '../../content/source.ts';
import { packedPhotos } from '../../desk/photos.ts';
import { runsOf, type DeskDress, type DeskFile, type DeskData } from '../../desk/deskData.ts';
import type { DeskNames } from '../../outputs/html/desk/page.ts';
import { photoBytes } from '../../outputs/html/parts/photos.ts';
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import { hashedName } from '../io/hashedName.ts';
import { deskScript, pageFiles, printedFaces, readSealedAssets, version } from '../io/assets.ts';
import type { OutFile } from '../io/site.ts';

const FOLDER = 'public/desk';

/** Everything below `public/desk/`. `folders`: what the library was read from, lowest first. */
export async function deskFiles(
  library: Library,
  folders: readonly (readonly SourceFile[])[],
  logo: Uint8Array | null,
  { desk, photos }: PageAssets,
  { fonts }: PaperAssets,
): Promise<OutFile[]> {
  const [{ deskHtml }, { catalogueOf }] = await Promise.all([
    import('../../outputs/html/desk/page.ts'),
    import('../../desk/catalogue.ts'),
  ]);
  const { regular, bold } = printedFaces();
  const { assets, worker } = await readSealedAssets();
  const { tokens, fonts: faces, ...dress } = pageFiles();
  const data: DeskData = {
    loadleaf: version(),
    folders: folders.map((files) => files.filter(({ file }) => isOfLibrary(file)).map(textOf)),
    logo: logo === null ? null : Buffer.from(logo).toString('base64'),
    pages: { tokens, fonts: faces },
    photoBytes: Object.fromEntries([...photos].map(([card, all]) => [card, photoBytes(all)])),
    letters: runsOf(lettersOf(fonts)),
  };
  const parts: Readonly<Record<keyof DeskNames, readonly [ending: string, bytes: Uint8Array | string]>> = {
    style: ['css', desk.text],
    yaml: ['js', deskScript('yaml')],
    script: ['js', deskScript('desk')],
    worker: ['js', deskScript('worker')],
    later: ['js', deskScript('later')],
    paper: ['js', deskScript('paper')],
    post: ['js', deskScript('post')],
    catalogue: ['json', JSON.stringify(catalogueOf(library))],
    library: ['json', JSON.stringify(data)],
    dress: ['json', JSON.stringify({ ...withoutOthers(dress), photos: packedPhotos(photos) })],
    sealing: ['json', JSON.stringify({ assets, worker })],
    regular: ['ttf', regular],
    bold: ['ttf', bold],
  };
  const named = Object.entries(parts).map(([name, [ending, bytes]]) => ({
    key: name,
    name: hashedName(name, ending, bytes),
    bytes,
  }));
  const names = Object.fromEntries(named.map(({ key, name }) => [key, name])) as unknown as DeskNames;
  return [
    { path: `${FOLDER}/index.html`, bytes: deskHtml(names, library.clinic.name) },
    ...named.map(({ name, bytes }) => ({ path: `${FOLDER}/${name}`, bytes })),
  ];
}

function isOfLibrary(file: string): boolean {
  const isOurs = [FOLDERS.exercise, FOLDERS.advice, FOLDERS.protocol].some((one) =>
    file.startsWith(`${one}/`),
  );
  return (isOurs || file === CLINIC_FILE) && !isHidden(file);
}

function textOf({ file, bytes }: SourceFile): DeskFile {
  return { file, text: isPicture(file) ? null : new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes) };
}

/** What both cuts have, ascending. */
function lettersOf({ regular, bold }: PaperAssets['fonts']): number[] {
  const inBoth = regular.font.characterSet.filter((one) => bold.font.hasGlyphForCodePoint(one));
  return [...new Set(inBoth)].sort((a, b) => a - b);
}

// No leaflet is dressed with them.
function withoutOthers(files: Omit<DeskDress, 'photos'>): Omit<DeskDress, 'photos'> {
  return { ...files, catalogue: '', styles: { ...files.styles, public: '', desk: '' } };
}
