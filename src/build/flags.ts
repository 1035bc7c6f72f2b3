/** What may be said to any command, as it stands on the command line. */
export interface Flags {
  readonly content: string;
  readonly consults?: string;
  readonly out: string;
  readonly json?: boolean;
  readonly on?: string;
  /** False after --no-color. */
  readonly color: boolean;
  readonly quiet?: boolean;
  readonly height?: number;
  readonly mass?: number;
  readonly load?: number;
  readonly hipCap?: number;
  readonly compressionCap?: number;
  readonly tensionCap?: number;
  readonly demandCap?: number;
  readonly port?: number;
}
