// A library of many cards: the shipped files, and their cards again under new ids and titles, each posed a hair apart so
// that no answer of the model serves twice.
import { libraryFiles } from './shipped.mjs';

const CARDS = 500;
const WORDS = ['slow', 'evening', 'on a mat', 'with a towel', 'easier start', 'for travel', 'left first'];

const shipped = libraryFiles.filter(({ file }) => file.startsWith('exercises/'));

/** Files as content reads them, so many cards among them; never fewer than are shipped. */
export function filesOfMany(cards) {
  const more = Math.max(0, cards - shipped.length);
  return [...libraryFiles, ...Array.from({ length: more }, (_, n) => copyOf(shipped[n % shipped.length], n))];
}

export const manyFiles = filesOfMany(CARDS);

function copyOf({ file, bytes }, n) {
  const text = bytes
    .toString()
    .replace(/(?<=^title: .*)$/m, `, ${WORDS[n % WORDS.length]} ${n}`)
    .replace(/(?<=\n {4}hip: )-?[\d.]+/, (deg) => (Number(deg) + n / 1000).toFixed(3));
  return { file: file.replace('.md', `-${n}.md`), bytes: Buffer.from(text), link: 'no' };
}
