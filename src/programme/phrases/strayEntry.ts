/** What an author reads of an own number for a card that is not in the plan. */

/** `fromStep`: null for a card of today, else the first step of the ladder that has it. */
export interface CardInPlan {
  readonly id: string;
  readonly fromStep: number | null;
}

/** `path`: as it stands, `found` reads after "is". */
export function strayEntryWords(
  path: string,
  cards: readonly CardInPlan[],
): { readonly found: string; readonly expected: string; readonly fix: string } {
  const [card = '', cell = ''] = path.split('.');
  const now = cards.filter(({ fromStep }) => fromStep === null).map(({ id }) => id);
  const later = cards.flatMap(({ id, fromStep }) => (fromStep === null ? [] : [`${id} (step ${fromStep})`]));
  return {
    found: path,
    expected: `a cell of a card in this person's plan; ${card} is not in it, so the number would change nothing`,
    fix: `Write ${cell} of one of ${now.join(', ')}${later.length === 0 ? '' : `, or later ${later.join(', ')}`}; or take the entry out.`,
  };
}
