/** The dose an exercise starts the stage with: the protocol's, with this person's hold, lighter under 18. */
import type { ExerciseCard, Slot } from '../content/library.ts';
import { holdFor, type HoldAnswer } from '../dose/hold.ts';
import type { TimedDose } from '../dose/work.ts';
import type { Source } from '../units/source.ts';
import type { Obstacle } from './obstacle.ts';
import type { Person } from './person.ts';
import { SCREEN_WORDS } from './phrases/screen.ts';
import type { Cell } from './programme.ts';

/** Why a number of a dose is not the protocol's own. */
export type Why = Pick<Cell, 'rule' | 'inputs' | 'source' | 'decidedBy'>;

export interface FirstDose {
  readonly dose: TimedDose;
  readonly why: Readonly<Partial<Record<'sets' | 'reserve' | 'holdSeconds', Why>>>;
}

const HOUSE: Source = { cite: 'house rules 2 and 4', mark: 'choice' };

/** A set less and a repetition more in hand under 18 [choice]; 0 for everybody else. */
export function lighterBy({ effects }: Person): 0 | 1 {
  return effects.under18 ? 1 : 0;
}

/** The first dose, or that the hold that was shown is too short to take a share of. */
export function firstDose(slot: Slot, card: ExerciseCard, person: Person): FirstDose | Obstacle {
  const lighter = lighterBy(person);
  const { sets, reserve, holdSeconds, tempo } = slot.dose;
  const dose: TimedDose = {
    ...slot.dose,
    tempo: tempo ?? card.tempo,
    sets: Math.max(1, sets - lighter),
    reserve: reserve === null ? null : reserve + lighter,
  };
  const young = lighter === 0 ? {} : { sets: youngWhy(sets), reserve: youngWhy(reserve) };
  if (holdSeconds === null) return { dose, why: young };
  const held = holdOf(holdSeconds, card, person);
  if ('none' in held)
    return {
      limit: 'testedSet',
      value: held.why.testedSeconds,
      because: `it was held for ${held.why.testedSeconds} s, too short to take a share of`,
    };
  const why = holdWhy(held, person);
  return {
    dose: { ...dose, holdSeconds: held.holdSeconds },
    why: why === null ? young : { ...young, holdSeconds: why },
  };
}

/** Seconds no hold of this card goes beyond on the ladder: the share of what was tested, the house's and the screen's longest. */
export function longestHoldSeconds(card: ExerciseCard, person: Person): number {
  const held = holdOf(person.protocol.limits.holdAtMostSeconds.value, card, person);
  return 'none' in held ? 0 : held.holdSeconds;
}

function holdOf(
  doseSeconds: number,
  { id }: ExerciseCard,
  { consult, protocol, effects }: Person,
): HoldAnswer {
  const tested = consult.tests.flatMap(({ test, seconds }) =>
    test === id && seconds !== undefined ? [seconds] : [],
  );
  const { holdShareTo, holdAtMostSeconds, screenedHoldSeconds } = protocol.limits;
  return holdFor(doseSeconds, tested.length === 0 ? null : Math.min(...tested), {
    shareTo: holdShareTo.value,
    longestSeconds: holdAtMostSeconds.value,
    screenedSeconds: effects.shortHolds.length > 0 ? screenedHoldSeconds.value : null,
  });
}

function youngWhy(byRule: number | null): Why {
  return {
    rule: 'lighter under 18: a set less, a repetition more in hand',
    inputs: { byRule },
    source: HOUSE,
    decidedBy: 'dose',
  };
}

function holdWhy(
  { why }: Extract<HoldAnswer, { holdSeconds: number }>,
  { effects, protocol }: Person,
): Why | null {
  const { testedSeconds, shareTo } = why;
  switch (why.decidedBy) {
    case 'dose':
      return null;
    case 'testedHold':
      return {
        rule: 'share of the seconds that could be held, rounded down to 5',
        inputs: { testedSeconds, share: shareTo },
        source: HOUSE,
        decidedBy: 'testedSet',
      };
    case 'longest':
      return {
        rule: 'longest hold of the protocol',
        inputs: { longestSeconds: protocol.limits.holdAtMostSeconds.value },
        source: HOUSE,
        decidedBy: 'dose',
      };
    case 'screen':
      return {
        rule: `short holds: ${effects.shortHolds.map((item) => SCREEN_WORDS[item]).join(', ')}`,
        inputs: { longestSeconds: protocol.limits.screenedHoldSeconds.value },
        source: HOUSE,
        decidedBy: 'dose',
      };
  }
}
