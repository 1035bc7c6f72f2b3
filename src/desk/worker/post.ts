/** The script that is fetched with the first message, calendar or sealed leaflet: what writes them. */
import * as calendar from '../../outputs/calendar/index.ts';
import * as mail from '../../outputs/mail/index.ts';
import { archived } from '../../post/archive.ts';
import { sealedOf } from '../../post/sealedFiles.ts';

export interface PostScript {
  readonly archived: typeof archived;
  readonly calendar: typeof calendar;
  readonly mail: typeof mail;
  readonly sealedOf: typeof sealedOf;
}

const script: PostScript = { archived, calendar, mail, sealedOf };
(globalThis as { loadleafPost?: PostScript }).loadleafPost = script;
