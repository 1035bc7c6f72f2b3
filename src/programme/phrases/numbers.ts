/**
 * "How the numbers are made": the body model in plain steps, its constants as the code holds them, its assumptions and
 * what it gets wrong. For clinicians; long because it is one page that must be whole.
 */
import { BACK, CENTRE, GRAVITY, LENGTH, MASS, MODEL_HEIGHT_M, SEAT } from '../../mechanics/anthropometry.ts';
import { BONE_RADIUS_M, ONSET_DEG } from '../../mechanics/belt.ts';
import { NOT_SEPARABLE } from '../../mechanics/bracket.ts';
import { FRICTION } from '../../mechanics/friction.ts';
import { PILLOW_CM } from '../../mechanics/landmark.ts';
import { ACHILLES_ARM_M, LUMPS, STRENGTH_N, STRESS_N_PER_CM2, type Lump } from '../../mechanics/muscle.ts';
import { PASSIVE_SHARE } from '../../mechanics/stretch.ts';
import type { Section } from '../programme.ts';
import { list, numberText, paragraph, section, table } from './plain.ts';

export const NUMBERS_TITLE = 'How the numbers are made';

export const NUMBERS_LEAD = [
  'For clinicians. The programme orders exercises by how much they pull on the hamstring tendon and squeeze it against the sit bone, and holds early stages under caps. These are estimates of a simple model of the body. They are not measured forces in a person.',
  'No part of the model has been held against a force transducer or against how patients fared. What hurt overrides it.',
];

const LUMP_WORDS: Readonly<Record<Lump, string>> = {
  hamstrings: 'Hamstrings: three heads from the sit bone',
  bicepsShortHead: 'Biceps femoris, short head',
  hipExtensors: 'Gluteus maximus and adductor magnus',
  vasti: 'Vasti',
  rectusFemoris: 'Rectus femoris',
  iliopsoas: 'Iliopsoas',
  gastrocnemii: 'Gastrocnemius',
};

export function numbersSections(): Section[] {
  return [
    steps(),
    constants(),
    muscles(),
    assumptions(),
    underEstimates(),
    robustness(),
    disclosure(),
    credit(),
  ];
}

function steps(): Section {
  return section('model', 'The model in plain steps', [
    list(
      [
        'A card gives the angles of hip, knee, foot and trunk at the start and the end. Every moment between is in proportion.',
        'The pose is closed: the trunk tips until the weight stands over the foot, or until both supports lie at their heights. This is solved exactly.',
        'Segment masses and the weight in the hands give the force under each support.',
        `Between two supports there is friction too. How much is left to the person: the model takes the least effort, with a friction of at most ${FRICTION}. Caps carry a margin for that.`,
        'From the forces follow the moments that the muscles must supply at hip and knee.',
        'Seven muscle groups share them so that the sum of squared stresses is least. This is solved exactly as well.',
        'The hamstring share is the pull T, all three heads together, with the passive part of a stretched muscle.',
        `The tendon bends over the sit bone like a belt. The squeeze is N = 2 T sin(bend / 2); the bend is nearly the hip flexion beyond ${ONSET_DEG}°.`,
        'The range is the largest from the gentle end on which every cap holds at any load up to the one used. It is rounded down to 5°, loads to what the kit makes.',
      ],
      true,
    ),
  ]);
}

function constants(): Section {
  const rows = [
    [
      'Mass of foot, shank, thigh',
      `${MASS.foot}, ${MASS.shank}, ${MASS.thigh} of body mass`,
      'read',
      'Dempster in Winter',
    ],
    [
      'Mass of trunk with head, both arms',
      `${MASS.trunkHead}, ${MASS.arms} of body mass`,
      'read',
      'Dempster in Winter',
    ],
    [
      'Centres of mass of thigh, trunk, arm',
      `${CENTRE.thigh}, ${CENTRE.trunkHead}, ${CENTRE.arm} of length`,
      'read',
      'Dempster in Winter',
    ],
    [
      'Thigh, shank, ankle height',
      `${LENGTH.thigh}, ${LENGTH.shank}, ${LENGTH.ankle} of height`,
      'memory',
      'Drillis and Contini 1966 in Winter 2009',
    ],
    [
      'Hip to shoulder, shoulder to wrist',
      `${LENGTH.trunk}, ${LENGTH.arm} of height`,
      'memory',
      'Drillis and Contini 1966 in Winter 2009',
    ],
    [
      'Sit bone behind and below the hip',
      `${SEAT.behindM} m, ${SEAT.belowM} m in the ${MODEL_HEIGHT_M} m model`,
      'read',
      'weighted hamstring origin of gait2392',
    ],
    [
      'Upper back on the floor',
      `${BACK.along} of the trunk, ${BACK.behind} of height behind it`,
      'choice',
      'house choice',
    ],
    ['Gravity', `${GRAVITY} m/s²`, 'read', 'as in the published checks'],
    ['Radius of the bone', `${BONE_RADIUS_M} m (0.01 to 0.03)`, 'choice', 'house choice'],
    [
      'Hip flexion at which the tendon meets bone',
      `${ONSET_DEG}°`,
      'choice',
      'cautious side; no measured angle is known to us',
    ],
    ['Friction', String(FRICTION), 'choice', 'house choice'],
    [
      'Share of the passive curve of gait2392',
      String(PASSIVE_SHARE),
      'choice',
      'between 0.25 and 1; whole, it over-states stretch torque',
    ],
    ['Strength of muscle', `${STRESS_N_PER_CM2} N/cm²`, 'memory', 'cancels out of every force'],
    ['Arm of the Achilles tendon', `${ACHILLES_ARM_M} m`, 'memory', 'limits the gastrocnemius'],
    ['One pillow', `${PILLOW_CM} cm`, 'choice', 'house choice'],
  ];
  return section('constants', 'Constants', [
    table('What the model holds fixed', ['What', 'Value', 'Mark', 'Source'], rows),
  ]);
}

