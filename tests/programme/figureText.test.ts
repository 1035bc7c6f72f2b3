/** What stands for a figure in words: the movement a reader would see, card by card. */
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../src/decisions/person/model.ts';
import {
  altText,
  captionText,
  captionWithDegrees,
  showsAngle,
} from '../../src/messages/en/patient/figures.ts';
import { pictureFor } from '../../src/decisions/candidates/scene.ts';
import { shipped } from './shipped.ts';

const model = modelOf({ massKg: 70, heightM: 1.75 });
const sceneOf = (id: string) => pictureFor(shipped.exercises.get(id)!, null, null, model, 'right')!.scene;

// Read off the cards' own words under `Move` by a reader, not off the program.
// prettier-ignore
const SAID: readonly (readonly [card: string, says: string])[] = [
  ['slow-standing-curl',          'Start: standing; hip bent 5 degrees. This far, then back: the heel comes up towards the buttock; the hip stays straight.'],
  ['slow-prone-curl',             'Start: lying face down; hip straight. This far, then back: the heel comes up towards the buttock; the hip stays straight.'],
  ['bridge-from-floor',           'Start: lying on the back; hip bent 53 degrees. This far, then back: the hips go up; the hip straightens; hip straight.'],
  ['nordic-lowering',             'Start: kneeling; hip straight. This far, then back: the whole body leans forward from the knees; the hip stays straight.'],
  ['slow-standing-hip-extension', 'Start: standing; hip bent 20 degrees. This far, then back: the leg goes back.'],
  ['romanian-deadlift',           'Start: standing; hip bent 5 degrees. This far, then back: the trunk tips forward; the hip bends; hip bent 90 degrees.'],
  ['calf-raise',                  'This far, then back: the heel rises from the floor; the hip stays straight.'],
  ['split-squat',                 'the body sinks; the hip bends; the knee bends; hip bent 80 degrees.'],
  ['single-leg-hinge',            'the trunk tips forward; the hip bends; the other leg rises behind; hip bent 80 degrees.'],
  ['standing-hip-extension-hold', 'Hold: standing; the leg lifted a little behind the body.'],
  ['single-leg-bridge-hold',      'Hold: lying on the back; the hips off the floor; the other foot off the floor; hip bent 5 degrees.'],
  ['side-lying-leg-lift',         'Seen from the front. Start: lying on the side. This far, then back: the leg comes up.'],
  ['band-side-slide',             'Seen from the front. Start: standing. This far, then back: the leg goes out to the side.'],
  ['side-step',                   'This far, then back: the feet step apart.'],
  ['lying-side-press-hold',       'Seen from above. Hold: lying on the back; the knee pushes outwards.'],
  ['standing-heel-push-hold',     'Hold: standing; the foot pushes back.'],
  ['standing-band-press',         'Seen from above. Start: standing. Hold: the arms go forward; the hands push forward.'],
  ['pogo-hops',                   'Push off: standing. In the air: both feet are off the ground; the body goes up. Land: back on the ground; the body goes down.'],
  ['prone-chest-lift-hold',       'Get ready: lying face down. Hold: the chest comes up'],
  ['front-plank',                 'Hold: facing the floor on forearms and feet; the body in one line.'],
];

describe('the text alternative', () => {
  it.each(SAID)('of %s', (id, says) => {
    expect(altText('Name', 'Right leg', sceneOf(id))).toContain(says);
  });

  it('says a movement of every card that moves', () => {
    for (const { id } of shipped.exercises.values()) {
      const scene = sceneOf(id);
      const ends = altText('', '', scene).split('. ').at(-1)!;
      if (scene.frames.length > 1) expect(ends, id).toMatch(/: .*\b(the|back|both)\b/);
    }
  });
});

describe('captions', () => {
  const frames = [...shipped.exercises.keys()].flatMap((id) => [...sceneOf(id).frames]);

  it('never sound like rolling over', () => {
    for (const frame of frames) expect(captionText(frame)).not.toMatch(/\bturn\b|\broll\b/i);
  });

  it('carry the degrees where the figure has them, and only there', () => {
    const leg = sceneOf('prone-leg-lift-hold');
    expect(leg.frames.map(captionWithDegrees)).toEqual(['Hold']);
    expect(showsAngle(leg)).toBe(false);
    expect(sceneOf('split-squat').frames.map(captionWithDegrees)).toEqual([
      'Start: hip 25°',
      'This far, then back: hip 80°',
    ]);
    expect(sceneOf('side-step').frames.map(captionWithDegrees)).toEqual(['Start', 'This far, then back']);
    expect(showsAngle(sceneOf('split-squat'))).toBe(true);
  });
});
