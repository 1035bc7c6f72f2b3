/** How long a session is planned. */

export interface SessionLength {
  readonly minutes: number;
  readonly exercisesAtMost: number;
  /** `usual`: the protocol's · `consult`: the minutes there are. */
  readonly decidedBy: 'usual' | 'consult';
}
