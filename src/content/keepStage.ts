/** The last stage of a protocol may be the one that goes on after discharge; it has a name instead of a number. */

interface Named {
  readonly name: string;
}

/** Whether a stage is that one: its name is `keep`, or begins with the word. @example isKeepStage({ name: 'Keep going' }) // => true */
export function isKeepStage({ name }: Named): boolean {
  return /^keep\b/i.test(name);
}

/** The stages that are counted, from 1: all but a keep stage at the end. */
export function numberedStages<Stage extends Named>(stages: readonly Stage[]): readonly Stage[] {
  const last = stages.at(-1);
  return last !== undefined && isKeepStage(last) ? stages.slice(0, -1) : stages;
}

/** The keep stage, or null where the protocol has none. */
export function keepStageOf<Stage extends Named>(stages: readonly Stage[]): Stage | null {
  const last = stages.at(-1);
  return last !== undefined && isKeepStage(last) ? last : null;
}
