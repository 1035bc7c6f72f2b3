/** The door of `serve` to the folder of the consults: same origin, and a key that only its own page is given. */

/** Put into the page by `serve`, and by nobody else. */
const key = document.querySelector<HTMLMetaElement>('meta[name="loadleaf-door"]')?.content ?? null;

export function isThere(): boolean {
  return key !== null;
}

export interface Person {
  readonly alias: string;
  readonly revision: number;
  readonly reviewOn: string | null;
  readonly files: readonly string[];
}

function asked(path: string, init: RequestInit = {}): Promise<Response> {
  const headers = { ...(init.headers as Record<string, string> | undefined), 'x-loadleaf-key': key ?? '' };
  return fetch(new URL(`../../.door/${path}`, location.href), { ...init, headers, cache: 'no-store' });
}

export async function persons(): Promise<readonly Person[]> {
  const answer = await asked('consults');
  return answer.ok ? ((await answer.json()) as readonly Person[]) : [];
}

export async function get(name: string): Promise<string> {
  const answer = await asked(`consults/${encodeURIComponent(name)}`);
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  return answer.text();
}

/** Writes where what was read still stands (null: nothing); else writes nothing and gives what stands there now. */
export async function put(name: string, text: string, known: string | null): Promise<string | null> {
  const answer = await asked(`consults/${encodeURIComponent(name)}`, {
    method: 'PUT',
    headers: {
      'content-type': 'text/markdown; charset=utf-8',
      'if-match': known === null ? 'none' : await hashOf(known),
    },
    body: text,
  });
  if (answer.status === 412) return answer.text();
  if (!answer.ok) throw new Error(`${answer.status} ${(await answer.text()).trim()}`);
  return null;
}

async function hashOf(text: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
