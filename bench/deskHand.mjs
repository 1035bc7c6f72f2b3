// A physiotherapist at the desk who knows the answers: every key press and every choice is counted, going to a field too.

/** A hand on a page; `presses()` so far. */
export function handOn(page) {
  let presses = 0;
  const place = (selector) => page.locator(selector).first();
  const hand = {
    presses: () => presses,
    /** A button, or one of some words. */
    async press(selector) {
      await place(selector).focus();
      await page.keyboard.press('Space');
      presses += 1;
    },
    /** Into a field, and its letters. */
    async type(name, words) {
      await place(`[name="${name}"]`).focus();
      await page.keyboard.type(words);
      presses += 1 + words.length;
    },
    /** A list is opened, and one of it taken. */
    async choose(name, value) {
      await place(`select[name="${name}"]`).selectOption(value);
      presses += 2;
    },
    /** One of some words by its key. */
    pick: (name, value) => hand.press(`[name="${name}"][value="${value}"]`),
  };
  return hand;
}

const TESTS = [
  ['single-leg-bridge-raised', 2, ['repetitions', '8']],
  ['long-lever-bridge-hold', 3, ['seconds', '40']],
  ['prone-curl-hold', 1, ['seconds', '45']],
  ['hip-hinge', 4, ['painFreeHipFlexionDeg', '60']],
];

const SETS = [
  { card: 'prone-curl-hold', loadKg: '3', repetitions: '1', reserve: '1', rangeDeg: '0', pain: 1 },
  { card: 'hip-hinge', loadKg: '10', repetitions: '10', reserve: '4', rangeDeg: '45', pain: 2 },
];

/** A runner with a painful sit bone on one side, seen for the first time: from the empty sheet to a consult that is whole. */
export async function writeUsualPatient(hand) {
  await who(hand);
  for (const group of ['nerves', 'illness', 'injury', 'energy', 'medicines', 'straining'])
    await hand.press(`[data-group-no="${group}"]`);
  await hand.pick('cannotDo', '');
  await hand.pick('irritability', 'moderate');
  await hand.pick('response24h', 'settled');
  await hand.pick('usualMorningPain', '2');
  for (const [index, test] of TESTS.entries()) await tested(hand, index, test);
  for (const [index, set] of SETS.entries()) await setTried(hand, index, set);
  await hand.press('[data-home="dumbbells"]');
  for (const day of ['mon', 'wed', 'fri', 'sun']) await hand.pick('days', day);
  await hand.press('button:text-is("30 minutes")');
  await running(hand);
  await hand.type('sitting.toleranceMinutes', '25');
  await hand.pick('recovery.sleep', 'good');
  await hand.pick('recovery.stress', 'moderate');
  await hand.pick('recovery.tired', 'no');
  await hand.press('[data-add="goals"]');
  await hand.type('goals.0.what', 'run 10 km');
  await hand.pick('stage', 'auto');
}

async function who(hand) {
  await hand.type('alias', 'plover');
  await hand.press('button:text-is("Seen today, begins tomorrow")');
  await hand.press('button:text-is("Review in 3 weeks")');
  await hand.press('button:text-is("Seen by R. Sample")');
  await hand.type('ageYears', '38');
  await hand.type('heightM', '1.68');
  await hand.type('massKg', '61');
  await hand.choose('protocol', 'proximal-hamstring');
  await hand.pick('side', 'right');
}

async function tested(hand, index, [test, pain, [key, value]]) {
  await hand.press(`.owntests button[data-test="${test}"]`);
  await hand.pick(`tests.${index}.pain`, pain);
  await hand.type(`tests.${index}.${key}`, value);
}

async function setTried(hand, index, { card, pain, reserve, ...numbers }) {
  await hand.press(`[data-tried="${card}"]`);
  await hand.pick(`testedSets.${index}.side`, 'right');
  for (const [key, value] of Object.entries(numbers)) await hand.type(`testedSets.${index}.${key}`, value);
  await hand.pick(`testedSets.${index}.reserve`, reserve);
  await hand.pick(`testedSets.${index}.pain`, pain);
}

async function running(hand) {
  await hand.pick('running.runs', 'yes');
  await hand.pick('running.decision', 'keep');
  await hand.type('running.weeklyKm', '24');
  await hand.type('running.longestIn30DaysKm', '9');
  await hand.type('running.trainingYears', '8');
  await hand.type('running.weeksOff', '0');
  await hand.press('[data-habit=flat]');
  await hand.pick('running.overStriding', 'no');
}
