/** The gait2392 tables as read from their files, and their muscles gathered into the model's lumps. See CREDIT.md. */
import { readFileSync } from 'node:fs';
import type { Lump } from '../../../src/mechanics/muscle.ts';

export interface ArmRow {
  readonly muscle: string;
  readonly hipDeg: number;
  readonly kneeDeg: number;
  readonly lengthM: number;
  readonly hipArmM: number;
  readonly kneeArmM: number;
  readonly lineDeg: number;
}

export const armRows: readonly ArmRow[] = rowsOf('moment_arms_gait2392.csv').map(([muscle, ...numbers]) => {
  const [hipDeg, kneeDeg, lengthM, hipArmM, kneeArmM, lineDeg] = numbers.map(Number);
  return { muscle, hipDeg, kneeDeg, lengthM, hipArmM, kneeArmM, lineDeg } as ArmRow;
});

export const passiveRows = rowsOf('ham_passive_gait2392.csv').map((row) => {
  const [hipDeg, kneeDeg, elongationM, passiveN] = row.map(Number);
  return { hipDeg, kneeDeg, elongationM, passiveN } as {
    readonly hipDeg: number;
    readonly kneeDeg: number;
    readonly elongationM: number;
    readonly passiveN: number;
  };
});

/** Every hip and knee angle of the grid, once. */
export const grid: readonly { readonly hipDeg: number; readonly kneeDeg: number }[] = armRows.filter(
  ({ muscle }) => muscle === 'semimem',
);

// Between gluteus and adductor, and between the hamstring heads: Rajagopal 2016 maximum forces. Within: those of gait2392.
const MEMBERS: Readonly<Record<Lump, Readonly<Record<string, number>>>> = {
  hamstrings: { semimem: 2201.0, semiten: 591.3, bifemlh: 1313.2 },
  bicepsShortHead: { bifemsh: 1 },
  hipExtensors: {
    ...shared(3337.6, { glut_max1: 573, glut_max2: 819, glut_max3: 552 }),
    ...shared(2389.2, { add_mag1: 381, add_mag2: 343, add_mag3: 488 }),
  },
  vasti: { vas_med: 1294, vas_int: 1365, vas_lat: 1871 },
  rectusFemoris: { rect_fem: 1 },
  iliopsoas: { iliacus: 1073, psoas: 1113 },
  gastrocnemii: { med_gas: 1558, lat_gas: 683 },
};

/** The force-weighted mean of a column over a lump's muscles at one angle of the grid. */
export function lumpMean(
  lump: Lump,
  column: 'lengthM' | 'hipArmM' | 'kneeArmM' | 'lineDeg',
  hipDeg: number,
  kneeDeg: number,
): number {
  let [sum, weight] = [0, 0];
  for (const [muscle, strength] of Object.entries(MEMBERS[lump])) {
    const row = rowByKey.get(`${muscle} ${hipDeg} ${kneeDeg}`);
    if (!row) throw new Error(`no row for ${muscle} at hip ${hipDeg}, knee ${kneeDeg}`);
    sum += strength * row[column];
    weight += strength;
  }
  return sum / weight;
}

export const rowByKey = new Map(armRows.map((row) => [`${row.muscle} ${row.hipDeg} ${row.kneeDeg}`, row]));

function shared(total: number, strengths: Readonly<Record<string, number>>): Record<string, number> {
  const sum = Object.values(strengths).reduce((a, b) => a + b, 0);
  return Object.fromEntries(Object.entries(strengths).map(([muscle, own]) => [muscle, (own / sum) * total]));
}

function rowsOf(file: string): readonly string[][] {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));
}
