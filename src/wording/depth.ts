/** Words of a clinician that say how deep: what hip bend they stand for at the least. */

interface Depth {
  readonly words: string;
  readonly leastDeg: number;
  readonly means: string;
}

// What a reader takes them for, degrees [choice].
const DEPTHS: readonly (readonly [phrase: RegExp, leastDeg: number])[] = [
  [
    /\b(?:down |all the way )?(?:on|in)?to the (?:floor|ground|toes|feet|shoes)\b|\btouch (?:your |the )?(?:floor|ground|toes|feet)\b/i,
    80,
  ],
  [
    /\b(?:as deep|as low|as far down) as (?:you can|possible)\b|\bfull(?:y)? (?:depth|deep|down)\b|\ball the way down\b|\bdeep (?:squat|bend|bow|lunge)\b/i,
    80,
  ],
  [
    /\bthighs? (?:level|parallel|horizontal)\b|\bback (?:level|flat|parallel|horizontal)\b|\bright angle\b/i,
    70,
  ],
];

/** The deepest that the text promises; null when it says nothing of it. */
export function promisedDepth(text: string): Depth | null {
  for (const [phrase, leastDeg] of DEPTHS) {
    const [words] = phrase.exec(text) ?? [];
    if (words !== undefined) return { words, leastDeg, means: `a hip bend of at least ${leastDeg}°` };
  }
  return null;
}
