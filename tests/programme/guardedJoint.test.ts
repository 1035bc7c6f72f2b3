/** A tendon guarded at the knee: what is printed, what is passed over, and what a clinician may set. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sectionLines } from './leafletText.ts';
import { caseMade } from './outcome.ts';
import { filesBelow, make, shipped, workshopOver } from './shipped.ts';

const IN = 'tests/cases/knee-guarded/in';
const over = workshopOver(filesBelow(`${IN}/library`));
const CONSULT = readFileSync(`${IN}/avocet-r1.md`, 'utf8');

function made(consult: string, within = over) {
  return make([{ file: 'avocet-r1.md', bytes: Buffer.from(consult), link: 'no' }], within);
}

function programme(consult: string, within = over) {
  const answer = made(consult, within);
  if ('printed' in answer) throw new Error(answer.printed);
  return answer.programme;
}

function printed(consult: string): string {
  const answer = made(consult);
  return 'printed' in answer ? answer.printed : '';
}

const kneeDegs = (consult: string) =>
  programme(consult).steps.flatMap(({ prescriptions }) =>
    prescriptions
      .filter(({ card }) => card === 'half-squat')
      .map(({ cells }) => cells.find(({ cell }) => cell === 'kneeFlexionDeg')?.value),
  );

describe('a protocol guarded at the knee', () => {
  it('keeps the morning check at one depth while the same exercise opens', () => {
    const check = sectionLines(programme(CONSULT).morningCheck).join(' ');
    expect(check).toContain('Half squat. Go only as far as the easier numbers say, with no weight');
  });

  it('opens the knee from the cap of the stage to what hurt less its margin', () => {
    expect(kneeDegs(CONSULT)).toEqual([45, 50, 55]);
  });

  it.each([
    [58, 45],
    [52, 40],
    [45, 35],
  ])('that hurt at %d° of knee bend starts at %d°', (painDeg, startDeg) => {
    expect(
      kneeDegs(CONSULT.replace('painFreeKneeFlexionDeg: 65', `painFreeKneeFlexionDeg: ${painDeg}`))[0],
    ).toBe(startDeg);
  });

  it('has the cell of the knee in place of the hip', () => {
    const answer = caseMade('knee-guarded');
    if ('printed' in answer) throw new Error(answer.printed);
    const cells = answer.programme.exercises.flatMap((one) => one.cells.map(({ cell }) => cell));
    expect(cells).toContain('kneeFlexionDeg');
    expect(cells).not.toContain('hipFlexionDeg');
    const { note, remarks, findings, exercises } = answer.programme.record;
    expect(JSON.stringify([note, remarks, findings, exercises])).not.toMatch(/hip bend|hip flexion/i);
  });

  it('passes over a bridge, in which the knees are bent further', () => {
    expect(programme(CONSULT).record.passedOver).toContainEqual(
      expect.objectContaining({ card: 'bridge-from-floor', limit: 'kneeFlexion', value: 45 }),
    );
  });

  it('passes over a card of which nobody knows how far the knee bends', () => {
    const slot = { ...over.library.protocols.get('patellar-tendon')! };
    const stages = slot.stages.map((stage) => ({
      ...stage,
      slots: stage.slots.map((one) => (one.name === 'Bridge' ? { ...one, cards: ['offset-squat'] } : one)),
    }));
    const protocols = new Map([...over.library.protocols, [slot.id, { ...slot, stages }]]);
    const { record } = programme(CONSULT, { ...over, library: { ...over.library, protocols } });
    expect(shipped.exercises.get('offset-squat')?.movement).toBeNull();
    expect(record.passedOver).toContainEqual(
      expect.objectContaining({ card: 'offset-squat', limit: 'kneeFlexion', value: 45 }),
    );
  });

  it('takes the clinician’s own knee bend, and no hip bend', () => {
    const own = (cell: string) =>
      CONSULT.replace(
        'cannotDo: []',
        `cannotDo: []\noverrides:\n  - { path: half-squat.${cell}, value: 40, reason: Sore today. }`,
      );
    expect(kneeDegs(own('kneeFlexionDeg'))[0]).toBe(40);
    expect(printed(own('hipFlexionDeg'))).toContain('left out: this protocol is set by knee bend');
  });

  it('refuses a hip bend at which a test hurt', () => {
    const text = printed(CONSULT.replace('painFreeKneeFlexionDeg', 'painFreeHipFlexionDeg'));
    expect(text).toContain('painFreeKneeFlexionDeg: patellar-tendon is guarded by kneeFlexion');
  });
});
