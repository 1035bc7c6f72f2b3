/** The post as the desk makes it, held against what the command makes of the same programme, without a browser. */
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { outputOf, type Makers } from '../../src/desk/worker/outputs.ts';
import * as calendar from '../../src/outputs/calendar/index.ts';
import * as mail from '../../src/outputs/mail/index.ts';
import * as pdf from '../../src/outputs/pdf/index.ts';
import { leafletHtml } from '../../src/outputs/html/leaflet.ts';
import { secretOf, secretText } from '../../src/outputs/sealed/secret.ts';
import { archived } from '../../src/post/archive.ts';
import { sealedOf, type Sealing } from '../../src/post/sealedFiles.ts';
import { setFiles } from '../../src/shell/building/make.ts';
import { readSealedAssets } from '../../src/shell/io/assets.ts';
import { OUTPUTS } from '../../src/set/outputs.ts';
import { siteAddress } from '../../src/units/siteAddress.ts';
import { assets as pages } from '../outputs/html/assets.ts';
import { programmes } from '../outputs/html/programmes.ts';
import { assets } from '../outputs/pdf/make.ts';

const [, programme] = programmes[0]!;
const sealing: Sealing = {
  site: 'https://clinic.example/',
  secret: new Uint8Array(32).fill(7),
  dress: await readSealedAssets(),
};
const makers = (over: Partial<Makers> = {}): Makers => ({
  assets: pages,
  paper: { pdf, assets },
  post: { archived, calendar, mail, sealedOf },
  sealing: null,
  ...over,
});
const text = (bytes: Uint8Array | string | null) => Buffer.from(bytes ?? 'nothing').toString();

describe('the post', () => {
  it.each([
    ['as it is', null],
    ['with a link', sealing],
  ])('%s is what the command makes', async (_, seal) => {
    const page = leafletHtml(programme, pages);
    const link = seal === null ? null : (await sealedOf(programme, page, seal)).link;
    const built = await setFiles(programme, { pages, paper: assets, fridge: false, link }, []);
    for (const name of OUTPUTS.map(({ file }) => file)) {
      if (name === 'link.txt') continue;
      const own = built.find((one) => one.name === name);
      const { bytes } = await outputOf(name, programme, '', makers({ sealing: seal }));
      expect(own === undefined ? bytes : Buffer.from(bytes ?? '').equals(Buffer.from(own.bytes)), name).toBe(
        own === undefined ? null : true,
      );
    }
  });

  it('names the person where a name was typed, in leaflet and message alone', async () => {
    const of = async (name: Parameters<typeof outputOf>[0]) =>
      text((await outputOf(name, programme, ' Anouk ', makers({ sealing }))).bytes);
    expect(await of('leaflet.html')).toContain('Anouk');
    expect(await of('message.txt')).toMatch(/^Hello Anouk,\n/);
    for (const name of ['record.json', 'record.html', 'note.txt', 'sessions.ics'] as const)
      expect(await of(name)).not.toContain('Anouk');
    // The archive is the same whoever was named: the sealed page greets nobody.
    const plain = await outputOf('sealed', programme, '', makers({ sealing }));
    const named = await outputOf('sealed', programme, 'Anouk', makers({ sealing }));
    expect(named).toEqual(plain);
  });

  it('is sealed as a folder to unpack where the site lies, without its key', async () => {
    const { bytes, link } = await outputOf('sealed', programme, '', makers({ sealing }));
    const page = leafletHtml(programme, pages);
    const built = await sealedOf(programme, page, sealing);
    const unpacked = unzipSync(bytes as Uint8Array);
    expect(Object.keys(unpacked).map((path) => `public/${path}`)).toEqual(
      built.files.map(({ path }) => path),
    );
    for (const one of built.files)
      expect(text(unpacked[one.path.replace('public/', '')] ?? null)).toBe(one.bytes);
    expect(link).toEqual({ address: built.link.address, words: built.words });
    const key = built.link.address.slice(built.link.address.indexOf('#') + 1);
    expect(key).toMatch(/^[\w-]{43}$/);
    expect(Object.values(unpacked).map(text).join('')).not.toContain(key);
  });
});

describe('the secret', () => {
  it.each([
    ['one line of ours', secretText(new Uint8Array(32).fill(1)), true],
    ['with the line ends of Windows', secretText(new Uint8Array(32).fill(1)).replace('\n', '\r\n'), true],
    ['of another form', `loadleaf-secret-2 ${'A'.repeat(43)}\n`, false],
    ['too short', `loadleaf-secret-1 ${'A'.repeat(42)}\n`, false],
    ['with something after it', `${secretText(new Uint8Array(32))}more\n`, false],
  ])('%s: %s', (_, written, isSecret) => {
    expect(secretOf(written) !== null).toBe(isSecret);
  });
});

describe('the address of the site', () => {
  it.each([
    ['https://clinic.example', 'https://clinic.example/'],
    ['https://clinic.example/library/', 'https://clinic.example/library/'],
    ['http://127.0.0.1:8000', 'http://127.0.0.1:8000/'],
    ['http://clinic.example', null],
    ['https://clinic.example/?a', null],
    ['https://me@clinic.example/', null],
    ['clinic', null],
    ['', null],
  ])('%s is %s', (written, address) => expect(siteAddress(written)).toBe(address));
});
