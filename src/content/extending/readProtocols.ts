/** The protocols of a library, those that extend another by what they stand on. */
import { errorAt, type Problem } from '../problem.ts';
import { idOf } from '../fileName.ts';
import { keyOf } from '../layers.ts';
import { FOLDERS } from '../kind.ts';
import { placeOfValue } from '../locate.ts';
import { readFile, type FileReading } from '../readFile.ts';
import { readFolder, type Folder } from '../readFolder.ts';
import type { SourceFile } from '../source.ts';
import type { Extending } from './extension.ts';
import { readExtension, type ExtendedReading } from './readExtension.ts';
import { saysExtends } from './saysExtends.ts';

type Reading = FileReading<'protocol'>;

export interface Protocols {
  readonly folder: Folder<'protocol'>;
  /** What those change that extend another, by their id. */
  readonly extending: ReadonlyMap<string, Extending>;
}

/** `bases`: the protocol below, by the file that changes it under its own name. */
export function readProtocols(
  files: readonly SourceFile[],
  bases: ReadonlyMap<SourceFile, SourceFile>,
): Protocols {
  const readings = new Map<SourceFile, Reading>();
  const extending = new Map<string, Extending>();
  const own = files.filter(({ file }) => file.startsWith(`${FOLDERS.protocol}/`));
  const ids = own.flatMap(({ file }) => idOf(file) ?? []);
  const read = (file: SourceFile, way: readonly SourceFile[]): Reading => {
    const known = readings.get(file);
    if (known !== undefined) return known;
    const reading = saysExtends(file) === null ? readFile(file, 'protocol') : extended(file, [...way, file]);
    readings.set(file, reading);
    return reading;
  };
  const extended = (file: SourceFile, way: readonly SourceFile[]): Reading => {
    const id = idOf(file.file) ?? '';
    const base = bases.get(file);
    const others = ids.filter((one) => one !== id || base !== undefined);
    let inCircle = false;
    const below = (wanted: string): Reading | null => {
      const found =
        wanted === id ? base : own.find((one) => keyOf(one.file) === `${FOLDERS.protocol}/${wanted}`);
      if (found === undefined) return null;
      inCircle = way.includes(found);
      return inCircle ? BROKEN : read(found, way);
    };
    const reading = readExtension(id, file, below, others);
    if (reading.extending !== null && !file.file.startsWith('below/')) extending.set(id, reading.extending);
    return withBaseProblems(
      reading,
      base === undefined ? null : (readings.get(base) ?? null),
      inCircle ? circle(reading) : [],
    );
  };
  const folder = readFolder(own, 'protocol', (file) => read(file, []));
  return { folder, extending };
}

const BROKEN: Reading = { file: '', value: null, body: [], front: null, problems: [], links: [] };

/** Nobody else tells what is wrong with a protocol that lies below. */
function withBaseProblems(reading: ExtendedReading, base: Reading | null, more: readonly Problem[]): Reading {
  return { ...reading, problems: [...reading.problems, ...(base?.problems ?? []), ...more] };
}

function circle({ front }: ExtendedReading): Problem[] {
  if (front === null) return [];
  return [
    errorAt(placeOfValue(front, ['extends']), 'circle', {
      path: 'extends',
      found: 'a protocol that stands on this one',
      expected: 'a way that ends',
      fix: 'extend a protocol that is whole by itself',
    }),
  ];
}
