/** The page's side of the worker: questions in the order they are asked, and of views only the newest. */
import type { Sealing } from '../../post/sealedFiles.ts';
import type {
  Answer,
  Ask,
  Fetched,
  Landmark,
  PersonShown,
  ReviewOn,
  ReviewShown,
  SheetText,
  View,
} from '../talk.ts';
import type { Problem } from '../../content/problem.ts';
import type { LogHead } from '../../content/log/format.ts';
import type { LogLine } from '../log/lines.ts';
import type { DeskDress, DeskData } from '../deskData.ts';
import type { OpenedLog, WrittenLog } from '../worker/logSheet.ts';
import { nearby } from './nearby.ts';

type Waiting = (answer: Answer) => void;

export class Fault extends Error {}

let worker: Worker | null = null;
let count = 0;
const waiting = new Map<number | string, Waiting>();

function open(): Worker {
  // Its name tells it where the reader of YAML lies.
  const one = new Worker(nearby('worker'), { name: nearby('yaml') });
  one.onmessage = ({ data }: MessageEvent<Answer>) => {
    const key = 'at' in data && data.at !== null ? data.at : data.answer;
    const heard = waiting.get(key) ?? (data.answer === 'fault' ? [...waiting.values()][0] : undefined);
    waiting.delete(key);
    heard?.(data);
  };
  one.onerror = ({ message }) => {
    for (const heard of waiting.values()) heard({ answer: 'fault', at: null, text: message });
    waiting.clear();
  };
  return one;
}

function asked(ask: Ask, key: number | string): Promise<Answer> {
  worker ??= open();
  const thread = worker;
  return new Promise((resolve, reject) => {
    waiting.set(key, (answer) =>
      answer.answer === 'fault' ? reject(new Fault(answer.text)) : resolve(answer),
    );
    thread.postMessage(ask);
  });
}

export async function readLibrary(library: DeskData): Promise<void> {
  await asked({ ask: 'bench', library, later: nearby('later') }, 'bench');
}

let newestView = 0;

/** Typing goes on meanwhile; what was asked before is given up. */
export function look(sheet: SheetText, show: (view: View) => void, fail: (text: string) => void): void {
  const at = (newestView = ++count);
  asked({ ask: 'view', at, sheet }, at).then(
    (answer) => {
      if (at === newestView && answer.answer === 'view' && answer.view !== null) show(answer.view);
    },
    (error: unknown) => {
      if (at === newestView) fail(error instanceof Error ? error.message : String(error));
    },
  );
}

let paper: Promise<void> | null = null;

/** The script and the faces that draw PDFs come once, when they are first asked for. */
function withPaper(): Promise<void> {
  paper ??= (async () => {
    const [regular, bold] = await Promise.all([bytesOf('regular'), bytesOf('bold')]);
    await asked({ ask: 'paper', script: nearby('paper'), regular, bold }, 'paper');
  })();
  paper.catch(() => (paper = null));
  return paper;
}

async function bytesOf(name: 'regular' | 'bold'): Promise<Uint8Array> {
  const answer = await fetch(nearby(name));
  if (!answer.ok) throw new Fault(`${name} could not be fetched: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

let dress: Promise<void> | null = null;

/** Style and scripts of the pages that are made, and the photos on them. */
export function withDress(): Promise<void> {
  dress ??= (async () => {
    const answer = await fetch(nearby('dress'));
    if (!answer.ok) throw new Fault(`dress could not be fetched: ${answer.status}`);
    await asked({ ask: 'dress', dress: (await answer.json()) as DeskDress }, 'dress');
  })();
  dress.catch(() => (dress = null));
  return dress;
}

let post: Promise<void> | null = null;

/** So does what writes the post, and what dresses a sealed leaflet. */
function withPost(): Promise<void> {
  post ??= (async () => {
    const answer = await fetch(nearby('sealing'));
    if (!answer.ok) throw new Fault(`sealing could not be fetched: ${answer.status}`);
    const sealing = (await answer.json()) as Sealing['dress'];
    await asked({ ask: 'post', script: nearby('post'), dress: sealing }, 'post');
  })();
  post.catch(() => (post = null));
  return post;
}

const FETCHING: Readonly<Record<Fetched, () => Promise<void>>> = {
  dress: withDress,
  paper: withPaper,
  post: withPost,
};

export type Making = Omit<Extract<Ask, { ask: 'make' }>, 'ask' | 'at'> & {
  readonly needs: readonly Fetched[];
};

export async function make({ needs, ...making }: Making): Promise<Extract<Answer, { answer: 'made' }>> {
  const { name } = making;
  for (const one of needs) await FETCHING[one]();
  const answer = await asked({ ask: 'make', at: ++count, ...making }, count);
  if (answer.answer !== 'made') throw new Fault(`${name}: ${answer.answer}`);
  return answer;
}

export async function read(
  name: string,
  bytes: Uint8Array,
): Promise<{ readonly text: string | null; readonly problems: readonly Problem[] }> {
  const answer = await asked({ ask: 'read', at: ++count, name, bytes }, count);
  return answer.answer === 'read' ? answer : { text: null, problems: [] };
}

export async function person(sheet: SheetText): Promise<PersonShown | null> {
  const answer = await asked({ ask: 'person', at: ++count, sheet }, count);
  return answer.answer === 'person' ? answer.person : null;
}

export async function landmarks(
  card: string,
  protocol: string,
  heightM: number | null,
  massKg: number | null,
): Promise<readonly Landmark[]> {
  const answer = await asked({ ask: 'landmarks', at: ++count, card, protocol, heightM, massKg }, count);
  return answer.answer === 'landmarks' ? answer.landmarks : [];
}

export async function openLog(name: string, bytes: Uint8Array, whose: LogHead): Promise<OpenedLog> {
  const answer = await asked({ ask: 'openLog', at: ++count, name, bytes, whose }, count);
  return answer.answer === 'openLog' ? answer : { lines: [], problems: [] };
}

export async function writeLog(lines: readonly LogLine[], whose: LogHead): Promise<WrittenLog> {
  const answer = await asked({ ask: 'writeLog', at: ++count, lines, whose }, count);
  return answer.answer === 'writeLog' ? answer : { text: '', problems: [] };
}

export async function review(
  sheet: SheetText,
  day: { readonly on: string; readonly isAsked: boolean },
): Promise<ReviewShown | null> {
  const answer = await asked({ ask: 'review', at: ++count, sheet, day: day as ReviewOn }, count);
  return answer.answer === 'review' ? answer.review : null;
}
