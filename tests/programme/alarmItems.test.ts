/** What can be ticked on the page is what stops a programme by itself (house rules 2), and nothing less. */
import { expect, it } from 'vitest';
import { SCREEN_ITEMS } from '../../src/content/schema/consult.ts';
import { alarmItems } from '../../src/decisions/screen/alarmItems.ts';
import { effectOf } from '../../src/decisions/screen/screen.ts';
import { alarmLines } from '../../src/messages/en/patient/alarm.ts';

it('is every item that blocks, an emergency by its number', () => {
  const blocking = SCREEN_ITEMS.filter((item) => ['emergency', 'block'].includes(effectOf(item)));
  const items = alarmItems();
  expect(items.map(({ item }) => item).sort()).toEqual([...blocking].sort());
  expect(
    items
      .filter(({ urgency }) => urgency === 'call')
      .map(({ item }) => item)
      .sort(),
  ).toEqual(SCREEN_ITEMS.filter((item) => effectOf(item) === 'emergency').sort());
});

it('says what to do by the most urgent of what was ticked', () => {
  const ticked = alarmItems().filter(({ item }) => item === 'fever' || item === 'footDrop');
  expect(alarmLines(ticked, '112')).toEqual([
    'Call 112 now. Do no exercises and no run until you have been seen.',
    'You ticked: a foot that drops and a fever, or feeling ill with it.',
  ]);
  expect(
    alarmLines(
      ticked.filter(({ item }) => item === 'fever'),
      '112',
    )[0],
  ).toMatch(/^Get in touch with us today/);
  expect(alarmLines([], '112')).toEqual([]);
});
