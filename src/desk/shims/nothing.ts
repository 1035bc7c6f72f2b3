/**
 * Stands for what a browser has not, or a leaflet never asks for: a disk, modules of Node, ciphers, lines broken by pdfkit,
 * words with addresses in them made links, and packing anew a logo that shows what lies behind it, which the build makes
 * one that does not.
 */
function never(): never {
  throw new Error('no leaflet asks for this');
}

export const [readFileSync, statSync] = [never, never];
/** Asked for at once; what it gives is not. */
export const createRequire = (): typeof never => never;
export const [cbc, ecb] = [never, never];
export const [deflateSync, inflateSync] = [never, never];
/** Made with every reader of Markdown, and asked nothing. */
export function LinkifyIt(): void {}
export default { readFileSync, statSync, createRequire, deflateSync, inflateSync };
