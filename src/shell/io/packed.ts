/** A file that was read, kept small: of thousands of consults the texts alone would fill the memory. */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { SourceFile } from '../../content/source.ts';

/** The same file; its bytes are unpacked whenever they are looked at. */
export function packed(file: SourceFile): SourceFile {
  const { bytes, ...rest } = file;
  if (bytes.length === 0) return file;
  // A copy: what the packer hands out is a window on 16 kB.
  const small = Uint8Array.from(deflateRawSync(bytes));
  return {
    ...rest,
    get bytes() {
      return inflateRawSync(small);
    },
  };
}
