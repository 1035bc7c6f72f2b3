/** The command that makes the clinic secret. */
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { makeSecret, secretPlace } from '../io/secret.ts';
import type { Report } from '../report.ts';

/** `file`: where to; empty for the usual place. Exit 73 where one is there, 64 within a repository. */
export async function writeSecret(flags: Flags, file: string, report: Report): Promise<number> {
  const place = secretPlace(file === '' ? flags.secret : file);
  makeSecret(place);
  report.say(
    `${place} is written. Keep a copy where only you can reach it, and never in a repository: whoever has it opens every sealed leaflet, and without it every link changes.`,
  );
  report.answer({ ok: true, files: [place] });
  return EXIT.good;
}
