/** What is said where files are opened and saved at the desk. */

export function savedText(file: string): string {
  return `${file} is saved.`;
}

/** @example tooLargeText('a.csv', 300 * 1024, 256 * 1024) // => 'a.csv has 300 kB, and at most 256 kB are read. Nothing was opened.' */
export function tooLargeText(file: string, bytes: number, most: number): string {
  return `${file} has ${Math.ceil(bytes / 1024)} kB, and at most ${most / 1024} kB are read. Nothing was opened.`;
}
