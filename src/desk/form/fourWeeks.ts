/** The last four weeks of running as they were, and what of the consult follows from them. */

export interface Week {
  readonly km: number | null;
  readonly longestKm: number | null;
}

/** The usual week is their mean to half a kilometre, down; the longest run the longest of them. Null until all four are known. */
export function usualOf(
  weeks: readonly Week[],
): { readonly weeklyKm: number; readonly longestKm: number } | null {
  const km = weeks.flatMap((week) => week.km ?? []);
  const longest = weeks.flatMap((week) => week.longestKm ?? []);
  if (km.length < 4 || longest.length < 4) return null;
  const mean = km.reduce((sum, one) => sum + one, 0) / km.length;
  return { weeklyKm: Math.floor(mean * 2) / 2, longestKm: Math.max(...longest) };
}
