/** Pictures that are only drawn: what an author may write, and what is refused where. */
import { describe, expect, it } from 'vitest';
import { drawnPicture } from '../../src/content/picture.ts';
import { pictureSchema } from '../../src/content/schema/picture.ts';

const LEG = { hip: 0, knee: 0, pitch: 0 };
const side = (frame: object, more: object = {}) => ({
  view: 'side',
  frames: [{ name: 'start', trunk: 0, work: LEG, ...frame }],
  ...more,
});
const front = (frame: object, more: object = {}) => ({
  view: 'front',
  frames: [{ name: 'start', lean: 0, work: { out: 5 }, ...frame }],
  ...more,
});

// prettier-ignore
const REFUSED: readonly (readonly [fault: string, picture: object, path: string])[] = [
  ['from the side without a trunk',          side({ trunk: undefined }),                          'frames.0.trunk'],
  ['from the front without a lean',          front({ lean: undefined }),                          'frames.0.lean'],
  ['from the side with hands of the front',  side({ hands: 'hips' }),                             'frames.0.hands'],
  ['from the front with arms of the side',   front({ arms: 20 }),                                 'frames.0.arms'],
  ['an elbow without its upper arm',         side({ elbow: 90 }),                                 'frames.0.arms'],
  ['a flight on the ground',                 side({ name: 'flight' }),                            'frames.0.offGroundCm'],
  ['a leg without a knee',                   side({ work: { hip: 0, pitch: 0 } }),                'frames.0.work.knee'],
  ['a foot neither on the ground nor off',   side({ work: { hip: 0, knee: 0 } }),                 'frames.0.work'],
  ['a foot both on the ground and off',      side({ work: { ...LEG, ankle: 0 } }),                'frames.0.work'],
  ['a leg out, from the side',               side({ work: { ...LEG, out: 10 } }),                 'frames.0.work.out'],
  ['a pitch, from the front',                front({ other: { out: 5, pitch: 0 } }),              'frames.0.other.pitch'],
  ['a step, from the front',                 front({}, { riseCm: 20 }),                           'riseCm'],
  ['two frames of one name',                 side({}, { frames: [{ name: 'start', trunk: 0, work: LEG }, { name: 'start', trunk: 5, work: LEG }] }), 'frames.1.caption'],
  ['a step higher than any',                 side({}, { riseCm: 80 }),                            'riseCm'],
  ['four frames',                            side({}, { frames: ['setUp', 'start', 'end', 'hold'].map((name) => ({ name, trunk: 0, work: LEG })) }), 'frames'],
];

describe('a picture', () => {
  it.each(REFUSED)('is refused: %s', (_, picture, path) => {
    const read = pictureSchema.safeParse(picture);
    expect(read.success).toBe(false);
    expect(read.error?.issues.map((issue) => issue.path.join('.'))).toContain(path);
  });

  it('comes out in metres, with nothing left out', () => {
    const read = pictureSchema.parse(
      side({ name: 'flight', offGroundCm: 8, arms: -30, elbow: 90 }, { supports: ['work.mid'], riseCm: 20 }),
    );
    expect(drawnPicture(read)).toEqual({
      view: 'side',
      supports: ['work.mid'],
      riseM: 0.2,
      frames: [
        {
          name: 'flight',
          caption: null,
          arrow: null,
          offGroundM: 0.08,
          pose: { trunk: 0, arms: -30, work: LEG },
          arms: { elbowDeg: 90, farDeg: null },
        },
      ],
    });
  });

  it('from the front has the other leg do as the working one, hands at the sides', () => {
    expect(drawnPicture(pictureSchema.parse(front({})))).toEqual({
      view: 'front',
      frames: [
        {
          name: 'start',
          caption: null,
          arrow: null,
          offGroundM: 0,
          front: {
            leanDeg: 0,
            hands: 'sides',
            work: { hip: 0, knee: 0, outDeg: 5 },
            other: { hip: 0, knee: 0, outDeg: 5 },
          },
        },
      ],
    });
  });
});
