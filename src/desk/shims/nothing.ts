/** Stands for what a browser has not and a leaflet never asks for: a disk, modules of Node. */
function never(): never {
  throw new Error('there is no disk in a browser');
}

export const [readFileSync, statSync] = [never, never];
export const createRequire = (): typeof never => never;
export default { readFileSync, statSync, createRequire };
