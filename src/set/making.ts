/** Makes the outputs of one set, each at most once, whoever asks for it first. */
import type { Programme } from '../programme/programme.ts';
import { outputOf } from './outputs.ts';
import type { Bytes, Making, Means, Output } from './output.ts';

export interface MadeFile {
  readonly name: string;
  readonly bytes: Bytes;
}

/** `ready`: what is made already, by the names of the files. */
export function makingOf(
  programme: Programme,
  means: Means,
  ready: ReadonlyMap<string, Bytes> = new Map(),
): Making {
  const made = new Map<string, Promise<Bytes | null>>();
  const making: Making = { ...means, part };
  return making;

  function part(file: string): Promise<Bytes | null> {
    const known = made.get(file) ?? begun(file);
    made.set(file, known);
    return known;
  }

  async function begun(file: string): Promise<Bytes | null> {
    const { isFor, make } = outputOf(file);
    const isThere = isFor?.(programme, means) ?? true;
    return isThere ? (ready.get(file) ?? make(programme, making)) : null;
  }
}

/** Those of them that this programme has, one after the other. */
export async function madeFiles(outputs: readonly Output[], { part }: Making): Promise<MadeFile[]> {
  const files: MadeFile[] = [];
  for (const { file } of outputs) {
    const bytes = await part(file);
    if (bytes !== null) files.push({ name: file, bytes });
  }
  return files;
}
