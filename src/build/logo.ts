/** The clinic's logo made small and bare: turned, flattened on white, without any data about camera or place. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Clinic } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { contains, realPath } from './disk.ts';

// As printed 20 mm high at 300 dots an inch, and no picture of a wall.
const HEIGHT_PX = 240;
const WIDTH_PX = 720;
const MOST_PIXELS = 40_000_000;

const KINDS: readonly (string | undefined)[] = ['png', 'jpeg'];

/** PNG bytes without transparency, null bytes when the clinic has no logo, or why it cannot be had. */
export type Logo = { readonly png: Uint8Array | null } | { readonly refusal: Refusal };

/** `content`: the folder of clinic.md, beside which the picture stands. */
export async function logoOf({ logo }: Clinic, content: string): Promise<Logo> {
  if (logo === undefined) return { png: null };
  const file = join(content, logo);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true || !isBeside(content, file))
    return refused(logo, 'no such file', `put ${logo} beside clinic.md, or take the logo line out`);
  const { default: sharp } = await import('sharp');
  try {
    const picture = sharp(readFileSync(file), { limitInputPixels: MOST_PIXELS, failOn: 'error' });
    const { format } = await picture.metadata();
    if (!KINDS.includes(format)) return refused(logo, `a picture of kind ${format}`, 'save it as PNG');
    const png = await picture
      .autoOrient()
      .resize({ width: WIDTH_PX, height: HEIGHT_PX, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .png({ compressionLevel: 9 })
      .toBuffer();
    return { png };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return refused(logo, `a file that is no picture (${why})`, 'save it again as PNG');
  }
}

// A link could fetch any picture of this machine onto a leaflet.
function isBeside(content: string, file: string): boolean {
  return contains(realPath(content), realPath(file));
}

function refused(logo: string, found: string, fix: string): Logo {
  const where = { kind: 'clinic', id: 'clinic', path: ['logo'] } as const;
  return {
    refusal: {
      code: 'image',
      ...where,
      found: `${logo}: ${found}`,
      expected: 'a PNG or JPEG beside clinic.md',
      fix,
    },
  };
}
