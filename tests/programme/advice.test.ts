/** When advice on sitting stands on a leaflet: sitting is limited at all, that is, under two hours. */
import { describe, expect, it } from 'vitest';
import type { Library } from '../../src/content/library.ts';
import { adviceFor } from '../../src/decisions/person/advice.ts';
import { modelOf } from '../../src/decisions/person/model.ts';
import { personOf } from '../../src/decisions/person/person.ts';
import { NO_KIT, person } from './person.ts';
import { shipped } from './shipped.ts';

// Room for every card that holds.
const roomy: Library = {
  ...shipped,
  clinic: { ...shipped.clinic, defaults: { ...shipped.clinic.defaults, adviceAtMost: 12 } },
};
const protocol = shipped.protocols.get('proximal-hamstring')!;
const NO_EFFECTS = { noRunning: [], lightHolds: [], shortHolds: [], under18: false } as const;

describe('advice on sitting', () => {
  it.each([
    [10, true],
    [60, true],
    [119, true],
    [120, false],
    [180, false],
  ])('for someone who can sit %d minutes: %s', (toleranceMinutes, isThere) => {
    const sits = personOf(person({ sitting: { toleranceMinutes } }), roomy, protocol, NO_EFFECTS, modelOf);
    const shown = adviceFor(sits, 2, 'treatment', true);
    expect(shown.map(({ id }) => id).includes('sitting-well')).toBe(isThere);
  });
});

describe('advice on long drives', () => {
  it('stands on the leaflet of a driver with no weights at home whose both sides hurt', () => {
    const driver = person({
      side: 'both',
      worseSide: 'left',
      kit: NO_KIT,
      sitting: { toleranceMinutes: 8, fixedBlocksMinutes: [240] },
      doesNow: [{ what: 'driving', times: 5 }],
    });
    const shown = adviceFor(personOf(driver, shipped, protocol, NO_EFFECTS, modelOf), 1, 'treatment', false);
    expect(shown.map(({ id }) => id)).toContain('at-the-wheel');
  });
});
