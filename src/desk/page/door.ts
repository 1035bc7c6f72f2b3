/** The door of `serve` to the folder of the consults: same origin, and a key that only its own page is given. */

/** Put into the page by `serve`, and by nobody else. */
const key = document.querySelector<HTMLMetaElement>('meta[name="loadleaf-door"]')?.content ?? null;

export function isThere(): boolean {
  return key !== null;
}

function asked(path: string, init: RequestInit = {}): Promise<Response> {
  const headers = { ...(init.headers as Record<string, string> | undefined), 'x-loadleaf-key': key ?? '' };
  return fetch(new URL(`../../.door/${path}`, location.href), { ...init, headers, cache: 'no-store' });
}

/** Of the consults and logs that lie there. */
export async function names(): Promise<readonly string[]> {
  const answer = await asked('consults');
  return answer.ok ? ((await answer.json()) as readonly string[]) : [];
}

export async function get(name: string): Promise<string> {
  const answer = await asked(`consults/${encodeURIComponent(name)}`);
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await answer.arrayBuffer());
}

/** Writes where what was read still stands (null: nothing); else writes nothing and gives what stands there now. */
export async function put(name: string, text: string, known: string | null): Promise<string | null> {
  const answer = await asked(`consults/${encodeURIComponent(name)}`, {
    method: 'PUT',
    headers: {
      'content-type': 'text/plain; charset=utf-8',
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
