/** Tells the open pages of `serve` what became of a save. Built files know nothing of it: it is put in as they are handed out. */
import type { ServerResponse } from 'node:http';

/** The two folders of a site. */
export type Part = 'public' | 'private';

/** What a page is told; no heading, nothing to say. */
export interface Notice {
  /** Counts the builds that changed a page of the library, and those that changed a leaflet. */
  readonly builds: Readonly<Record<Part, number>>;
  readonly heading: string;
  readonly text: string;
}

export interface Live {
  readonly notice: () => Notice;
  /** Files were written: the pages of that part are to be fetched anew. */
  rebuilt(part: Part): void;
  /** What stands against the last build, or nothing with empty texts. */
  say(heading: string, text: string): void;
  /** Keeps an answer open as a stream of notices (server-sent events of the HTML standard), the present one first. */
  follow(response: ServerResponse): void;
}

/** Hidden names, which no file of a site has; below the path of the run. */
export const LIVE_SCRIPT = '/.live/page.js';
export const LIVE_WORKER = '/.live/worker.js';
export const LIVE_CHANGES = '/.live/changes';

export function liveChannel(): Live {
  const followers = new Set<ServerResponse>();
  let notice: Notice = { builds: { public: 1, private: 1 }, heading: '', text: '' };
  const tell = (next: Partial<Notice>): void => {
    notice = { ...notice, ...next };
    for (const follower of followers) follower.write(event(notice));
  };
  return {
    notice: () => notice,
    rebuilt: (part) => tell({ builds: { ...notice.builds, [part]: notice.builds[part] + 1 } }),
    say: (heading, text) => {
      if (heading !== notice.heading || text !== notice.text) tell({ heading, text });
    },
    follow: (response) => {
      followers.add(response);
      response.on('close', () => followers.delete(response));
      response.write(event(notice));
    },
  };
}

function event(notice: Notice): string {
  return `data: ${JSON.stringify(notice)}\n\n`;
}

/** A page with the script that follows the changes, and with leave for it in its policy. `way`: the path of the run. */
export function livePage(markup: string, part: Part, { builds }: Notice, way: string): string {
  const script = `<script src="${way}${LIVE_SCRIPT}" data-part="${part}" data-build="${builds[part]}" data-worker="${way}${LIVE_WORKER}" defer></script>`;
  return markup
    .replace(POLICY, (_, start: string, policy: string) => start + withLeave(policy))
    .replace('</head>', () => `${script}</head>`);
}

const POLICY = /(http-equiv="Content-Security-Policy" content=")([^"]*)/;

// The policies are our own: each names its scripts, and none lets a page ask for anything. The worker asks, not the page.
function withLeave(policy: string): string {
  const self = '&#39;self&#39;';
  const scripts = policy.replace(/script-src (?:&#39;(?:none|self)&#39;)?/, `script-src ${self} `);
  return policy.includes('worker-src') ? scripts : `${scripts}; worker-src ${self}`;
}
