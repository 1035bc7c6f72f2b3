/** A file that was read, kept small: of thousands of consults the texts alone would fill the memory. */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { SourceFile } from '../../content/source.ts';

// A class, for a way to its bytes of its own would give every file a shape of its own: 0.3 kB each [measured].
class Packed implements SourceFile {
  readonly file: string;
  readonly link: SourceFile['link'];
  readonly #small: Uint8Array;

  constructor({ file, link, bytes }: SourceFile) {
    this.file = file;
    this.link = link;
    // A copy: what the packer hands out is a window on 16 kB.
    this.#small = new Uint8Array(deflateRawSync(bytes));
  }

  get bytes(): Uint8Array {
    return inflateRawSync(this.#small);
  }
}

/** The same file; its bytes are unpacked whenever they are looked at. */
export function packed(file: SourceFile): SourceFile {
  return file.bytes.length === 0 ? file : new Packed(file);
}
