/** Which leaflets in use must go because a newer file, a draft or a broken one, says something that stops every programme. */
import type { Draft } from '../../content/draft.ts';
import type { Clinic } from '../../content/library.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { Refusal } from '../terms/refusal.ts';
import { answeredYes } from '../../content/readScreen.ts';
import { stopsWith } from './screen.ts';

export interface Withdrawal {
  readonly alias: string;
  /** The file that says so. */
  readonly file: string;
  readonly revision: number | null;
  readonly item: ScreenItem;
  readonly refusal: Refusal;
}

/**
 * One entry for each answer of yes that stops a programme, in files newer than what is in use; a file that does not
 * tell its revision counts as newer. `inUse`: the revision of each alias that would be built. `clinic`: null where it
 * cannot be read; the wording then names no number.
 */
export function withdrawals(
  files: readonly Draft[],
  inUse: ReadonlyMap<string, number>,
  clinic: Clinic | null,
): Withdrawal[] {
  return files
    .filter(({ alias, revision }) => revision === null || revision >= (inUse.get(alias) ?? 0))
    .flatMap((file) => file.said.yes.flatMap((item) => withdrawal(file, item, clinic)));
}

function withdrawal(
  { alias, file, revision, said }: Draft,
  item: ScreenItem,
  clinic: Clinic | null,
): Withdrawal[] {
  const id = revision === null ? alias : `${alias}-r${revision}`;
  // What a draft has not asked yet withdraws nothing.
  const refusal = stopsWith(item, answeredYes(id, said), clinic);
  return refusal === null ? [] : [{ alias, file, revision, item, refusal }];
}
