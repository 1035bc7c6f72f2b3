/** That no programme is made, as codes and numbers: what stands against it, and where in the consult. */
import type { Idle } from '../../content/plausible/confirmed.ts';
import type { Doubt } from '../../content/plausible/doubt.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { Clinic } from '../../content/library.ts';
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import type { NoWeek } from '../../scheduling/plan.ts';
import type { Weekday } from '../../units/weekday.ts';
import type { LimitReason } from './cardLimit.ts';
import type { BarredCard, NoRoom } from './noWholeStage.ts';
import type { StageLooked, StageLimit } from './stageLimit.ts';
import type { StageName } from './stageName.ts';

export interface Refusal {
  /** One of the codes of a Problem. */
  readonly code: string;
  /** The consult's file id. */
  readonly id: string;
  /** Keys and indices into its front matter, outermost first. */
  readonly path: readonly (string | number)[];
  readonly why: RefusalReason;
}

export interface Refused {
  readonly refusals: readonly Refusal[];
}

export type RefusalReason =
  ScreenStop | StageRefusal | OwnEntryFault | OwnChoiceFault | PlanRefusal | SlipRefusal;

/** An exercise of the clinician's own choice that cannot be carried out. `card`: what is written. */
export type OwnChoiceFault = { readonly card: string } & (
  | {
      readonly reason: 'own-choice-barred';
      readonly why: LimitReason;
      /** Whether a recorded decision would lift it: a cap of the house, and nothing else. */
      readonly isHouseCap: boolean;
    }
  | { readonly reason: 'own-choice-no-slot'; readonly slots: readonly string[] }
  | { readonly reason: 'beyond-cap-irritable' | 'beyond-cap-idle' | 'own-choice-no-room' }
);

type Answer = 'yes' | 'no' | 'notAsked';

/** `answer`: what stands in the screen. */
export type ScreenStop =
  | {
      readonly reason: 'screen-stop';
      readonly item: ScreenItem;
      readonly answer: Answer;
      readonly effect: 'emergency' | 'block';
      /** Of the country; null where nobody knows it. */
      readonly emergency: Clinic['emergency'][string] | null;
    }
  | { readonly reason: 'light-holds-undecided'; readonly item: ScreenItem; readonly answer: Answer }
  | { readonly reason: 'no-picture'; readonly item: ScreenItem; readonly answer: Answer }
  | { readonly reason: 'under-18'; readonly answer: Answer };

export type StageRefusal =
  | { readonly reason: 'stage-barred'; readonly chosen: StageName; readonly limit: StageLimit }
  | {
      readonly reason: 'stage-above-proposal';
      readonly chosen: StageName;
      readonly proposed: StageName;
      /** What kept the next stage shut; null where nothing was looked at. */
      readonly shut: StageLooked | null;
    }
  | { readonly reason: 'hurts'; readonly protocol: string; readonly pain: number }
  | { readonly reason: 'still-sore'; readonly written: string; readonly sore: StillSore }
  | { readonly reason: 'pain-undecided'; readonly usualPain: number; readonly decisionFrom: number };

/** What stands against the end of a treatment. */
export type StillSore =
  | { readonly because: 'irritable' }
  | { readonly because: 'usualPain'; readonly pain: number; readonly under: number }
  | { readonly because: 'testPain'; readonly pain: number; readonly atMost: number };

export type PlanRefusal =
  | {
      readonly reason: 'no-such-step';
      readonly stage: StageName;
      readonly step: number;
      /** False where the step is that of the revision before. */
      readonly isWritten: boolean;
      readonly steps: number;
    }
  | { readonly reason: 'no-step-before' }
  | {
      readonly reason: 'empty-slot';
      readonly stage: StageName;
      readonly slot: string;
      readonly barred: readonly BarredCard[];
    }
  | NoRoom
  | {
      readonly reason: 'no-week';
      readonly days: readonly Weekday[];
      readonly because: NoWeek['because'];
    }
  | { readonly reason: 'too-few-minutes'; readonly minutes: number; readonly leastMinutes: number };

/** A number of the clinician's own that cannot be carried out. `value`: what is written. */
export type OwnEntryFault = { readonly value: string } & (
  | {
      readonly reason:
        'own-of-a-hold' | 'own-of-repetitions' | 'own-without-weight' | 'own-weight-in-light-holds';
    }
  | { readonly reason: 'own-hold-too-long'; readonly mostSeconds: number }
  | { readonly reason: 'own-without-range' | 'own-of-another-joint'; readonly angle: JointAngle }
  | {
      readonly reason: 'own-range-outside';
      readonly angle: JointAngle;
      readonly leastDeg: number;
      readonly mostDeg: number;
    }
  | { readonly reason: 'own-load-after-sudden-start'; readonly mostKg: number }
  /** Null: the kit makes none that is heavier. */
  | {
      readonly reason: 'own-load-not-in-kit';
      readonly kg: number;
      readonly lighterKg: number;
      readonly heavierKg: number | null;
    }
  | { readonly reason: 'own-days'; readonly possible: readonly Weekday[] }
  /** `value`: its path. */
  | { readonly reason: 'own-of-no-card'; readonly cards: readonly CardInPlan[] }
);

/** What looks like a slip, and an entry under `confirmed` that confirms none. */
export type SlipRefusal =
  { readonly reason: 'doubt'; readonly doubt: Doubt } | { readonly reason: 'idle'; readonly idle: Idle };

/** `fromStep`: null for a card of today, else the first step of the ladder that has it. */
export interface CardInPlan {
  readonly id: string;
  readonly fromStep: number | null;
}
