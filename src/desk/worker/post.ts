/** The script that is fetched with the first message, calendar or sealed leaflet: what writes them. */
import { archived } from '../../post/archive.ts';
import { postFiles } from '../../post/postFiles.ts';
import { sealedOf } from '../../post/sealedFiles.ts';

export interface PostScript {
  readonly archived: typeof archived;
  readonly postFiles: typeof postFiles;
  readonly sealedOf: typeof sealedOf;
}

const script: PostScript = { archived, postFiles, sealedOf };
(globalThis as { loadleafPost?: PostScript }).loadleafPost = script;
