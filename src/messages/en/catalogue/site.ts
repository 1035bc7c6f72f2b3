/** Words of the feed of a library's changes. */

export const FEED_REVIEWED = 'Reviewed.';

export function feedTitle(clinic: string): string {
  return `Changes of the exercise library, ${clinic}`;
}
