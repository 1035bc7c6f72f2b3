/** The clinic's logo made small and bare: turned, flattened on white, without any data about camera or place. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { MOST_PICTURE_BYTES } from '../../content/fileSize.ts';
import type { Clinic } from '../../content/library.ts';
import type { Refusal } from '../../units/refusal.ts';
import { contains, realPath } from './disk.ts';
import { BROKEN, pictureIn, tooLong } from './picture.ts';

// As printed 20 mm high at 300 dots an inch, and no picture of a wall.
const HEIGHT_PX = 240;
const WIDTH_PX = 720;

/** PNG bytes without transparency, null bytes when the clinic has no logo, or why it cannot be had. */
export type Logo = { readonly png: Uint8Array | null } | { readonly refusal: Refusal };

/** `content`: the folder of clinic.md, beside which the picture stands. */
export async function logoOf({ logo }: Clinic, content: string): Promise<Logo> {
  if (logo === undefined) return { png: null };
  const file = join(content, logo);
  const there = statSync(file, { throwIfNoEntry: false });
  if (there?.isFile() !== true || !isBeside(content, file))
    return refused(logo, 'not there', `put ${logo} beside clinic.md, or take the logo line out`);
  const picture =
    there.size > MOST_PICTURE_BYTES
      ? tooLong(there.size)
      : await pictureIn(readFileSync(file), ['png', 'jpeg']);
  if ('fix' in picture) return refused(logo, picture.found, picture.fix);
  try {
    const png = await picture
      .upright()
      .resize({ width: WIDTH_PX, height: HEIGHT_PX, fit: 'inside', withoutEnlargement: true })
      .png({ compressionLevel: 9 })
      .toBuffer();
    return { png };
  } catch {
    return refused(logo, BROKEN.found, BROKEN.fix);
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
      found: `${logo}, which is ${found}`,
      expected: 'a PNG or JPEG beside clinic.md',
      fix,
    },
  };
}
