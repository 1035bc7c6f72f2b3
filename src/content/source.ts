/** One file as it comes from the disk, and its text if it is text. */
import { BAD_CHARACTER_WORDS, badCharacters } from './badCharacter.ts';
import { MOST_TEXT_BYTES } from './fileSize.ts';
import { errorAt, type Place, type Problem } from './problem.ts';
import { placeAt, sourceText, topOf, type SourceText } from './sourceText.ts';

export interface SourceFile {
  /** Relative to the content folder, `/` between folders. */
  readonly file: string;
  readonly bytes: Uint8Array;
  /** Whether it is a symbolic link, and whether that leads out of the folder; then the bytes were not read. */
  readonly link: 'no' | 'inside' | 'outside';
  /** Of a file that is longer than `mostBytes` of its kind; then the bytes were not read. */
  readonly unreadBytes?: number;
  /** What the system says where it let nobody read the file; there are no bytes then. */
  readonly closed?: string;
}

export interface Decoded {
  /** Null when the file cannot be taken as text; `problems` then says why. */
  readonly source: SourceText | null;
  readonly problems: readonly Problem[];
}

// A file of nothing but slips would print for ever; the first tell enough.
const MOST_BAD_CHARACTERS = 20;

/** The file's text: UTF-8 with or without byte order mark, LF or CRLF, at most 256 kB, no characters that mislead. */
export function decode({ file, bytes, link, unreadBytes = 0, closed }: SourceFile): Decoded {
  if (closed !== undefined) return refused(cannotRead(file, closed));
  if (link === 'outside') return refused(linkOut(file));
  const length = Math.max(bytes.length, unreadBytes);
  if (length > MOST_TEXT_BYTES) return refused(tooLarge(file, length));
  if (looksLikeUtf16(bytes)) return refused(notUtf8(topOf(file), 'UTF-16'));
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const wrongByte = firstDifference(bytes, new TextEncoder().encode(text));
  if (wrongByte !== null) return refused(brokenByte(file, bytes, wrongByte));
  return decodedText(file, text);
}

// Without its byte order mark, lines ended by a single line feed: neither moves a line or a column.
function decodedText(file: string, text: string): Decoded {
  const source = sourceText(file, text.replace(/^\uFEFF/, '').replaceAll('\r\n', '\n'));
  const problems = badCharacters(source.text)
    .slice(0, MOST_BAD_CHARACTERS)
    .map(({ index, name }) =>
      errorAt(placeAt(source, index), 'bad-character', { found: name, ...BAD_CHARACTER_WORDS }),
    );
  return { source: problems.length === 0 ? source : null, problems };
}

function refused(problem: Problem): Decoded {
  return { source: null, problems: [problem] };
}

function linkOut(file: string): Problem {
  return errorAt(topOf(file), 'link-out', {
    found: 'a link that leads out of the folder or to nothing',
    expected: 'a file of its own, or a link that stays inside',
    fix: 'copy the file here in place of the link',
  });
}

function cannotRead(file: string, found: string): Problem {
  return errorAt(topOf(file), 'cannot-read', {
    found,
    expected: 'a file that may be read',
    fix: 'give yourself leave to read it, or copy it here again',
  });
}

function tooLarge(file: string, length: number): Problem {
  return errorAt(topOf(file), 'too-large', {
    found: `${Math.ceil(length / 1024)} kB`,
    expected: `at most ${MOST_TEXT_BYTES / 1024} kB`,
    fix: 'shorten the file; a card or a consult needs a few kB',
  });
}

function notUtf8(place: Place, found: string): Problem {
  return errorAt(place, 'not-utf8', {
    found,
    expected: 'text in UTF-8',
    fix: 'save the file again with the encoding UTF-8',
  });
}

// Text begins with a letter or a hyphen, so a nought among the first two bytes is the other half of one.
function looksLikeUtf16([first, second]: Uint8Array): boolean {
  const mark = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  return mark || (first === 0) !== (second === 0);
}

// What cannot be decoded becomes U+FFFD, which encodes to other bytes than those that were there.
function firstDifference(bytes: Uint8Array, again: Uint8Array): number | null {
  const index = bytes.findIndex((byte, at) => byte !== again[at]);
  if (index !== -1) return index;
  return bytes.length === again.length ? null : bytes.length - 1;
}

function brokenByte(file: string, bytes: Uint8Array, index: number): Problem {
  const before = new TextDecoder().decode(bytes.subarray(0, index));
  const hex = (bytes[index] ?? 0).toString(16).toUpperCase().padStart(2, '0');
  return notUtf8(placeAt(sourceText(file, before), before.length), `a byte (${hex}) that is not UTF-8`);
}
