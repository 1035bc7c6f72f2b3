import { describe, expect, it } from 'vitest';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from './sample.ts';

const good = readLibrary(filesWith());

describe('readLibrary', () => {
  it('reads every kind, sorted by id', () => {
    expect([...(good.library?.exercises.keys() ?? [])]).toEqual(['band-walk', 'bridge', 'single-leg-bridge']);
    expect([...(good.library?.advice.keys() ?? [])]).toEqual(['sitting']);
    expect([...(good.library?.protocols.keys() ?? [])]).toEqual(['hamstring']);
    expect(good.library?.clinic.emergency['IE']?.emergencyNumber).toBe('112');
    expect(good.counts).toEqual({ exercises: 3, advice: 1, protocols: 1 });
  });

  it('makes a posed card a movement, with the defaults of the contract', () => {
    expect(good.library?.exercises.get('bridge')).toMatchObject({
      legs: 'together',
      pickUpHeightM: 0.4,
      statedHipFlexion: null,
      tempo: { goSeconds: 3, holdSeconds: 0, backSeconds: 3 },
      easier: null,
      harder: 'single-leg-bridge',
      movement: { mode: 'active', horizontal: 'minEffort', range: 'continuous', loadAt: 'pelvisFront' },
    });
  });

  it('takes a pose with another leg for one leg after the other', () => {
    expect(good.library?.exercises.get('single-leg-bridge')?.legs).toBe('each');
  });

  it('gives a card without a pose its stated angle and no movement', () => {
    expect(good.library?.exercises.get('band-walk')).toMatchObject({
      movement: null,
      statedHipFlexion: { deg: 25, mark: 'choice' },
      legs: 'together',
      pickUpHeightM: null,
    });
  });

  it('parts a dose from its source and fills in null for what is not given', () => {
    const [first, keep] = good.library?.protocols.get('hamstring')?.stages ?? [];
    expect(first?.slots[0]).toMatchObject({
      when: 'session',
      dose: { kind: 'slow', sets: 3, repetitions: 8, holdSeconds: null, tempo: null, reserve: 3 },
      doseSource: { cite: 'house choice', mark: 'choice' },
      progression: [{ change: 'repetitions', by: 2, to: 12 }],
    });
    expect(keep?.caps).toEqual({
      angle: 'hipFlexion',
      angleDeg: null,
      compressionBw: null,
      tensionBw: null,
      demand: null,
    });
    expect(keep?.slots[0]?.progression).toEqual([{ change: 'load', by: null, to: null }]);
  });

  it('gives no library as soon as one file is wrong', () => {
    const reading = readLibrary(filesWith({ 'clinic.md': spoilt('clinic.md', 'paper: A4', 'paper: A5') }));
    expect(reading.library).toBeNull();
    expect(reading.problems).toHaveLength(1);
    expect(reading.counts.exercises).toBe(3);
  });

  it('passes over hidden files, consults, pictures and what lies beside the folders', () => {
    const beside = [
      'README.md',
      'logo.png',
      '.git/exercises/x.md',
      'exercises/.draft.md',
      'notes/x.md',
      'consults/x.md',
    ];
    const reading = readLibrary([...filesWith(), ...beside.map((file) => fileOf(file, 'x'))]);
    expect(reading.problems).toEqual([]);
    expect(reading.library?.version).toBe(good.library?.version);
  });

  it('reads folders below folders', () => {
    const shoes = spoilt('advice/sitting.md', '../clinic.md', '../../clinic.md');
    const reading = readLibrary(filesWith({ 'advice/runners/shoes.md': shoes }));
    expect([...(reading.library?.advice.keys() ?? [])]).toEqual(['shoes', 'sitting']);
  });

  it('has another version as soon as a word or a name changes', () => {
    const word = readLibrary(
      filesWith({ 'advice/sitting.md': spoilt('advice/sitting.md', 'Stand up', 'Get up') }),
    );
    const name = readLibrary(
      filesWith({ 'advice/sitting.md': null, 'advice/seated.md': SAMPLE['advice/sitting.md'] }),
    );
    expect(good.library?.version).toMatch(/^[0-9a-f]{12}$/);
    expect(new Set([good, word, name].map(({ library }) => library?.version)).size).toBe(3);
  });
});
