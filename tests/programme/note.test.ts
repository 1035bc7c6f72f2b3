/** The note of every shipped consult: names in place of ids, one exercise a line. */
import { describe, expect, it } from 'vitest';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { orderOf } from '../../src/shell/building/oneSet.ts';
import { readWorkspace } from '../../src/shell/io/workspace.ts';

const workspace = readWorkspace({ content: 'content', consults: 'content/consults' });
if (workspace.library === null) throw new Error('the shipped library cannot be read');
const workshop = { library: workspace.library, models: new Map(), loadleaf: '0' };
const made = workspace.current.flatMap((inUse) => {
  const { consult } = orderOf(inUse, workspace);
  const outcome = assembleProgramme(consult, null, workshop);
  return 'programme' in outcome ? [{ consult, programme: outcome.programme }] : [];
});

it('some are made', () => {
  expect(made.length).toBeGreaterThan(2);
});

describe.each(made.map((one) => [one.programme.alias, one] as const))('%s', (_, { consult, programme }) => {
  const { note } = programme.record;

  it('has one line for each exercise', () => {
    const titles = programme.exercises.map(({ title }) => title);
    expect(note.filter((line) => titles.some((title) => line.startsWith(`${title}: `)))).toHaveLength(
      titles.length,
    );
    for (const line of note)
      expect(titles.filter((title) => line.includes(`${title}: `)).length).toBeLessThan(2);
  });

  it('shows high up what was typed, so that a slip is seen which no rule can doubt', () => {
    const line = note.slice(0, 5).find((one) => one.startsWith('As entered: ')) ?? '';
    expect(line).toContain(`age ${consult.ageYears}, `);
    for (const { loadKg, repetitions } of consult.testedSets)
      expect(line).toContain(`${repetitions} × ${loadKg} kg`);
    for (const kg of consult.kit.dumbbellsKg) expect(line).toMatch(new RegExp(`dumbbells [^;]*\\b${kg}\\b`));
  });

  it('names tests, and shows no id of one', () => {
    const hyphened = consult.tests.map(({ test }) => test).filter((test) => test.includes('-'));
    for (const id of hyphened) expect(note.join('\n')).not.toContain(id);
  });
});
