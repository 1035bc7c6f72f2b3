/** Files on their way to the disk, and what is told of them when all are there. */
import type { Problem } from '../../content/problem.ts';
import type { Sealed } from '../../post/sealedFiles.ts';
import { hashOf } from '../io/issued.ts';
import type { Finished } from '../io/ledger.ts';
import type { Written as WrittenFile } from '../io/manifest.ts';
import type { PersonSet } from '../io/personSet.ts';
import type { OutFile, Site } from '../io/site.ts';
import type { Workspace } from '../io/workspace.ts';
import { askedIn, problemsOfAsked } from './asked.ts';
import type { Chosen } from './buildAsk.ts';
import { finishedSet, keptProgrammes } from './kept.ts';
import { problemsOf, type Against } from './oneSet.ts';
import { withdrawAll } from './withdraw.ts';
import type { Shop, Work } from './work.ts';

/** What has been written so far; grows. */
export interface Written {
  readonly programmes: Chosen[];
  /** Aliases without a programme. */
  readonly failed: string[];
  readonly problems: Problem[];
  readonly sealed: Sealed[];
  /** Of the library, its pages and what they fetch; their bytes are let go. */
  readonly library: WrittenFile[];
  /** Sets in force, for the next build. */
  readonly people: (readonly [alias: string, Finished])[];
}

export interface Writing {
  readonly site: Site;
  readonly workspace: Workspace;
  readonly shop: Shop;
  readonly work: Work;
  readonly written: Written;
  /** Writes a file of the library; whether it is another than before. */
  readonly put: (file: OutFile) => boolean;
  /** Puts a person's set in force. */
  readonly issue: (set: PersonSet, chosen: Chosen) => void;
  /** Takes a person's set out of force, for what stands against the programme. */
  readonly refuse: (alias: string, against: Against) => void;
}

/** Begun with what is kept of an earlier build, and with whom their own files have stopped. */
export function writingOf(site: Site, workspace: Workspace, shop: Shop, work: Work): Writing {
  const { folders, ask, reuse } = work;
  const written: Written = {
    programmes: [...keptProgrammes(reuse)],
    failed: workspace.stopped.filter(askedIn(ask.aliases)),
    problems: problemsOfAsked(ask.aliases, workspace),
    sealed: [],
    library: [],
    people: [],
  };
  return {
    site,
    workspace,
    shop,
    work,
    written,
    put: (file) => {
      written.library.push({ path: file.path, sha256: hashOf(file.bytes) });
      return site.write(file);
    },
    issue: (set, chosen) => {
      const { left, files } = site.issue(set);
      const key = reuse.keys.get(set.alias);
      if (left.length === 0 && key !== undefined)
        written.people.push(...finishedSet(folders.out, files, key, chosen));
      written.programmes.push(chosen);
    },
    refuse: (alias, against) => {
      const why = problemsOf(against, workspace);
      withdrawAll(site, [alias], why, workspace);
      written.problems.push(...why);
      written.failed.push(alias);
    },
  };
}
