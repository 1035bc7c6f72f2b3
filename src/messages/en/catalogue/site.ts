/** Words of the feed of a library's changes. */

export const FEED_REVIEWED = 'Looked through again.';

export function feedTitle(clinic: string): string {
  return `Changes of the exercise library, ${clinic}`;
}
