/** What was opened, by a press or a drop, is laid on the desk: consults with their earlier revisions, and logs. */
import { MOST_TEXT_BYTES } from '../../content/fileSize.ts';
import { consultTooLargeText, laidText, notOpenedText, tooLargeText } from '../../messages/en/desk/files.ts';
import { pathOf, valueIn } from '../consult/path.ts';
import { valueOf } from '../consult/consultText.ts';
import { takeLog } from './logState.ts';
import { lay, others, said } from './state.ts';
import { read } from './thread.ts';
import { isUnsaved } from './unsaved.ts';

/** The longest consult that is read; longer ones are not even opened. */
const MOST_BYTES = 256 * 1024;

/** Of several consults the highest revision is laid on the desk; the others are what went before. */
export async function openFiles(
  files: readonly File[],
  handle: FileSystemFileHandle | null = null,
): Promise<void> {
  const logs = files.filter(isLog);
  const texts = await textsOf(files.filter((one) => !isLog(one)));
  if (texts === null) return;
  const [own, ...before] = texts.sort((a, b) => revisionOf(b.text) - revisionOf(a.text));
  if (own === undefined) return openLogs(logs);
  if (isUnsaved()) return;
  lay(
    own.text,
    { name: own.name, text: own.text, handle, isInFolder: false },
    before.map((one) => ({ file: `consults/${one.name}`, text: one.text })),
  );
  said.value = laidText(own.name);
  await openLogs(logs);
}

function isLog({ name }: File): boolean {
  return name.endsWith('.csv');
}

/** Null, and said, where one of them cannot be read: then none is opened. */
async function textsOf(files: readonly File[]): Promise<{ name: string; text: string }[] | null> {
  const texts: { name: string; text: string }[] = [];
  for (const file of files) {
    if (file.size > MOST_BYTES) {
      said.value = consultTooLargeText(file.name, file.size, MOST_BYTES);
      return null;
    }
    const { text, problems } = await read(file.name, await bytesOf(file));
    if (text === null) {
      said.value = notOpenedText(file.name, problems[0] ?? null);
      return null;
    }
    texts.push({ name: file.name, text });
  }
  return texts;
}

async function bytesOf(file: File): Promise<Uint8Array> {
  return new Uint8Array(await file.arrayBuffer());
}

function revisionOf(text: string): number {
  const revision = valueIn(valueOf(text), pathOf('revision'));
  return typeof revision === 'number' ? revision : 0;
}

/** Beside the consult on the desk, which stays. */
export async function openEarlier(files: readonly File[]): Promise<void> {
  const texts = await textsOf(files.filter((one) => !isLog(one)));
  if (texts === null) return;
  others.value = texts.map(({ name, text }) => ({ file: `consults/${name}`, text }));
  await openLogs(files.filter(isLog));
}

export async function openLogs(files: readonly File[]): Promise<void> {
  for (const file of files) {
    if (file.size <= MOST_TEXT_BYTES) await takeLog(file.name, await bytesOf(file));
    else said.value = tooLargeText(file.name, file.size, MOST_TEXT_BYTES);
  }
}
