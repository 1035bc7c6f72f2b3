/** An exercise card: one exercise with its pose, its cautions and its evidence. */
import * as z from 'zod';
import { PROPS, RESTING_HANDS } from '../../mechanics/scene.ts';
import {
  about,
  across,
  cannotDo,
  changed,
  date,
  equipment,
  from,
  id,
  line,
  mark,
  muscle,
  position,
  source,
  tempo,
  title,
  yesNo,
} from './words.ts';
import { exerciseRule, legRule } from './exerciseRules.ts';
import { pictureSchema } from './picture.ts';

// Outside these no human joint goes; a slip such as hip 200 is caught here.
const leg = across(
  z.strictObject({
    hip: about('Hip flexion in degrees, 0 standing.', from(-30, 135, '°')),
    knee: about('Knee flexion in degrees, 0 straight.', from(-5, 150, '°')),
    pitch: about('Angle of a foot on the ground, toes up positive.', from(-80, 80, '°')).exactOptional(),
    ankle: about(
      'Ankle of a foot in the air, toes towards the shin positive.',
      from(-60, 40, '°'),
    ).exactOptional(),
  }),
  legRule,
);

const pose = z.strictObject({
  trunk: about('Trunk from upright, forward positive, lying on the back -90.', from(-180, 180, '°')),
  lumbar: about('Forward bend between pelvis and trunk.', from(0, 80, '°')).exactOptional(),
  arms: about(
    'trunk, hang, or degrees from straight down, forward positive.',
    z.union([z.enum(['trunk', 'hang']), from(-180, 200, '°')], 'trunk, hang or degrees'),
  ).exactOptional(),
  work: about('The working leg.', leg),
  other: about('The other leg when it does something else.', leg).exactOptional(),
});

const SUPPORTS = [
  'upperBack',
  'seat',
  'shoulder',
  'hands',
  'work.heel',
  'work.mid',
  'work.fore',
  'work.knee',
  'work.ankle',
  'other.heel',
  'other.mid',
  'other.fore',
  'other.knee',
  'other.ankle',
  'both.heel',
  'both.mid',
  'both.fore',
  'both.knee',
  'both.ankle',
] as const;

export const KINDS = ['isometric', 'isotonic', 'energy-storage', 'mobility', 'running-drill'] as const;

export const exerciseSchema = across(
  z.strictObject({
    title: about('The name as the patient reads it.', title),
    alsoCalled: about('What colleagues call it: words of the trade, no brand.', z.array(line).max(8)).default(
      [],
    ),
    muscles: about('Muscles it is used for, the main one first: common practice.', z.array(muscle)).default(
      [],
    ),
    kind: about('How it loads the tendon.', z.enum(KINDS)),
    positions: about(
      'Positions it uses; a stage admits the card only if it admits them all.',
      z.array(position).min(1, 'at least one position'),
    ),
    start: about('Pose at the start.', pose).optional(),
    end: about('Pose at the end of the movement; left out for a hold.', pose).optional(),
    supports: about(
      'Body points that rest on something, at most two.',
      z.array(z.enum(SUPPORTS)).max(2, 'at most two supports'),
    ).optional(),
    solve: about(
      'How the pose is closed.',
      z.strictObject({
        unknown: about('What turns until it fits.', z.enum(['trunk', 'other.knee'])),
        kind: about('balance over one support, or height between two.', z.enum(['balance', 'height'])),
        dh: about('Metres by which the first support is higher.', from(-1, 1, 'm')).exactOptional(),
        range: about(
          'Degrees in which to look, lowest first.',
          z.tuple([from(-180, 180, '°'), from(-180, 180, '°')]),
        ),
      }),
    ).optional(),
    mode: about(
      'active, thighSupported on a bench, or passive.',
      z.enum(['active', 'thighSupported', 'passive']),
    ).optional(),
    horizontal: about(
      'Friction between two supports: minEffort or none.',
      z.enum(['minEffort', 'none']),
    ).optional(),
    loadAt: about(
      'Where a weight sits, if the exercise can carry one.',
      z.enum(['hands', 'shoulder', 'pelvisFront', 'work.ankle', 'both.ankle', 'work.knee']),
    ).optional(),
    pickUpHeightCm: about('Height from which the weight is lifted.', from(0, 150, 'cm')).optional(),
    props: about('Things drawn with the body.', z.array(z.enum(PROPS))).default([]),
    range: about(
      'How the range can be graded: continuous, by steps, or fixed.',
      z.enum(['continuous', 'steps', 'fixed']),
    ).default('fixed'),
    legs: about(
      'For a card without a pose: both legs together or each in turn.',
      z.enum(['together', 'each']),
    ).optional(),
    alternating: about('yes: the legs take turns within a set, as in running or skipping.', yesNo).optional(),
    peakHipFlexionDeg: about(
      'For a card without a pose: its largest hip bend.',
      from(0, 140, '°'),
    ).optional(),
    mark: about('For a card without a pose: how sure that angle is.', mark).optional(),
    hands: about(
      'Where empty hands rest in the picture; the model keeps the arms of the pose.',
      z.enum(RESTING_HANDS),
    ).optional(),
    picture: about(
      'For a card without a pose: what is drawn. The model says nothing of it.',
      pictureSchema,
    ).optional(),
    equipment: about('What it cannot be done without.', z.array(equipment)),
    needs: about('What the person must be able to do, in the cannot-do words.', z.array(cannotDo)),
    tempo: about('Tempo of a repetition; for a hold, of going into it and out of it.', tempo),
    easier: about('The card to fall back on.', id).optional(),
    harder: about('The card to go on to.', id).optional(),
    landmark: about(
      'How the patient sees alone how far to go, when the pose does not say it.',
      line,
    ).optional(),
    photos: about(
      'Photos beside this file, for the public page of the card; a leaflet shows its figure.',
      z.array(
        z.strictObject({
          file: about(
            'The name of the picture.',
            z
              .string()
              .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*\.(png|jpe?g|webp)$/i, 'a PNG, JPEG or WebP file name'),
          ),
          alt: about('What it shows, for those who cannot see it.', line),
        }),
      ),
    ).optional(),
    fewAtFirst: about(
      'yes: a first session has few repetitions of it, as its words say; how many is in the protocol.',
      yesNo,
    ).optional(),
    cautions: about('What to watch for, a sentence each.', z.array(line).min(1, 'at least one caution')),
    withWeight: about(
      'Cautions and sentences of the body that stand on a leaflet only where the dose carries a weight, word for word.',
      z.array(line),
    ).default([]),
    evidence: about('What the card rests on.', z.array(source).min(1, 'at least one source with its mark')),
    changed: about('What was changed when; the feed of the site tells of it.', changed),
    reviewedOn: about('Last review of the card.', date),
    nextReviewOn: about('Next review of the card.', date),
  }),
  exerciseRule,
);

export type ExerciseFrontMatter = z.output<typeof exerciseSchema>;
