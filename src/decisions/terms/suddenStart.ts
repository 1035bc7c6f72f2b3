/** The first programme after a cleared sudden start. */
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { RunKind } from '../../scheduling/run.ts';
import type { IsoDate } from '../../units/date.ts';

/** How far the first programme after a cleared sudden start goes, and what its clearance rests on. */
export interface SuddenStart {
  readonly flag: ScreenItem;
  readonly by: string;
  readonly on: IsoDate;
  /** Null where the clearance holds no picture. */
  readonly imaging: { readonly kind: string; readonly on: IsoDate; readonly result: string } | null;
  readonly stageAtMost: number;
  /** Share of the load that the tests would allow. */
  readonly loadShare: number;
  readonly runAtMost: RunKind;
}
