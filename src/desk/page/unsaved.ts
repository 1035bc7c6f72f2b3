/** What is on the desk may stand nowhere else: nothing is laid over it before it is saved or cleared. */
import { notSavedYetText } from '../../messages/en/desk/persons.ts';
import { isLogChanged } from './logState.ts';
import { fileName, isChanged, said } from './state.ts';

/** Says so where something is. */
export function isUnsaved(): boolean {
  if (!isChanged.value && !isLogChanged.value) return false;
  said.value = notSavedYetText(fileName.value);
  return true;
}
