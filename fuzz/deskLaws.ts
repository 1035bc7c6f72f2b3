/** The law of the desk for the demo, all whole cases, and as many spoilt by chance. */
import { chanceOf } from './chance.ts';
import { mostlySound } from './desk.ts';
import { PEOPLE, type PersonFiles } from './corpus.ts';
import { openDeskLaw } from './deskLaw.ts';

/** Exit code: 0 where no case broke the law. */
export async function runDeskLaws(count: number, seed: number): Promise<number> {
  const law = await openDeskLaw();
  const figures = { built: 0, refused: 0, failed: 0 };
  const held = async (what: string, person: PersonFiles) => {
    const { end, faults, tried } = await law.hold(person);
    figures[end] += 1;
    if (faults.length === 0) return;
    figures.failed += 1;
    console.log([`FAILED: ${what}`, ...faults.map((fault) => `  ${fault.slice(0, 1200)}`), tried].join('\n'));
  };
  try {
    for (const person of PEOPLE) await held(person.map(({ file }) => file).join(' '), person);
    console.log(
      `demo and whole cases: ${figures.built} built, ${figures.refused} refused, ${figures.failed} failed`,
    );
    for (let number = 1; number <= count; number += 1)
      await held(`case ${number} of seed ${seed}`, mostlySound(chanceOf(seed, 'desk', number)));
    console.log(
      `with ${count} of seed ${seed}: ${figures.built} built, ${figures.refused} refused, ${figures.failed} failed`,
    );
  } finally {
    await law.close();
  }
  return figures.failed === 0 ? 0 : 1;
}
