#!/usr/bin/env node
/** The command line. Heavy rooms are imported only by the command that needs them. */
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { EXIT } from './exit.ts';
import { nearestOf } from './nearest.ts';
import type { Flags } from './flags.ts';

const VERSION = '0.1.0';
const COMMANDS = ['check', 'build', 'explain', 'estimate', 'serve'] as const;

process.exitCode = await run(process.argv);

async function run(argv: readonly string[]): Promise<number> {
  const program = new Command('loadleaf');
  let exit: number = EXIT.good;
  const with_ =
    (work: (flags: Flags, ...words: string[]) => Promise<number>) =>
    async (...given: unknown[]) => {
      const command = given.at(-1) as Command;
      exit = await work(command.optsWithGlobals<Flags>(), ...(given.slice(0, -2).flat() as string[]));
    };

  program
    .description(
      'Exercise cards, staged protocols and one consult file become a home exercise leaflet in HTML and PDF.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .addHelpCommand(false)
    .showSuggestionAfterError(false)
    .exitOverride()
    .configureOutput({ outputError: () => undefined });

  shared(program.command('check'))
    .description('read every file and print what is wrong with it')
    .action(with_(async (flags) => (await import('./check.ts')).check(flags)));

  shared(program.command('build'))
    .description('write the library and the leaflets; with aliases only theirs')
    .argument('[alias...]')
    .action(with_(async (flags, ...aliases) => (await import('./build.ts')).build(flags, aliases)));

  shared(program.command('explain'))
    .description("say where every number of a person's programme comes from")
    .argument('<alias>')
    .action(with_(async (flags, alias) => (await import('./explain.ts')).explain(flags, alias ?? '')));

  shared(program.command('estimate'))
    .description('what the body model says of one card')
    .argument('<card>')
    .addOption(number('--height <m>', 'height in metres, 1.2 to 2.2'))
    .addOption(number('--mass <kg>', 'body mass in kilograms, 30 to 250'))
    .addOption(number('--load <kg>', 'weight in kilograms').default(0))
    .addOption(number('--hip-cap <deg>', 'hip bend at most, degrees'))
    .addOption(number('--compression-cap <bw>', 'squeeze at most, body weights'))
    .addOption(number('--tension-cap <bw>', 'pull at most, body weights'))
    .addOption(number('--demand-cap <share>', 'share of strength at most'))
    .action(with_(async (flags, card) => (await import('./estimate.ts')).estimate(flags, card ?? '')));

  shared(program.command('serve'))
    .description('build, show at 127.0.0.1 and build again when a file changes')
    .addOption(number('--port <n>', 'port, any free one when left out'))
    .action(with_(async (flags) => (await import('./serve.ts')).serve(flags)));

  try {
    await program.parseAsync(argv);
    return exit;
  } catch (error) {
    if (error instanceof CommanderError) return usage(error, program, argv);
    const { ourFault } = await import('./fault.ts');
    return ourFault(error);
  }
}

function shared(command: Command): Command {
  return command
    .option('--content <dir>', 'the library folder', 'content')
    .option('--consults <dir>', 'the consults folder (default: consults inside the library folder)')
    .option('--out <dir>', 'where to write', '_site')
    .option('--json', 'one JSON object on standard output, everything else on standard error')
    .option('--on <date>', 'the day to judge review dates by, YYYY-MM-DD (default: today)')
    .option('--no-color', 'no colours')
    .option('--quiet', 'only problems');
}

function number(flags: string, description: string): Option {
  return new Option(flags, description).argParser((text: string) => {
    const value = Number(text);
    if (text.trim() === '' || !Number.isFinite(value)) throw new InvalidArgumentError('It must be a number.');
    return value;
  });
}

/** Help and version are good; anything else is a slip of the pen: 64 with the nearest right word. */
function usage(error: CommanderError, program: Command, argv: readonly string[]): number {
  if (error.exitCode === 0) return EXIT.good;
  if (error.code === 'commander.help') {
    process.stderr.write(program.helpInformation());
    return EXIT.usage;
  }
  const message = error.message.replace(/^error: /, '');
  const wrong = /'([^']+)'/.exec(message)?.[1] ?? '';
  const command =
    program.commands.find(({ name }) => name === undefined) ??
    program.commands.find((one) => argv.includes(one.name()));
  const words =
    error.code === 'commander.unknownCommand'
      ? [...COMMANDS]
      : (command?.options.map(({ long }) => long ?? '') ?? []);
  const near = nearestOf(wrong, words);
  process.stderr.write(
    `loadleaf: ${message}${near === null ? '' : `\nDid you mean ${near}?`}\nSee: loadleaf --help\n`,
  );
  return EXIT.usage;
}
