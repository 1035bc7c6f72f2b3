/** A person's leaflet sealed: the files of its folder on the web, and the link that opens it. */
import { sealedWords } from '../messages/en/patient/sealed.ts';
import { policyOf } from '../outputs/html/sealed/policy.ts';
import { sealedPage, type SealedAssets } from '../outputs/html/sealed/sealedPage.ts';
import type { Link } from '../outputs/mail/messageText.ts';
import { fragmentOf, sealingKeys } from '../outputs/sealed/keys.ts';
import { seal } from '../outputs/sealed/seal.ts';
import type { Programme } from '../programme/programme.ts';

/** What dresses the pages of sealed leaflets, and their service workers. */
export interface SealedDress {
  readonly assets: SealedAssets;
  readonly worker: string;
  readonly withdrawnWorker: string;
}

/** What seals: the secret, and where the site will stand. */
export interface Sealing {
  readonly site: string;
  readonly secret: Uint8Array<ArrayBuffer>;
  readonly dress: Pick<SealedDress, 'assets' | 'worker'>;
}

export interface Sealed {
  readonly alias: string;
  /** Below the output folder. */
  readonly files: readonly { readonly path: string; readonly bytes: string }[];
  readonly link: Link;
  /** To be told by telephone; null where none are asked for. */
  readonly words: string | null;
}

/** `page`: the leaflet's HTML. */
export async function sealedOf(
  programme: Programme,
  page: Uint8Array | string,
  { site, secret, dress }: Sealing,
): Promise<Sealed> {
  const { alias, revision, clinic, post } = programme;
  const keys = await sealingKeys(secret, alias);
  const html = typeof page === 'string' ? page : new TextDecoder().decode(page);
  const payload = { loadleaf: 1 as const, revision, withdrawOn: post.withdrawOn, html };
  const jwe = await seal(payload, keys, post.words);
  const text = sealedPage(jwe, sealedWords(clinic), policyOf(html), dress.assets);
  return {
    alias,
    files: filesAt(keys.id, text, dress.worker),
    link: { address: `${site}for/${keys.id}/#${fragmentOf(keys)}`, hasWords: post.words },
    words: post.words ? keys.words : null,
  };
}

/** Page and service worker in the folder of that name. */
export function filesAt(id: string, page: string, worker: string): Sealed['files'] {
  return [
    { path: `public/for/${id}/index.html`, bytes: page },
    { path: `public/for/${id}/sw.js`, bytes: worker },
  ];
}
