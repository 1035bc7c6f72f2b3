/** One command line from its words to its exit code. */
import { mannerOf, readCommandLine } from './commandLine.ts';
import { COMMANDS } from './commands/commands.ts';
import { EXIT } from './exit.ts';
import { reportFor, type Streams } from './report.ts';

/** `written`: the words after the name of the program. Never throws; everything said goes to the two streams. */
export async function run(written: readonly string[], streams: Streams): Promise<number> {
  const report = reportFor(mannerOf(written), streams);
  try {
    const line = readCommandLine(written);
    if (line.asks === 'work') return await COMMANDS[line.of].run(line.flags, line.words, report);
    if (line.asks === 'help') report.text('help', (await import('./help.ts')).helpOf(line.of));
    else report.text('version', (await import('./io/assets.ts')).version());
    return EXIT.good;
  } catch (error) {
    return report.fault(error);
  }
}
