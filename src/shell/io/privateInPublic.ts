/** What gives away that a file belongs to one person, though it lies in a folder that is to be published. */

export interface Found {
  /** Within the folder, `/` between folders. */
  readonly path: string;
  readonly why: string;
}

/** Names of a person's set, and of what is about persons. */
const NAMES =
  /^(?:leaflet\.(?:html|pdf)|record\.(?:html|json)|(?:note|letter|message|link|why)\.txt|message\.eml|sessions\.ics|fridge\.pdf|issued\.jsonl?|sealed\.json|PRIVATE\.txt|.+-r\d+\.(?:md|log\.csv))$/i;

/**
 * What only a person's files hold, whatever they are called: each with its value, for the desk's own programs hold the
 * words around it.
 */
const SIGNS: readonly (readonly [sign: RegExp, why: string])[] = [
  [/data-mark="[0-9a-f]{8}"/, 'a page of one person'],
  [/"mark": "[0-9a-f]{8}"/, 'a record of one person'],
  [/^Mark [0-9a-f]{8}\r?$|\bMark [0-9a-f]{8}\.$/m, 'a text of one person'],
  [/loadleaf-secret-1 [A-Za-z0-9_-]{43}/, 'the clinic secret'],
  [/loadleaf-log 1 [a-z0-9]/, "a person's log"],
  [/BEGIN:VCALENDAR/, "a person's calendar"],
  [/X-Unsent:/, "a person's message"],
  [/%PDF-\d\.\d/, 'a PDF; the library has none'],
];

/** In the page that stands where a leaflet was withdrawn, and in no other. */
export const WITHDRAWN_SIGN = 'data-sealed="withdrawn"';

const SEALED = /^for\/([^/]+)\/(.*)$/;
const HOLDER = /<script type="application\/jose" id="sealed-leaflet">\s*([A-Za-z0-9_.-]*)\s*<\/script>/g;

/** Reasons against the file; `keys`: those of sealed leaflets, as they stand in links. */
export function privateIn(path: string, bytes: Buffer, keys: readonly string[]): Found[] {
  const name = path.split('/').at(-1) ?? '';
  const [, id, rest] = SEALED.exec(path) ?? [];
  const text = bytes.toString('latin1');
  const why = [
    ...(NAMES.test(name) ? ["a name of a person's file"] : []),
    ...SIGNS.filter(([sign]) => sign.test(text)).map(([, reason]) => reason),
    ...(keys.some((key) => bytes.includes(key)) ? ['the key of a sealed leaflet'] : []),
    ...(id === undefined || rest === undefined ? [] : notSealed(id, rest, bytes.toString('utf8'))),
  ];
  return [...new Set(why)].map((reason) => ({ path, why: reason }));
}

/** In `for/` there is nothing but sealed pages, their workers, and pages that say a leaflet is withdrawn. */
function notSealed(id: string, rest: string, text: string): string[] {
  if (!/^[0-9a-f]{32}$/.test(id)) return ['a folder that is no sealed leaflet'];
  if (rest === 'sw.js') return [];
  if (rest !== 'index.html') return ['a file beside a sealed leaflet'];
  const held = [...text.matchAll(HOLDER)];
  if (text.includes(WITHDRAWN_SIGN) && held.length === 0) return [];
  const [one] = held;
  return held.length === 1 && isJwe(one?.[1] ?? '') ? [] : ['a page that holds no sealed leaflet'];
}

function isJwe(text: string): boolean {
  const [header = '', ...rest] = text.split('.');
  const said = Buffer.from(header, 'base64url').toString('utf8');
  return rest.length === 4 && /^\{"alg":"dir","enc":"A256GCM",/.test(said);
}
