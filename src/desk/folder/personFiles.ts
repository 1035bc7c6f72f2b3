/** Whose the files of a folder are, by their names: `otter-r2.md`, and beside it `otter-r2.log.csv`. */

export interface PersonFiles {
  readonly alias: string;
  /** The highest there is a consult of. */
  readonly revision: number;
  /** That consult. */
  readonly newest: string;
  /** The earlier consults, and the logs. */
  readonly others: readonly string[];
}

const NAME = /^([a-z0-9][a-z0-9-]{0,63})-r([1-9]\d{0,2})\.(md|log\.csv)$/;

export function isPersonFile(name: string): boolean {
  return NAME.test(name);
}

/** By alias; a log without a consult is nobody's. */
export function personFiles(names: readonly string[]): readonly PersonFiles[] {
  const found = names.flatMap((name) => {
    const [, alias, revision, ending] = NAME.exec(name) ?? [];
    return alias === undefined
      ? []
      : [{ name, alias, revision: Number(revision), isConsult: ending === 'md' }];
  });
  return [...new Set(found.map(({ alias }) => alias))].sort().flatMap((alias) => {
    const own = found.filter((one) => one.alias === alias).sort((a, b) => a.revision - b.revision);
    const newest = own.findLast(({ isConsult }) => isConsult);
    if (newest === undefined) return [];
    const others = own.filter((one) => one !== newest).map(({ name }) => name);
    return [{ alias, revision: newest.revision, newest: newest.name, others }];
  });
}
