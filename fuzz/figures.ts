/** What a family came to. */
export interface Figures {
  readonly family: string;
  readonly cases: number;
  readonly refused: number;
  readonly built: number;
  readonly failed: number;
  readonly seconds: number;
  /** The number to go on from. */
  readonly next: number;
}

const HEAD = ['family', 'cases', 'refused', 'built', 'failed', 'seconds', 'next'] as const;

/** A line a family, numbers to the right. */
export function tableOf(rows: readonly Figures[]): string {
  const table = [[...HEAD], ...rows.map((row) => HEAD.map((key) => cellOf(row[key])))];
  const widths = HEAD.map((_, column) => Math.max(...table.map((cells) => cells[column]?.length ?? 0)));
  return table
    .map((cells) =>
      cells
        .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
        .join('  '),
    )
    .join('\n');
}

function cellOf(value: string | number): string {
  return typeof value === 'string' ? value : String(Math.round(value));
}
