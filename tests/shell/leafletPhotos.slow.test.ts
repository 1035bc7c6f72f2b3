/** A clinic's own photos and loops on its leaflets, by pictures made here with sharp 0.35: only when it says so, named, within the limit. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openedPhotos } from '../../src/desk/photos.ts';
import type { DeskDress, DeskData } from '../../src/desk/deskData.ts';
import { openBench } from '../../src/desk/worker/bench.ts';
import { makeSheet } from '../../src/desk/worker/make.ts';
import { viewOf } from '../../src/desk/worker/view.ts';
import { outputOf } from '../../src/desk/worker/outputs.ts';
import { pageAssets } from '../../src/outputs/html/assets.ts';
import { faultsOf } from '../outputs/html/validate.ts';
import { smallClinic, type Clinic } from './workbench.ts';

let clinic: Clinic;
beforeEach(() => {
  clinic = smallClinic();
});
afterEach(() => clinic.remove());

const leaflet = () => join(clinic.site, 'private/finch/leaflet.html');
const pictures = () =>
  [...readFileSync(leaflet(), 'utf8').matchAll(/src="data:image\/webp;base64,([^"]+)"/g)].map(
    ([, text = '']) => Buffer.from(text, 'base64'),
  );

/** Grain does not pack: such a picture is as large as its kind gets. */
const grain = (widthPx: number, heightPx: number, mean: number) =>
  sharp({ create: { width: widthPx, height: heightPx, channels: 3, background: '#808080', noise: { type: 'gaussian', mean, sigma: 30 } } }); // prettier-ignore

async function stillOf(): Promise<Buffer> {
  return grain(800, 600, 128)
    .withExif({ IFD0: { Artist: 'Jane Roe' } })
    .jpeg()
    .toBuffer();
}

async function loopOf(): Promise<Buffer> {
  const frames = await Promise.all([60, 128, 200].map((mean) => grain(400, 300, mean).png().toBuffer()));
  return sharp(frames, { join: { animated: true } })
    .webp({ delay: [200, 200, 200] })
    .toBuffer();
}

function photo(file: string, bytes: Buffer, takenBy: string | null): void {
  writeFileSync(join(clinic.content, 'exercises', file), bytes);
  const by = takenBy === null ? '' : `    takenBy: ${takenBy}\n`;
  clinic.edit(
    'exercises/wall-bridge.md',
    'cautions:',
    `photos:\n  - file: ${file}\n    alt: A bridge from the side\n${by}cautions:`,
  );
}

const show = () => clinic.edit('clinic.md', 'leafletPhotos:\n  show: no', 'leafletPhotos:\n  show: yes');

describe('photos on a leaflet', () => {
  it('are one small WebP without what the camera wrote, with words and a name', async () => {
    photo('side.jpg', await stillOf(), 'R. Sample');
    show();
    expect((await clinic.run('build', 'finch')).exit).toBe(0);
    const page = readFileSync(leaflet(), 'utf8');
    expect(page).toMatch(/Photo: <bdi>R\. Sample<\/bdi>/);
    expect(page).toMatch(/width="480" height="360" alt="A bridge from the side"/);
    const [still, ...others] = pictures();
    expect(others).toEqual([]);
    expect(await sharp(still).metadata()).toMatchObject({ format: 'webp', width: 480 });
    expect((await sharp(still).metadata()).exif).toBeUndefined();
    expect(still!.toString('latin1')).not.toContain('Jane Roe');
    expect(await faultsOf(page)).toEqual([]);
  });

  it('stand in the leaflet that the desk makes too, byte for byte, and count there', async () => {
    photo('side.jpg', await stillOf(), 'R. Sample');
    show();
    expect((await clinic.run('build')).exit).toBe(0);
    const desk = join(clinic.site, 'public/desk');
    const laid = (name: string) => {
      const file = readdirSync(desk).find((one) => one.startsWith(`${name}-`)) ?? '';
      return JSON.parse(readFileSync(join(desk, file), 'utf8')) as never;
    };
    const [library, { photos, ...dress }] = [laid('library') as DeskData, laid('dress') as DeskDress];
    const bench = openBench(library);
    const sheet = {
      name: 'finch-r1.md',
      text: readFileSync(join(clinic.content, 'consults/finch-r1.md'), 'utf8'),
      others: [],
    };
    const made = makeSheet(sheet, bench);
    if ('problems' in made) throw new Error(made.problems[0]?.found);
    const assets = {
      ...pageAssets({ ...library.pages, ...dress }, bench.logo),
      photos: openedPhotos(photos),
    };
    const makers = { assets, paper: null, post: null, sealing: null };
    const { bytes } = await outputOf('leaflet.html', made.programme, '', makers);
    expect(pictures()).toHaveLength(1);
    expect(bytes).toBe(readFileSync(leaflet(), 'utf8'));
    const shown = viewOf(made, assets.photos);
    expect('beside' in shown && shown.beside.leaflet.match(/src="data:image\/webp/g)).toHaveLength(1);
    const tooMany = { ...bench, photoBytes: { 'wall-bridge': 10_000_000 } };
    expect(makeSheet(sheet, tooMany)).toMatchObject({
      problems: [{ code: 'out-of-range', path: 'leafletPhotos.atMostKilobytes' }],
    });
  });

  it('of a loop show the first picture, and move only when they are opened', async () => {
    photo('side.webp', await loopOf(), 'R. Sample');
    show();
    expect((await clinic.run('build', 'finch')).exit).toBe(0);
    const [still, loop] = pictures();
    expect((await sharp(still).metadata()).pages ?? 1).toBe(1);
    expect(await sharp(loop).metadata()).toMatchObject({ pages: 3, width: 320, loop: 0 });
    expect(readFileSync(leaflet(), 'utf8')).toMatch(
      /<details class="loop">\s*<summary>Show it moving<\/summary>/,
    );
  });

  it('stand there only where the clinic says so, and then without who took them are a Problem', async () => {
    photo('side.jpg', await stillOf(), null);
    expect((await clinic.run('build', 'finch')).exit).toBe(0);
    expect(pictures()).toEqual([]);
    show();
    const { exit, err } = await clinic.run('build', 'finch');
    expect(exit).toBe(65);
    expect(err).toMatch(/wall-bridge\.md:\d+:\d+: error missing-key .*takenBy/);
    expect((await clinic.run('check')).exit).toBe(65);
  });

  it('above the limit of the clinic leave no leaflet, and say whose', async () => {
    photo('side.jpg', await stillOf(), 'R. Sample');
    show();
    clinic.edit('clinic.md', 'atMostKilobytes:\n    value: 400', 'atMostKilobytes:\n    value: 20');
    const { exit, err } = await clinic.run('build', 'finch');
    expect(exit).toBe(65);
    expect(err).toMatch(
      /clinic\.md:\d+:\d+: error out-of-range .*kB of photos on the leaflet of finch; must be at most 20 kB/,
    );
    expect(existsSync(leaflet())).toBe(false);
    expect((await clinic.run('check')).exit).toBe(65);
  });
});
