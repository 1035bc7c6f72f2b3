/** The clinic's logo made small and bare: turned, flattened on white, without any data about camera or place. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Clinic } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';

// As printed 20 mm high at 300 dots an inch, and no picture of a wall.
const HEIGHT_PX = 240;
const WIDTH_PX = 720;
const MOST_PIXELS = 40_000_000;

/** PNG bytes without transparency, null when the clinic has none, or a refusal naming the file. */
export async function logoOf({ logo }: Clinic, content: string): Promise<Uint8Array | null | Refusal> {
  if (logo === undefined) return null;
  const file = join(content, logo);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true)
    return refused(
      logo,
      'no such file',
      'a PNG or JPEG beside clinic.md',
      `Put ${logo} beside clinic.md, or take the logo line out.`,
    );
  const { default: sharp } = await import('sharp');
  try {
    const picture = sharp(readFileSync(file), { limitInputPixels: MOST_PIXELS, failOn: 'error' });
    const { format } = await picture.metadata();
    if (format !== 'png' && format !== 'jpeg')
      return refused(logo, `a picture of kind ${format}`, 'a PNG or JPEG', 'Save it as PNG.');
    return await picture
      .autoOrient()
      .resize({ width: WIDTH_PX, height: HEIGHT_PX, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .png({ compressionLevel: 9 })
      .toBuffer();
  } catch (error) {
    return refused(
      logo,
      `a file that is no picture (${(error as Error).message})`,
      'a PNG or JPEG',
      'Save it again as PNG.',
    );
  }
}

function refused(logo: string, found: string, expected: string, fix: string): Refusal {
  return {
    code: 'image',
    kind: 'clinic',
    id: 'clinic',
    path: ['logo'],
    found: `${logo}: ${found}`,
    expected,
    fix,
  };
}
