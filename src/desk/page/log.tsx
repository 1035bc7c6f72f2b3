/** The log of the consult on the desk, and the review that it leads to. */
import { FilePick } from './filePick.tsx';
import {
  LOG_CHANGED,
  LOG_LEAD,
  LOG_NEEDS,
  LOG_SAVED,
  LOG_TITLE,
  OPEN_LOG,
  SAVE_LOG,
} from '../../messages/en/desk/log.ts';
import { isEmpty } from '../log/lines.ts';
import { Grid } from './grid.tsx';
import { Review } from './review.tsx';
import { saveLog } from './saveLog.ts';
import { isLogChanged, lines, whose } from './logState.ts';
import { openLogs } from './opening.ts';
import { logName } from './state.ts';

export function Log() {
  const isThere = lines.value.some((line) => !isEmpty(line));
  return (
    <details class="log" open={isThere || undefined}>
      <summary>{LOG_TITLE}</summary>
      <p class="quiet">{whose.value === null ? LOG_NEEDS : LOG_LEAD}</p>
      <div class="bar">
        <OpenLog />
        <button
          type="button"
          data-make="log"
          disabled={!isThere || whose.value === null}
          onClick={() => void saveLog()}
        >
          {SAVE_LOG}
        </button>
        <span class="filename">
          {logName.value}
          {isThere ? `, ${isLogChanged.value ? LOG_CHANGED : LOG_SAVED}` : ''}
        </span>
      </div>
      {whose.value === null ? null : <Grid />}
      <Review />
    </details>
  );
}

function OpenLog() {
  return (
    <FilePick opens="log" words={OPEN_LOG} accept=".csv,text/csv,text/plain" multiple onFiles={openLogs} />
  );
}
