/** Rules across the keys of an exercise card: a pose brings some keys and takes the place of others. */
import { dateOrNull, type Wrong } from './words.ts';

type Keys = Readonly<Record<string, unknown>>;

/** What hangs on there being a pose, and the order of the review dates. */
export function exerciseRule(card: Keys, wrong: Wrong): void {
  if (card['start'] === undefined) withoutPose(card, wrong);
  else withPose(card, wrong);
  const [reviewedOn, nextReviewOn] = [dateOrNull(card['reviewedOn']), dateOrNull(card['nextReviewOn'])];
  if (reviewedOn !== null && nextReviewOn !== null && nextReviewOn <= reviewedOn) {
    wrong(['nextReviewOn'], `after reviewedOn (${reviewedOn})`, { fix: `write a day after ${reviewedOn}` });
  }
}

/** A foot is on the ground or in the air. */
export function legRule(leg: Keys, wrong: Wrong): void {
  if ((leg['pitch'] === undefined) !== (leg['ankle'] === undefined)) return;
  wrong([], 'given either pitch (foot on the ground) or ankle (foot in the air)', {
    fix: 'write pitch for a foot on the ground, or ankle for a foot in the air, and not both',
  });
}

function withoutPose(value: Keys, wrong: Wrong): void {
  for (const key of ['peakHipFlexionDeg', 'mark']) {
    if (value[key] === undefined)
      wrong([key], 'there when the card has no start pose', { missing: true, because: 'start' });
  }
  for (const key of ['end', 'supports', 'solve', 'mode', 'horizontal', 'loadAt', 'pickUpHeightCm']) {
    // No supports are none, written or not.
    if (value[key] === undefined || isEmptyList(value[key])) continue;
    wrong([key], 'left out of a card without a start pose', {
      because: 'start',
      fix: `give the card a start pose, or take ${key} out`,
    });
  }
}

function withPose(value: Keys, wrong: Wrong): void {
  if (value['supports'] === undefined) {
    wrong(['supports'], 'there with a pose, [] when bench or floor carries the body', { missing: true });
  }
  for (const key of ['peakHipFlexionDeg', 'mark', 'legs']) {
    if (value[key] !== undefined)
      wrong([key], 'left out of a card with a start pose', { fix: `take ${key} out; the pose says it` });
  }
  if (value['picture'] !== undefined)
    wrong(['picture'], 'left out of a card with a start pose', {
      because: 'start',
      fix: 'take picture out; the pose is drawn',
    });
  supportsForSolve(value['supports'], value['solve'], wrong);
  if (isKeys(value['start']) && isKeys(value['end'])) sameKeys(value['start'], value['end'], ['end'], wrong);
}

// Balance stands over one point; height is between two.
function supportsForSolve(supports: unknown, solve: unknown, wrong: Wrong): void {
  if (!Array.isArray(supports) || !isKeys(solve)) return;
  const { kind, range } = solve;
  if (kind === 'balance' && supports.length !== 1)
    wrong(['supports'], 'one support for a solve of kind balance');
  if (kind === 'height' && supports.length !== 2)
    wrong(['supports'], 'two supports for a solve of kind height');
  if (Array.isArray(range) && range[0] >= range[1]) wrong(['solve', 'range'], 'the lower number first');
}

// Every number is interpolated between the ends, so both must carry it; only `lumbar` counts as 0 when missing.
function sameKeys(start: Keys, end: Keys, path: readonly string[], wrong: Wrong): void {
  for (const key of ['arms', 'work', 'other', 'pitch', 'ankle']) {
    const [a, b] = [start[key], end[key]];
    if ((a === undefined) !== (b === undefined)) {
      wrong([...path, key], 'in both start and end, or in neither', {
        missing: b === undefined,
        fix: `write ${key} in both poses, or in neither`,
      });
    } else if (isKeys(a) && isKeys(b)) sameKeys(a, b, [...path, key], wrong);
    else if (isArms(a) && isArms(b) && typeof a !== typeof b)
      wrong([...path, key], 'of the same form in start and end', {
        fix: `write ${key} the same way in both poses`,
      });
  }
}

function isKeys(value: unknown): value is Keys {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

// Of all that stands in both poses, only arms may be a word or degrees.
function isArms(value: unknown): boolean {
  return typeof value === 'string' || typeof value === 'number';
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
