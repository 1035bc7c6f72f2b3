/** Reads the words of a command line; every slip stops with 64 and names the nearest right word. */
import { parseArgs } from 'node:util';
import { COMMANDS, isCommand, type Command, type CommandName } from './commands/commands.ts';
import { EXIT } from './exit.ts';
import { Stop } from './io/stop.ts';
import { flagsOf, type Flags, type Said } from './flags.ts';
import { nearestOf } from './nearest.ts';
import { isOption, OPTIONS, SHARED, type OptionName } from './options.ts';

export type CommandLine =
  | { readonly asks: 'help'; readonly of: CommandName | null }
  | { readonly asks: 'version' }
  | {
      readonly asks: 'work';
      readonly of: CommandName;
      readonly flags: Flags;
      readonly words: readonly string[];
    };

/** `written`: the words after the name of the program. */
export function readCommandLine(written: readonly string[]): CommandLine {
  const {
    options,
    words: [name, ...words],
  } = tokensOf(written);
  if (name !== undefined && !isCommand(name)) throw unknownCommand(name);
  const said = saidTo(name ?? null, options);
  if (said.help === true) return { asks: 'help', of: name ?? null };
  if (said.version === true) return { asks: 'version' };
  if (name === undefined) throw new Stop(EXIT.usage, `name a command: ${Object.keys(COMMANDS).join(', ')}`);
  countWords(name, words);
  return { asks: 'work', of: name, flags: flagsOf(said), words };
}

/** Whether JSON, quiet and no colours were asked for, even in a line that is otherwise wrong. */
export function mannerOf(written: readonly string[]): Pick<Flags, 'json' | 'quiet' | 'color'> {
  const end = written.indexOf('--');
  const options = end === -1 ? written : written.slice(0, end);
  return {
    json: options.includes('--json'),
    quiet: options.includes('--quiet'),
    color: !options.includes('--no-color'),
  };
}

interface Tokens {
  readonly options: readonly {
    readonly written: string;
    readonly name: string;
    readonly value: string | undefined;
  }[];
  readonly words: readonly string[];
}

// Not strict: its own messages know neither our words nor the nearest one.
function tokensOf(written: readonly string[]): Tokens {
  const known = Object.entries(OPTIONS).map(([name, { takes }]) => [
    name,
    { type: takes === null ? ('boolean' as const) : ('string' as const) },
  ]);
  const { tokens } = parseArgs({
    args: [...written],
    options: { ...Object.fromEntries(known), help: { type: 'boolean', short: 'h' } },
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  return {
    options: tokens.flatMap((token) =>
      token.kind === 'option' ? [{ written: token.rawName, name: token.name, value: token.value }] : [],
    ),
    words: tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : [])),
  };
}

function saidTo(command: CommandName | null, options: Tokens['options']): Said {
  const own: readonly OptionName[] = command === null ? SHARED : [...SHARED, ...COMMANDS[command].options];
  const said: Record<string, string | true> = {};
  for (const { written, name, value } of options) {
    if (!isOption(name) || !own.includes(name)) throw unknownOption(command, written, own);
    said[name] = valueOf(name, value);
  }
  return said;
}

function valueOf(name: OptionName, value: string | undefined): string | true {
  const { takes } = OPTIONS[name];
  if (takes === null) {
    if (value !== undefined) throw new Stop(EXIT.usage, `--${name} takes no value`);
    return true;
  }
  // What begins with two hyphens is the next option, not a value.
  if (value === undefined || value.startsWith('--'))
    throw new Stop(EXIT.usage, `--${name} needs a value: --${name} <${takes}>`);
  return value;
}

function countWords(name: CommandName, words: readonly string[]): void {
  const { fewest, most, words: shown }: Command = COMMANDS[name];
  if (words.length >= fewest && words.length <= most) return;
  const needs = most === 0 ? 'takes no words' : `needs ${shown}`;
  throw new Stop(EXIT.usage, `${name} ${needs}${words.length > most ? `; found ${words.join(' ')}` : ''}`);
}

function unknownCommand(name: string): Stop {
  const near = nearestOf(name, [...Object.keys(COMMANDS), 'help', 'version']);
  return new Stop(
    EXIT.usage,
    `there is no command ${name}`,
    near === 'help' || near === 'version' ? `--${near}` : near,
  );
}

function unknownOption(command: CommandName | null, written: string, own: readonly OptionName[]): Stop {
  const near = nearestOf(written.replace(/^-+/, ''), own);
  return new Stop(
    EXIT.usage,
    `${command ?? 'loadleaf'} has no option ${written}`,
    near === null ? null : `--${near}`,
  );
}
