/** The help, for terminals of 80 columns. */
import { COMMANDS, type Command, type CommandName } from './commands/commands.ts';
import { OPTIONS, SHARED, type OptionName } from './options.ts';

const PURPOSE = [
  'Exercise cards, staged protocols and one consult file become a home exercise',
  'leaflet in HTML and PDF.',
];

const EXITS =
  'Exit: 0 good, 64 usage, 65 content, 66 no such file, 70 our fault,\n      73 or 74 cannot write, 75 another build is at work';

/** Of one command, or of the whole with null. */
export function helpOf(name: CommandName | null): string {
  return name === null ? wholeHelp() : commandHelp(name, COMMANDS[name]);
}

function wholeHelp(): string {
  const rows = Object.entries(COMMANDS).map(([name, { words, says }]) => [`${name} ${words}`, says] as const);
  return [
    'Usage: loadleaf <command> [options]',
    '',
    ...PURPOSE,
    '',
    ...columns(rows),
    '',
    'Options of every command',
    ...optionRows(SHARED),
    '',
    EXITS,
    'More: loadleaf <command> --help',
  ].join('\n');
}

function commandHelp(name: string, { words, says, options, example }: Command): string {
  return [
    `Usage: loadleaf ${[name, words, '[options]'].filter((word) => word !== '').join(' ')}`,
    '',
    `${says.charAt(0).toUpperCase()}${says.slice(1)}.`,
    '',
    'Options',
    ...optionRows([...options, ...SHARED]),
    '',
    `Example: ${example}`,
  ].join('\n');
}

function optionRows(names: readonly OptionName[]): string[] {
  return columns(
    names.map((name) => {
      const { takes, says } = OPTIONS[name];
      return [`--${name}${takes === null ? '' : ` <${takes}>`}`, says] as const;
    }),
  );
}

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`);
}
