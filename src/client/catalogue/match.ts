/** Which cards the filters admit: those for which all of them hold. Nothing here knows a page. */

/** Of each filter the words that hold of a card, or those that were chosen. */
export type Values = Readonly<Record<string, readonly string[]>>;

/** The rules of `FilterRule` in programme/library/view.ts; nothing chosen admits all. */
export function holds(rule: string, chosen: readonly string[], own: readonly string[]): boolean {
  if (chosen.length === 0) return true;
  switch (rule) {
    case 'atMost':
      return Number(own[0]) <= Math.max(...chosen.map(Number));
    case 'any':
      return own.some((value) => chosen.includes(value));
    case 'within':
      return own.every((value) => chosen.includes(value));
    case 'none':
      return !own.some((value) => chosen.includes(value));
    default:
      throw new Error(`no such rule: ${rule}`);
  }
}

/** Whether every filter holds. `rules`: rule by filter. */
export function isAdmitted(rules: Readonly<Record<string, string>>, chosen: Values, own: Values): boolean {
  return Object.entries(rules).every(([key, rule]) => holds(rule, chosen[key] ?? [], own[key] ?? []));
}
