/**
 * What must not be followed any longer is out of force even where nothing can be written, not so much as a lock: one
 * renaming a person, which needs no room, and which two commands at one time cannot do by halves.
 */
import { EXIT } from '../exit.ts';
import { isFolder } from './disk.ts';
import { isHeldByOther } from './lock.ts';
import { isInForce } from './personSet.ts';
import { isOwnFolder, takeAway } from './swap.ts';
import { Stop } from './stop.ts';

/**
 * Runs the work, whose part is to withdraw the sets of these people. Where the disk stops it, those that are in force all
 * the same are taken away, and the fault says where to, or that they still are.
 */
export async function orTakenAway<T>(
  out: string,
  aliases: readonly string[],
  work: () => Promise<T>,
): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw isOfDisk(error) && isFolder(out) && !isHeldByOther(out) ? withTaken(out, aliases, error) : error;
  }
}

function isOfDisk(error: unknown): error is Stop {
  return error instanceof Stop && (error.exit === EXIT.cannotWrite || error.exit === EXIT.cannotCreate);
}

function withTaken(out: string, aliases: readonly string[], fault: Stop): Stop {
  const inForce = aliases.filter((alias) => isOwnFolder(out, alias) && mayBeInForce(out, alias));
  const said = inForce.map((alias) => {
    try {
      return `the files of ${alias} were taken away to ${takeAway(out, alias)}`;
    } catch {
      return `the leaflet of ${alias} must not be followed and is still in its place; take it away by hand`;
    }
  });
  return said.length === 0 ? fault : new Stop(fault.exit, [fault.message, ...said].join('; '));
}

// What cannot be read may be in force.
function mayBeInForce(out: string, alias: string): boolean {
  try {
    return isInForce(out, alias);
  } catch {
    return true;
  }
}
