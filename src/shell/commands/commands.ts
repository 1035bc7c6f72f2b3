/** The commands: their words, their help, and the room each one loads when it is called. */
import type { Flags } from '../flags.ts';
import type { OptionName } from '../options.ts';
import type { Report } from '../report.ts';

export interface Command {
  readonly says: string;
  /** Words after the command as the help shows them; `fewest` and `most` count them. */
  readonly words: string;
  readonly fewest: number;
  readonly most: number;
  /** Options of its own besides the shared ones. */
  readonly options: readonly OptionName[];
  readonly example: string;
  readonly run: (flags: Flags, words: readonly string[], report: Report) => Promise<number>;
}

export const COMMANDS = {
  check: {
    says: 'read every file and say what is wrong; writes nothing',
    words: '',
    fewest: 0,
    most: 0,
    options: ['against', 'public'],
    example: 'loadleaf check --content library',
    run: async (flags, _, report) =>
      flags.public === null
        ? (await import('./check.ts')).check(flags, report)
        : (await import('./checkPublic.ts')).checkPublic(flags.public, flags, report),
  },
  build: {
    says: 'write the library and all leaflets, or only those named',
    words: '[alias...]',
    fewest: 0,
    most: Infinity,
    options: ['part', 'verify', 'fridge', 'sealed', 'site', 'secret'],
    example: 'loadleaf build otter --out leaflets',
    run: async (flags, aliases, report) => (await import('./build.ts')).build(flags, aliases, report),
  },
  join: {
    says: 'make one site of the parts that were built apart',
    words: '<dir...>',
    fewest: 1,
    most: Infinity,
    options: [],
    example: 'loadleaf join part-1 part-2 --out site',
    run: async (flags, parts, report) => (await import('./join.ts')).join(flags, parts, report),
  },
  explain: {
    says: "say where every number of a person's programme comes from",
    words: '<alias>',
    fewest: 1,
    most: 1,
    options: [],
    example: 'loadleaf explain otter',
    run: async (flags, [alias = ''], report) => (await import('./explain.ts')).explain(flags, alias, report),
  },
  estimate: {
    says: 'say what the body model makes of one card',
    words: '<card>',
    fewest: 1,
    most: 1,
    options: ['height', 'mass', 'load', 'hip-cap', 'compression-cap', 'tension-cap', 'demand-cap'],
    example: 'loadleaf estimate hip-hinge --height 1.75 --mass 70 --load 20',
    run: async (flags, [card = ''], report) => (await import('./estimate.ts')).estimate(flags, card, report),
  },
  review: {
    says: 'look back by the log, and say what comes next',
    words: '<alias>',
    fewest: 1,
    most: 1,
    options: ['log', 'write'],
    example: 'loadleaf review otter --write',
    run: async (flags, [alias = ''], report) => (await import('./review.ts')).review(flags, alias, report),
  },
  serve: {
    says: 'build, show at 127.0.0.1, and follow every save',
    words: '',
    fewest: 0,
    most: 0,
    options: ['port'],
    example: 'loadleaf serve --port 8080',
    run: async (flags, _, report) => (await import('./serve.ts')).serve(flags, report),
  },
  new: {
    says: 'write a starter, the next revision, or the clinic secret',
    words: '<kind> <id>',
    fewest: 1,
    most: 2,
    options: ['secret'],
    example: 'loadleaf new exercise wall-bridge',
    run: async (flags, [kind = '', id = ''], report) =>
      kind === 'secret'
        ? (await import('./newSecret.ts')).writeSecret(flags, id, report)
        : (await import('./new.ts')).writeNew(flags, kind, id, report),
  },
} as const satisfies Record<string, Command>;

export type CommandName = keyof typeof COMMANDS;

export function isCommand(name: string): name is CommandName {
  return Object.hasOwn(COMMANDS, name);
}
