/** The sources of what this house decides: bibliographic, the same in every language. */
import type { Source } from '../../units/source.ts';

/** The house rules by their sections. @example houseRules('2 and 4') */
export function houseRules(sections: string): Source {
  return { cite: `house rules ${sections}`, mark: 'choice' };
}

/** Loads that come from sets that were tested. */
export const TESTED_LOADS = houseRules('3 and 4: loads from tested sets');

/** What the screen takes away. */
export const SCREEN_LOADS = houseRules('2: effects of the screen');

/** The maximum from a set, as handbooks give the formula. */
export const FORMULAS: Readonly<Record<'epley' | 'brzycki', Source>> = {
  epley: {
    cite: 'Epley 1985, as handbooks give it; of kilograms and hip moment the lower',
    mark: 'secondary',
  },
  brzycki: {
    cite: 'Brzycki 1993, as handbooks give it; of kilograms and hip moment the lower',
    mark: 'secondary',
  },
};

/** Caps of force are held by the body model. */
export const BODY_MODEL: Source = {
  cite: 'cap of the stage, by the body model of this project (estimate; its page names the constants)',
  mark: 'choice',
};

/** The cap of the guarded joint's bend. */
export function jointCap(joint: 'hip' | 'knee' | 'ankle'): Source {
  return { cite: `${joint} bend cap of the stage, house rules 3`, mark: 'choice' };
}

/** A number that the clinician wrote over the rule's. */
export function clinicianEntry(reason: string): Source {
  return { cite: `the clinician's own entry: ${reason}`, mark: 'choice' };
}
