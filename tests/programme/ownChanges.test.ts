/** What a clinic changed in a protocol, as the record and the public page tell it. */
import { messagesIn } from '../../src/messages/messages.ts';
import { describe, expect, it } from 'vitest';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { ownChanges } from '../../src/catalogue/ownChanges.ts';
import { settingsTable } from '../../src/messages/en/clinician/record/settings.ts';
import { fileOf, filesWith } from '../content/sample.ts';

const OWN = `---
extends: hamstring
values:
  - { path: stages.hold.caps.hipFlexionDeg, value: 45, mark: memory, cite: our audit }
  - { path: limits.stepGrowth, value: 1.2, mark: memory, cite: our audit }
addCards:
  - { slot: 'stages[hold].slots[main]', card: single-leg-bridge }
---
`;
const { library } = readLibrary(filesWith(), [fileOf('protocols/hamstring.md', OWN)]);
const protocol = library!.protocols.get('hamstring')!;

describe('the record', () => {
  it('gives a changed cap and a changed house number with the clinic’s own mark and source, and no others', () => {
    const { rows } = settingsTable(protocol, library!.clinic);
    expect(rows.filter(([, , , cite]) => cite === 'our audit')).toEqual([
      ['stage 1.hipFlexionDeg', '45', 'memory', 'our audit'],
      ['limits.stepGrowth', '1.2', 'memory', 'our audit'],
    ]);
  });
});

describe('the page of the protocol', () => {
  it('tells each change beside what was shipped', () => {
    const [section] = ownChanges(messagesIn('en'), protocol, library!);
    expect(JSON.stringify(section)).toContain('"60","45","from memory","our audit"');
    expect(JSON.stringify(section)).toContain('"1.3","1.2","from memory","our audit"');
    expect(JSON.stringify(section)).toContain('Bridge on one leg may fill a slot, too: hold, main.');
  });
  it('has nothing to tell of a protocol that is whole', () => {
    const whole = readLibrary(filesWith()).library!;
    expect(ownChanges(messagesIn('en'), whole.protocols.get('hamstring')!, whole)).toEqual([]);
  });
});
