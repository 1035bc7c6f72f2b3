/** Photos beside cards: named and there, or a Problem. */
import { describe, expect, it } from 'vitest';
import { isPicture } from '../../src/content/fileSize.ts';
import { photoFile } from '../../src/content/pictures.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { fileOf, filesWith, spoilt } from './sample.ts';
import type { SourceFile } from '../../src/content/source.ts';

const BRIDGE = 'exercises/bridge.md';
const withPhoto = (file: string) =>
  spoilt(BRIDGE, 'cautions:', `photos:\n  - { file: ${file}, alt: A bridge }\ncautions:`);
const read = (photo: string, ...beside: readonly SourceFile[]) =>
  readLibrary([...filesWith({ [BRIDGE]: withPhoto(photo) }), ...beside]);
const picture = (file: string, link: SourceFile['link'] = 'no'): SourceFile => ({
  file,
  bytes: new Uint8Array([0xff, 0xd8, 0xff]),
  link,
});

describe('a photo', () => {
  it('is taken with its words, and is no card', () => {
    const { library, counts } = read('side-view.jpg', picture('exercises/side-view.jpg'));
    expect(library?.exercises.get('bridge')?.photos).toEqual([{ file: 'side-view.jpg', alt: 'A bridge' }]);
    expect(counts).toEqual(readLibrary(filesWith()).counts);
  });

  it('does not change which library it is: its words do', () => {
    const beside = (byte: number) => ({ ...picture('exercises/a.jpg'), bytes: new Uint8Array([byte]) });
    expect(read('a.jpg', beside(1)).library?.version).toBe(read('a.jpg', beside(2)).library?.version);
  });

  it('must be there', () => {
    expect(read('side-view.jpg').problems).toMatchObject([
      { code: 'image', path: 'photos[0].file', found: 'side-view.jpg, which is not there' },
    ]);
  });

  it('of a card that was replaced lies below unnamed, and one of the upper folder may not', () => {
    const below = [...filesWith({ [BRIDGE]: withPhoto('a.jpg') }), picture('exercises/a.jpg')];
    const over = (...own: readonly SourceFile[]) => readLibrary(below, own).problems.map(({ code }) => code);
    const bare = fileOf(BRIDGE, spoilt(BRIDGE, 'title: Bridge from the floor', 'title: Ours'));
    expect(over(bare)).toEqual([]);
    expect(over(bare, picture('exercises/b.jpg'))).toEqual(['wrong-file-name']);
    expect(over(fileOf(BRIDGE, withPhoto('a.jpg')))).toEqual([]);
  });

  it('of a card with a slip elsewhere is not blamed for it', () => {
    const slip = withPhoto('a.jpg').replace('kind: isotonic', 'kind: isotonik');
    const { problems } = readLibrary([...filesWith({ [BRIDGE]: slip }), picture('exercises/a.jpg')]);
    expect(problems.map(({ code }) => code)).toEqual(['wrong-word']);
  });

  it('that is nearly there is named', () => {
    const { problems } = read('side-veiw.jpg', picture('exercises/side-view.jpg'));
    expect(problems.map(({ fix }) => fix)).toContain('write side-view.jpg');
  });

  it('stands beside its card and nowhere else', () => {
    expect(read('side-view.jpg', picture('side-view.jpg')).problems).toHaveLength(1);
    expect(photoFile('exercises/deep/a.md', 'b.png')).toBe('exercises/deep/b.png');
  });

  it('may be no link out of the folder', () => {
    const { problems } = read('a.jpg', picture('exercises/a.jpg', 'outside'));
    expect(problems.map(({ code }) => code)).toEqual(['link-out']);
  });

  it.each(['figure.svg', 'film.gif', 'raw.heic', '../a.jpg', 'deep/a.jpg', '.a.jpg', 'a.jpg.exe', ''])(
    'cannot be called %j',
    (file) => {
      const { problems } = read(JSON.stringify(file));
      expect(problems.map(({ path }) => path)).toContain('photos[0].file');
    },
  );
});

describe('a picture among the cards', () => {
  it('that no card names is refused by its name', () => {
    const { problems } = readLibrary([...filesWith(), picture('exercises/old.svg')]);
    expect(problems).toMatchObject([
      {
        code: 'wrong-file-name',
        file: 'exercises/old.svg',
        found: 'a picture called old.svg that no card names',
      },
    ]);
  });

  it.each(['a.JPG', 'a.jpeg', 'a.webp', 'a.svg', 'a.HEIC', 'a.tif'])('%s is one', (file) => {
    expect(isPicture(file)).toBe(true);
  });

  it.each(['a.md', 'a.txt', 'jpg', 'a.jpg.md'])('%s is none', (file) => {
    expect(isPicture(file)).toBe(false);
  });

  it('in another folder is a misnamed card as before', () => {
    const { problems } = readLibrary([...filesWith(), fileOf('advice/a.jpg', 'x')]);
    expect(problems.map(({ code }) => code)).toContain('wrong-file-name');
  });
});