function muscles(): Section {
  return section('muscles', 'Muscles', [
    table(
      'Strength of the groups',
      ['Group', 'Largest force', 'Mark'],
      LUMPS.map((lump, index) => [LUMP_WORDS[lump], `${numberText(STRENGTH_N[index] ?? 0)} N`, 'read']),
    ),
    paragraph(
      'Strengths from Rajagopal et al. 2016; only their ratios matter. Moment arms and line of the tendon are fits to gait2392, scaled by height. Beyond 75° of hip flexion the straight gluteus line would run through bone, so its arm is held there.',
    ),
  ]);
}

function assumptions(): Section {
  const rows = [
    [
      'Planar and slow',
      'Right within a few per cent at 3 seconds a phase; wrong for running, jumping, swinging',
    ],
    ['No sideways plane', 'Tasks on one leg are under-estimated, since adduction presses the tendon too'],
    ['Rigid back', '20° of rounding in place of hip bend: squeeze 30 % less'],
    ['Least-effort friction', 'Factor 1.5 to 4 in bridges and hip thrusts; none standing'],
    [
      'Weight over the middle of the foot',
      '3 cm off: pull 3 % in a one-leg deadlift, up to 30 % in a step-up',
    ],
    ['Least squared stress', 'No co-contraction, no pain, no habit: 30 to 50 % in pull'],
    ['One hamstring', 'Heads cannot be told apart'],
    ['No force-length curve', 'Demand is too kind at the ends of the range'],
    ['Arms scaled by height', '10 to 15 % between people'],
    ['Passive share', 'Factor 2 either way in a stretch; little in loaded lifts'],
    ['A belt without friction', 'For order only'],
    ['One body build for all', '10 to 15 % in moments'],
  ];
  return section('assumptions', 'Assumptions and what they cost', [
    table('Assumptions', ['Assumption', 'Effect'], rows),
  ]);
}

function underEstimates(): Section {
  return section('under-estimates', 'What it under-estimates', [
    list([
      'Tasks led by the knee, such as squats and high steps: real hamstrings work along, the least-effort answer leaves them out. The hip-bend cap guards these.',
      'Sitting: the squeeze from muscle is small, the pressure of the seat is not in it. Sitting has a budget of its own.',
      'Long stretches: strong squeeze with little pull, uncertain by a factor of two. They are left out by rule.',
      'Tasks on one leg, for want of the sideways plane.',
    ]),
  ]);
}

function robustness(): Section {
  return section('robustness', 'How far to trust the order', [
    paragraph(
      `Two cards whose squeeze differs by less than ${NOT_SEPARABLE * 100} % are not told apart; the ladder brackets them.`,
    ),
    table(
      'If an assumption is changed: rank correlation with the order used, and median squeeze',
      ['Change', 'Correlation', 'Median'],
      [
        ['Vertical reactions only', '0.93', '-'],
        ['Bone met at 30° of hip flexion', '0.94', '0.59'],
        ['Bone met at 45°', '0.89', '0.36'],
        ['Muscle areas of Ward et al. (from memory)', '0.99', '0.91'],
        ['Passive pull halved or doubled', '0.985, 0.995', '-'],
        ['No passive pull', '0.87', '-'],
      ],
    ),
    paragraph('So the order holds, the absolute values do not.'),
  ]);
}

function disclosure(): Section {
  return section('disclosure', 'Choices made after seeing results', [
    paragraph(
      'The first run put hip thrusts, deep lunges and one-leg bridges on top. These were changed afterwards, each for a mechanical reason, and knowing what it did to the order:',
    ),
    list([
      'least-effort friction instead of vertical reactions only; this moves the bridges down',
      'bridges posed with feet and shoulders that do not slide, split into from the floor and top range',
      'a hamstring arm that goes round the bone, and a gluteus arm held beyond 75°',
      'strengths of young adults instead of elderly donors',
      'the stretch posed at 90° instead of 100°',
      'half of the passive curve, from remembered torques',
    ]),
    paragraph(
      'That the order agrees with what is taught is therefore partly built in. It is no independent evidence.',
    ),
  ]);
}

function credit(): Section {
  return section('credit', 'Credit', [
    paragraph(
      'Muscle geometry derived from the gait2392 model: Delp, Loan, Hoy, Zajac, Topp, Rosen, Thelen, Anderson and Seth; Delp et al. 1990. Licence CC BY 3.0. Strengths after Rajagopal et al. 2016.',
    ),
  ]);
}
