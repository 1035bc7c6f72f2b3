/** Names that tell what is in a file. */
import { expect, it } from 'vitest';
import { hashedName, isByItsName } from '../../src/shell/io/hashedName.ts';

const bytes = new TextEncoder().encode('{}');
// SHA-256 of those two bytes by coreutils' sha256sum.
const OWN = 'shelf-44136fa355.json';

it('a name has the first digits of what is in the file', () => {
  expect(hashedName('shelf', 'json', bytes)).toBe(OWN);
});

it.each([
  [OWN, '{}', true],
  [OWN, '{ }', false],
  ['shelf-44136fa356.json', '{}', false],
  ['shelf.json', '{}', false],
  ['44136fa355.json', '{}', false],
  ['shelf-44136fa3.json', '{}', false],
])('%s with %s in it: ours %s', (name, text, isOurs) => {
  expect(isByItsName(name, new TextEncoder().encode(text))).toBe(isOurs);
});
