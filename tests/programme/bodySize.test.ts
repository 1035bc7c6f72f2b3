/** Rules 11.13 from the clinic file to the record: force by body mass, and the least of the hamstrings. */
import { describe, expect, it } from 'vitest';
import type { Clinic, Consult, Library } from '../../src/content/library.ts';
import type { Body } from '../../src/mechanics/body.ts';
import { largestRange } from '../../src/mechanics/range.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { bodyOf } from '../../src/decisions/person/body.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { day, person } from './person.ts';
import { shipped } from './shipped.ts';

const withMuscles = (values: Partial<Record<keyof Clinic['muscles'], number>>): Library => ({
  ...shipped,
  clinic: {
    ...shipped.clinic,
    muscles: Object.fromEntries(
      Object.entries(shipped.clinic.muscles).map(([name, one]) => [
        name,
        { ...one, value: values[name as keyof Clinic['muscles']] ?? one.value },
      ]),
    ) as Clinic['muscles'],
  },
});

// One store of models for all libraries, as a server keeps it.
const models = new Map();
function made(library: Library, consult: Consult): Programme {
  const one = assembleProgramme(consult, null, { library, models, loadleaf: '0' });
  if ('refusals' in one) throw new Error(JSON.stringify(one.refusals));
  return one.programme;
}

const GROWTH_PLATE: Consult['clearances'][number] = {
  flag: 'suddenOnsetUnder18',
  by: 'Dr Example',
  on: day('2026-11-20'),
  decision: 'gradual; a growth plate was considered and is unlikely',
};

const estimates = (programme: Programme) =>
  programme.record.exercises.map(({ card, estimate }) => [card, estimate] as const);

describe('the muscles of a person', () => {
  it('are those of the clinic file, for the mass recorded or that of the reference body', () => {
    const muscles = { baseMassKg: 75, massFromKg: 45, massToKg: 100, leastHamstringShare: 0.2 };
    expect(bodyOf(person({ massKg: 50 }), shipped.clinic)).toEqual({ massKg: 50, heightM: 1.72, muscles });
    expect(bodyOf({ heightM: 1.72 }, shipped.clinic)).toEqual({ massKg: 70, heightM: 1.72, muscles });
  });

  it('change the share of strength alone, by the factor', () => {
    const [one, other] = [75, 90].map((baseMassKg) =>
      estimates(made(withMuscles({ baseMassKg }), person({ stage: 1, irritability: 'low' }))),
    );
    expect(one!.length).toBeGreaterThan(2);
    one!.forEach(([card, estimate], i) => {
      const [otherCard, otherEstimate] = other![i]!;
      expect(otherCard).toBe(card);
      if (estimate === null || otherEstimate === null) return;
      expect({ ...otherEstimate, demand: 0 }).toEqual({ ...estimate, demand: 0 });
      expect(Math.abs(otherEstimate.demand - (estimate.demand * 90) / 75)).toBeLessThanOrEqual(0.015);
    });
  });

  // Stage 2 asks for at most 0.6 of any muscle: a short lean on the knees, share of the whole movement that it leaves.
  it.each([
    // kg | one force for everybody | by body mass
    [47, 1, 1],
    [75, 1, 1],
    [90, 0.83, 1],
    [120, 0.59, 0.83],
  ])('bar a body of %d kg no more from its own weight than others: %d, now %d', (massKg, before, now) => {
    const lean = shipped.exercises.get('assisted-nordic')!;
    const { caps, supportMargin } = shipped.protocols.get('proximal-hamstring')!.stages[1]!;
    const plain = { massKg, heightM: 1.75 };
    const left = (body: Body) => {
      const range = largestRange(lean.movement!, body, 0, { ...caps, supportMargin });
      return range.admitted ? range.fraction : 0;
    };
    expect(left(plain)).toBeCloseTo(before, 2);
    expect(left(bodyOf(plain, shipped.clinic))).toBeCloseTo(now, 2);
  });

  it('stand in the record with their marks, and in a sentence for this body', () => {
    const { record } = made(shipped, person({ massKg: 40 }));
    const rows = record.settings.rows.filter(([name]) => name!.startsWith('muscles.'));
    expect(rows.map(([name, value, mark]) => [name, value, mark])).toEqual([
      ['muscles.baseMassKg', '75', 'secondary'],
      ['muscles.massFromKg', '45', 'choice'],
      ['muscles.massToKg', '100', 'choice'],
      ['muscles.leastHamstringShare', '0.2', 'choice'],
    ]);
    expect(rows[0]![3]).toContain('Handsfield 2014');
    expect(record.remarks).toContain(
      'Share of strength: a body of 40 kg is counted with 0.6 times the muscle force of one of 75 kg, as one of 45 kg.',
    );
  });

  it('are not spoken of where the model says nothing', () => {
    const young = person({ ageYears: 16, clearances: [GROWTH_PLATE] });
    expect(made(shipped, young).record.remarks.join()).not.toContain('Share of strength');
  });
});

describe('the least share of the hamstrings', () => {
  it('is named in the record of an exercise whose squeeze or pull it raises, with both figures', () => {
    const high = made(withMuscles({ leastHamstringShare: 0.7 }), person());
    const raised = high.record.exercises.flatMap(({ card, remarks, estimate }) =>
      remarks
        .filter((remark) => remark.startsWith('The hamstrings are counted with at least 70 %'))
        .map((remark) => ({ card, remark, estimate })),
    );
    expect(raised.length).toBeGreaterThan(0);
    for (const { remark, estimate } of raised) {
      const [, squeeze, pull, before, pullBefore] =
        /squeeze (.+) and pull (.+) body weights, where least effort alone would say (.+) and (.+)\./.exec(
          remark,
        ) ?? [];
      expect([Number(squeeze), Number(pull)]).toEqual([estimate!.compressionBw, estimate!.tensionBw]);
      expect(Number(pull)).toBeGreaterThan(Number(pullBefore));
      expect(Number(squeeze)).toBeGreaterThanOrEqual(Number(before));
    }
  });

  it('is not spoken of where it changes nothing', () => {
    const { exercises } = made(withMuscles({ leastHamstringShare: 0 }), person()).record;
    expect(exercises.flatMap(({ remarks }) => remarks).join()).not.toContain('The hamstrings are counted');
  });
});
