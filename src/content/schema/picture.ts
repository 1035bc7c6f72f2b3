/** The picture of a card that has no pose of the model: poses that are only drawn. */
import * as z from 'zod';
import { ARROW_PLACES, ARROW_WAYS, FRAME_NAMES, HAND_PLACES, VIEWS } from '../../mechanics/drawnPose.ts';
import { pictureRule } from './pictureRule.ts';
import { about, across, from, oneLine } from './words.ts';

const drawnLeg = z.strictObject({
  hip: about('Hip flexion in degrees, 0 standing.', from(-40, 135, '°')).exactOptional(),
  knee: about('Knee flexion in degrees, 0 straight.', from(-5, 150, '°')).exactOptional(),
  out: about(
    'From the front: degrees away from the other leg, towards it negative.',
    from(-30, 80, '°'),
  ).exactOptional(),
  pitch: about(
    'From the side: angle of a foot on the ground, toes up positive.',
    from(-80, 80, '°'),
  ).exactOptional(),
  ankle: about(
    'From the side: ankle of a foot in the air, toes towards the shin positive.',
    from(-60, 40, '°'),
  ).exactOptional(),
});

const drawnFrame = z.strictObject({
  name: about('Which step of the movement it shows.', z.enum(FRAME_NAMES)),
  caption: about(
    'Words under it, where its name does not say enough.',
    oneLine('a few words', 24),
  ).optional(),
  arrow: about(
    'Where an arrow stands and which way it points, where the movement does not show by itself.',
    z.strictObject({
      at: about('The part of the body beside it.', z.enum(ARROW_PLACES)),
      to: about('Its way; out is away from the middle on the working side.', z.enum(ARROW_WAYS)),
    }),
  ).optional(),
  offGroundCm: about('How far the lowest foot is off the ground.', from(0, 60, 'cm')).optional(),
  trunk: about(
    'From the side: trunk from upright, forward positive, lying on the back -90.',
    from(-180, 180, '°'),
  ).optional(),
  lean: about(
    'From the front: side lean of the trunk towards the working side; -90 lies on the other side.',
    from(-90, 90, '°'),
  ).optional(),
  arms: about(
    'From the side: upper arm from straight down, forward positive.',
    from(-180, 200, '°'),
  ).optional(),
  elbow: about('From the side: bend of the elbow, 0 straight.', from(0, 150, '°')).optional(),
  farArm: about(
    'From the side: the far upper arm, where it swings the other way.',
    from(-180, 200, '°'),
  ).optional(),
  hands: about(
    'From the front: where the hands are; elbow rests on the lower forearm.',
    z.enum(HAND_PLACES),
  ).optional(),
  work: about('The working leg.', drawnLeg),
  other: about('The other leg when it does something else.', drawnLeg).optional(),
});

export const pictureSchema = across(
  z.strictObject({
    view: about(
      'From which side it is seen; above shows a body that lies on its back, or one that stands and pushes ahead.',
      z.enum(VIEWS),
    ),
    supports: about(
      'From the side: the body point on something raised; left out, the lowest point stands on the floor.',
      z
        .array(z.enum(['work.mid', 'other.mid', 'both.mid', 'upperBack', 'seat']))
        .max(1, 'at most one support'),
    ).optional(),
    riseCm: about('Height of the step or bench under the support.', from(0, 60, 'cm')).optional(),
    frames: about(
      'The pictures in the order of time.',
      z.array(drawnFrame).min(1, 'at least one frame').max(3, 'at most three frames'),
    ),
  }),
  pictureRule,
);

export type PictureFrontMatter = z.output<typeof pictureSchema>;
