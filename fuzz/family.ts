/** One kind of attack: how a case of it is made, tried and judged. */
import type { Chance } from './chance.ts';

export interface Verdict {
  /** `refused`: turned away in words; `built`: taken, and held against the laws. */
  readonly end: 'refused' | 'built';
  /** What was tried, to be read by who looks into it. */
  readonly tried: string;
  /** What is wrong, a line each; empty where all is well. */
  readonly faults: readonly string[];
}

export interface Trial {
  attempt(chance: Chance): Promise<Verdict>;
  close(): void;
}

export interface Family {
  readonly name: string;
  /** What is tried, in a few words. */
  readonly what: string;
  open(): Promise<Trial>;
}
