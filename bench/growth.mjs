// How a build grows: 10 to 1,000 persons, 61 to 2,000 cards; from nothing and with nothing changed, time, memory, and the
// exponent between the two largest. Run after `npm run prepare`; some minutes. `--json FILE` keeps the points for
// bench/growthFigure.mjs, `--most N` leaves out what is larger.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { filesOfMany } from './cards.mjs';
import { measured } from './command.mjs';
import { tell } from './row.mjs';
import { libraryFiles, TOP } from './shipped.mjs';

const PERSONS = [10, 100, 1000];
const CARDS = [libraryFiles.filter(({ file }) => file.startsWith('exercises/')).length, 500, 2000];
const MEMORY_LIMIT_MB = 400;
const UNCHANGED_LIMIT_S = 1;

const { json, most } = parseArgs({ options: { json: { type: 'string' }, most: { type: 'string' } } }).values;
const demo = ['otter', 'marten', 'heron'].map((alias) =>
  readFileSync(join(TOP, 'content', 'consults', `${alias}-r1.md`), 'utf8'),
);

const persons = await pointsOf(PERSONS, withPersons);
const cards = await pointsOf(CARDS, withCards);
tellCurve('persons', persons, UNCHANGED_LIMIT_S);
tellCurve('cards', cards);
if (json !== undefined) writeFileSync(json, `${JSON.stringify({ persons, cards }, null, 2)}\n`);

/** Of each size, both builds of a folder that `fill` has filled. */
async function pointsOf(sizes, fill) {
  const points = [];
  for (const size of sizes.filter((one) => one <= Number(most ?? Infinity))) {
    const folder = mkdtempSync(join(tmpdir(), 'bench-growth-'));
    try {
      fill(folder, size);
      const words = ['build', '--quiet', '--content', join(folder, 'content'), '--out', join(folder, 'site')];
      const { seconds, memoryMb } = await measured(words);
      const unchanged = await measured(words);
      points.push({ size, seconds, memoryMb, unchangedSeconds: unchanged.seconds });
    } finally {
      rmSync(folder, { recursive: true });
    }
  }
  return points;
}

/** The shipped library, and the demo's persons again under other aliases, in bodies a little taller and heavier. */
function withPersons(folder, count) {
  cpSync(join(TOP, 'content'), join(folder, 'content'), { recursive: true });
  for (let n = 0; n < count; n += 1) {
    const alias = `person-${n}`;
    const text = demo[n % demo.length]
      .replace(/^alias: .*$/m, `alias: ${alias}`)
      .replace(/(?<=^massKg: ).*$/m, (kg) => (Number(kg) + (n % 7) / 2).toFixed(1))
      .replace(/(?<=^heightM: ).*$/m, (m) => (Number(m) + (n % 11) / 200).toFixed(3));
    writeFileSync(join(folder, 'content', 'consults', `${alias}-r1.md`), text);
  }
}

/** The demo's persons, and a library of so many cards. */
function withCards(folder, count) {
  cpSync(join(TOP, 'content', 'consults'), join(folder, 'content', 'consults'), { recursive: true });
  for (const { file, bytes } of filesOfMany(count)) {
    const place = join(folder, 'content', file);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, bytes);
  }
}

function tellCurve(what, points, unchangedLimitS) {
  for (const { size, seconds, memoryMb, unchangedSeconds } of points) {
    const many = `${size.toLocaleString('en')} ${what}`;
    tell({ what: `build of ${many}, the whole process`, value: seconds, unit: 's' });
    tell({ what: `most memory of it`, value: memoryMb, unit: 'MB', limit: MEMORY_LIMIT_MB });
    tell({
      what: `${many} with nothing changed`,
      value: unchangedSeconds,
      unit: 's',
      ...(unchangedLimitS === undefined ? {} : { limit: unchangedLimitS }),
    });
  }
  const [before, last] = points.slice(-2);
  if (last === undefined) return;
  const exponent = Math.log(last.seconds / before.seconds) / Math.log(last.size / before.size);
  tell({
    what: `exponent of the time from ${before.size} to ${last.size} ${what}`,
    value: exponent,
    unit: '',
  });
}
