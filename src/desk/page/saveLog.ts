/** The log as a file beside the consult. */
import { savedText } from '../../messages/en/desk/files.ts';
import { logNow, savedAs } from './logState.ts';
import { saveAs } from './saveAs.ts';
import { logName, said } from './state.ts';

export async function saveLog(): Promise<void> {
  const [name, text] = [logName.value, await logNow()];
  if (name === null || text === null) return;
  saveAs(name, text, 'text/csv');
  savedAs(text);
  said.value = savedText(name);
}
