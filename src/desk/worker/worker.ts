/** The thread that decides: it is given texts and hands back what is made of them. It asks nobody for anything. */
import { decode } from '../../content/source.ts';
import { FOLDERS } from '../../content/kind.ts';
import type { PageAssets, PageFiles } from '../../outputs/html/assets.ts';
import type { PaperTokens } from '../../outputs/pdf/sheet.ts';
import type { Sealing } from '../../post/sealedFiles.ts';
import type { DeskDress, DeskData } from '../deskData.ts';
import type { Answer, Ask, View } from '../talk.ts';
import { openBench, type Bench } from './bench.ts';
import { landmarksOf } from './landmarks.ts';
import { comesBy, laterScript } from './laterScript.ts';
import { makeSheet, makeSteps } from './make.ts';
import type { Makers } from './outputs.ts';
import type { PaperScript } from './paper.ts';
import { personOf } from './person.ts';
import type { PostScript } from './post.ts';
import { viewOf } from './view.ts';

interface WorkerScope {
  importScripts(address: string): void;
  postMessage(answer: Answer): void;
  onmessage: ((event: { readonly data: Ask }) => void) | null;
}

const scope = globalThis as unknown as WorkerScope & Record<string, unknown>;
const load = scope.importScripts.bind(scope);

// A worker's script has no policy of its own where a server sends none: nothing in it can speak to anybody from here on.
for (const way of [
  'fetch',
  'XMLHttpRequest',
  'WebSocket',
  'EventSource',
  'WebTransport',
  'importScripts',
  'Worker',
])
  scope[way] = undefined;

let bench: Bench | null = null;
let faces: DeskData['pages'] | null = null;
let assets: PageAssets | null = null;
let paper: Makers['paper'] = null;
let post: PostScript | null = null;
let sealedDress: Sealing['dress'] | null = null;

scope.onmessage = ({ data }) => {
  void answered(data).then(
    (answer) => scope.postMessage(answer),
    (error: unknown) =>
      scope.postMessage({
        answer: 'fault',
        at: 'at' in data ? data.at : null,
        text: error instanceof Error ? error.message : String(error),
      }),
  );
};

async function answered(ask: Ask): Promise<Answer> {
  switch (ask.ask) {
    case 'bench':
      comesBy(() => load(ask.later));
      return opened(ask.library);
    case 'dress':
      return dressed(ask.dress);
    case 'view':
      return { answer: 'view', at: ask.at, view: await viewed(ask) };
    case 'make':
      return made(ask);
    case 'paper':
      return withPaper(ask);
    case 'post':
      return withPost(ask);
    case 'read':
      return { answer: 'read', at: ask.at, ...textOf(ask.name, ask.bytes) };
    case 'openLog':
      return {
        answer: 'openLog',
        at: ask.at,
        ...laterScript().openLog({ file: ask.name, bytes: ask.bytes, link: 'no' }, ask.whose),
      };
    case 'writeLog':
      return {
        answer: 'writeLog',
        at: ask.at,
        ...laterScript().writeLog(ask.lines, ask.whose, there(bench).library.exercises),
      };
    case 'review':
      return {
        answer: 'review',
        at: ask.at,
        review: laterScript().reviewSheet(ask.sheet, ask.day, there(bench)),
      };
    case 'person':
      return { answer: 'person', at: ask.at, person: personOf(ask.sheet, there(bench)) };
    case 'landmarks':
      return { answer: 'landmarks', at: ask.at, landmarks: landmarksOf(ask, there(bench)) };
  }
}

let newestView = 0;

/** Null where a newer text came meanwhile. */
async function viewed({ at, sheet }: Extract<Ask, { ask: 'view' }>): Promise<View | null> {
  newestView = at;
  const steps = makeSteps(sheet, there(bench));
  for (;;) {
    await turn();
    if (at !== newestView) return null;
    const step = steps.next();
    if (step.done === true) return viewOf(step.value, assets?.photos);
  }
}

/** What waits is heard first. */
function turn(): Promise<void> {
  return new Promise((heard) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      heard();
    };
    port2.postMessage(null);
  });
}

function opened(library: DeskData): Answer {
  bench = openBench(library);
  faces = library.pages;
  return { answer: 'bench' };
}

function dressed({ photos, ...dress }: DeskDress): Answer {
  const files: PageFiles = { ...there(faces), ...dress };
  const { pageAssets, openedPhotos } = laterScript();
  assets = { ...pageAssets(files, there(bench).logo), photos: openedPhotos(photos) };
  return { answer: 'dress' };
}

async function made({ at, name, sheet, firstName, seal }: Extract<Ask, { ask: 'make' }>): Promise<Answer> {
  const done = makeSheet(sheet, there(bench));
  if ('problems' in done) throw new Error('there is no programme to make it from');
  const makers = {
    assets,
    paper,
    post,
    sealing: seal === null ? null : { ...seal, dress: there(sealedDress) },
  };
  return {
    answer: 'made',
    at,
    name,
    ...(await laterScript().outputOf(name, done.programme, firstName, makers)),
  };
}

/** pdfkit is parsed once; so are the two faces, which forget the words of a leaflet with it. */
function withPaper({ script, regular, bold }: Extract<Ask, { ask: 'paper' }>): Answer {
  load(script);
  const { openFonts, pdf } = there((scope as unknown as { loadleafPaper?: PaperScript }).loadleafPaper);
  const tokens = there(faces).tokens as unknown as PaperTokens;
  paper = { pdf, assets: { fonts: openFonts(regular, bold), tokens, logo: there(bench).logo } };
  return { answer: 'paper' };
}

function withPost({ script, dress }: Extract<Ask, { ask: 'post' }>): Answer {
  load(script);
  post = there((scope as unknown as { loadleafPost?: PostScript }).loadleafPost);
  sealedDress = dress;
  return { answer: 'post' };
}

function textOf(name: string, bytes: Uint8Array) {
  const { source, problems } = decode({ file: `${FOLDERS.consult}/${name}`, bytes, link: 'no' });
  // The bytes are text; what stands in them is kept as it stands, line ends too.
  return {
    text: source === null ? null : new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes),
    problems,
  };
}

function there<T>(one: T | null | undefined): T {
  if (one === null || one === undefined) throw new Error('asked before the library was read');
  return one;
}
