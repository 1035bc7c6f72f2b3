/** The log as a file beside the consult: in its folder where it came from one, else onto the disk as a download. */
import { logClashText, notSavedText, savedText } from '../../messages/en/desk/files.ts';
import { folder, lieThere } from './folder.ts';
import { knownLog, logNow, savedAs } from './logState.ts';
import { saveAs } from './saveAs.ts';
import { logName, origin, said } from './state.ts';

export async function saveLog(): Promise<void> {
  const [name, text] = [logName.value, await logNow()];
  if (name === null || text === null) return;
  const put = origin.value.isInFolder ? (folder.value?.put ?? null) : null;
  try {
    if (put === null) saveAs(name, text, 'text/csv');
    else if ((await put(name, text, knownLog.value)) !== null) {
      said.value = logClashText(name);
      return;
    }
    savedAs(text);
    said.value = savedText(name);
    if (put !== null) lieThere(name);
  } catch (error) {
    said.value = notSavedText(name, error instanceof Error ? error.message : String(error));
  }
}
