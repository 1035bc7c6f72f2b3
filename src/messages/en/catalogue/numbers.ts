/** Words of the page 'How the numbers are made'. Numbers that the model uses come from the model, not from here. */
import type { Lump } from '../../../mechanics/muscle.ts';

export const NUMBERS_TITLE = 'How the numbers are made';
export const NUMBERS_LEAD =
  'Squeeze and pull on the hamstring tendon are estimates of a simple model. They order positions and limit the early stages. They are not measured forces, and nothing here has been held against a force transducer or against how patients fared. What hurt overrides every number.';

export const HEADINGS = {
  steps: 'The model in plain steps',
  use: 'What is made of it',
  checked: 'What it was checked against',
  constants: 'Constants',
  assumptions: 'Assumptions, and how much they matter',
  under: 'What it under-estimates',
  order: 'How far to trust the order',
  disclosed: 'Choices made after seeing results',
  credit: 'Credit and sources',
} as const;

export const STEPS: readonly string[] = [
  'A card gives the angles of hip, knee and trunk at the start and at the turn. Every angle in between lies on a straight line.',
  'The body is trunk with head, arms, thighs, shanks and feet, seen from the side. Lengths are shares of height and masses shares of body mass, the same for everyone.',
  'The pose is closed: the trunk tips until the weight stands over the foot, or turns until feet and shoulders both reach their support.',
  'Weight and supports in balance give the push of the floor. Where two supports could also push against each other, the push that costs the leg least effort is taken, as far as friction holds.',
  'Adding up force times distance about hip and knee gives the turning effect that the muscles must supply.',
  'Seven groups of muscles share it so that the sum of squared stress is least, the hamstrings never below a house share of it at the hip. What the hamstrings pull, at rest and at work, is the pull on the tendon.',
  'The tendon is a belt over the sit bone. It bends over the bone by about the angle of the hip. Squeeze is pull times twice the sine of half that angle, so a straight hip gives none and a right angle 1.4 times the pull.',
  'All of it is asked at 41 moments along the movement. The largest values are what caps are held against.',
];

export const USE: readonly string[] = [
  'Range: from the gentle end of the movement, the largest part in which hip bend, squeeze, pull and share of strength stay under the caps of the stage. It is the smallest of that, of the stage’s own hip bend, and of the angle that provoked pain less a margin. Angles then round down.',
  'Load: from the tested set, by kilograms and by hip moment, the lower of the two, rounded down to the kit. The range is solved at that load. Squeeze need not rise with load, so a cap must hold for every lighter load as well.',
  'Cards with two supports count a quarter more, since the push between supports is the person’s own. That factor stands in the protocol.',
  'Fast work, running, jumps and swings get no estimate. Cards without a pose get none.',
  'Body size hardly changes the range of body-weight exercises. What makes a programme a person’s own is the angle and the load that provoked pain.',
];

export const CHECKED: readonly string[] = [
  'The belt in closed form: no bend, no squeeze; 60° makes it equal to the pull; 180° makes it twice the pull.',
  'Statics worked by hand: a straight leg face down with 5 kg at the ankle, and a straight plank on upper back and heels.',
  'Masses and lengths against the sums of the Winter and the Drillis and Contini tables.',
  'Moment arms and directions against the whole table computed from gait2392: hip −15° to 120°, knee 0° to 90°.',
  'Load sharing against an independent quadratic programming package on 500 random cases, to a millionth of a newton.',
  'Newton’s third law between both legs and the trunk; both moment equations; scaling with mass.',
  'Range and load: at the answer the cap is met, and a hair more breaks it. No tighter cap ever gives more.',
];

export const SHARES = {
  caption: 'Body segments',
  columns: [
    'Segment',
    'Mass, share of body mass',
    'Centre of mass from the upper end',
    'Length, share of height',
  ],
  rows: { foot: 'Foot', shank: 'Shank', thigh: 'Thigh', trunk: 'Trunk with head', arms: 'Both arms' },
  note: 'Masses and centres: Dempster in Winter, read in a published copy of the table. Lengths: Drillis and Contini 1966 in Winter, from memory. For one person a segment’s mass is uncertain by 10 to 15 %.',
} as const;

export const MUSCLES = {
  caption: 'Muscle groups of one leg',
  columns: ['Group', 'Strength, N', 'Hip arm at 0°, cm', 'at 45°', 'at 90°', 'Knee arm at 0°, cm', 'at 90°'],
  note: 'Strength: Rajagopal et al. 2016, read in the published model; a person’s goes by body mass, see there. Arms for a height of 1.80 m, fitted to the path points of gait2392; extension of the hip and flexion of the knee are positive. Between people arms differ by 10 to 15 %.',
} as const;

export const LUMP_WORDS: Readonly<Record<Lump, string>> = {
  hamstrings: 'Hamstrings, three heads from the sit bone',
  bicepsShortHead: 'Biceps femoris, short head',
  hipExtensors: 'Gluteus maximus with adductor magnus',
  vasti: 'Vasti',
  rectusFemoris: 'Rectus femoris',
  iliopsoas: 'Iliopsoas',
  gastrocnemii: 'Gastrocnemii',
};

export const CONSTANTS = {
  caption: 'Other constants',
  columns: ['Constant', 'Value', 'Mark', 'Where from, and how far it could be off'],
} as const;

export const TENSION_AT_REST = {
  caption: 'Pull of the hamstrings at rest, N',
  columns: ['Hip bend', 'Knee straight', 'Knee at 30°', 'Knee at 90°'],
} as const;

export const ASSUMPTIONS = {
  caption: 'Assumptions',
  columns: ['Assumption', 'Why', 'What it can do to the result'],
  rows: [
    ['Seen from the side, slow enough that nothing swings', 'Slow rehabilitation tempo', 'At 3 s a phase inertia is a few per cent. It fails for running, jumps and swings.'],
    ['Both hips in one point, nothing sideways', 'The tasks go forwards and backwards', 'A leg that crosses the midline squeezes too. One-leg tasks are under-estimated.'],
    ['A stiff trunk; a round back only where the card says so', 'Simple', 'With 20° of the bend in the back, not in the hip, squeeze in a hinge falls by 30 % and pull by 7 %.'],
    ['Between two supports, the push that costs least', 'People settle it by effort', 'Times 1.5 to 4 in bridges and thrusts when the heels are dragged in. Nothing in standing on one support.'],
    ['Weight over the middle of the foot', 'Standing people do so', '3 cm forwards or back changes pull by 3 % in a one-leg deadlift, −4 to 12 % in a two-leg one, 30 % in a step-up.'],
    ['Least sum of squared muscle stress', 'Classic, exact, smooth', 'No co-contraction beyond the least share of the hamstrings, no holding back for pain, no habit of one’s own: 30 to 50 % in pull.'],
    ['One hamstring group, equal stress in its heads', 'They cannot be told apart from the side', 'Which head carries more is not known.'],
    ['Muscles equally strong at every length', 'For ordering holds', 'Share of strength sounds too easy at short and long lengths.'],
    ['Arms of one model scaled by height', 'Open and documented', '10 to 15 % between people.'],
    ['Round bone, contact from 0° on', 'The cautious side', 'With contact from 30° on the middle squeeze is 0.59 of this, from 45° on 0.36; the order changes little.'],
    ['Half of the model’s pull at rest', 'Unscaled, a long sit would ask more than is reported', 'Half to twice in stretches, little in lifts.'],
    ['A belt without friction, a tendon without width', 'Closed form', 'Real contact spreads. Good for order only.'],
    ['Calf limited by what the ankle carries', 'It cannot pull more', 'Raises the hamstrings on the heels and with the foot in the air: the cautious side.'],
    ['One set of masses for every sex and build', 'One table', '10 to 15 % in moments.'],
  ],
} as const; // prettier-ignore

export const UNDER: readonly string[] = [
  'Tasks led by the knee: squats, high steps, lunges. A least-effort model uses little hamstring where the knee must straighten; real hamstrings work along. The least share below mends a part of it, and a separate cap on hip bend guards these.',
  'Sitting. Upright sitting comes out at about 0.1 body weights. What hurts in a seat is the seat; it is dosed in minutes.',
  'Long deep stretches. Pull at rest is uncertain by a factor of two either way.',
  'Everything on one leg, since nothing sideways is counted.',
  'Nearly straight knees are over-estimated, not under-estimated: the capsule takes a part.',
];

export const ORDER = {
  before: 'Two cards whose squeeze lies within 25 % of each other are not told apart; the ladder brackets them.',
  table: {
    caption: 'If an assumption is changed: rank correlation with the order used, and middle squeeze',
    columns: ['Change', 'Correlation', 'Squeeze, times'],
    rows: [
      ['Vertical pushes only between two supports', '0.93', '–'],
      ['Friction of 0.5', '0.98', '–'],
      ['Contact from 20° of hip bend on', '0.975', '0.73'],
      ['Contact from 30° on', '0.94', '0.59'],
      ['Contact from 45° on', '0.89', '0.36'],
      ['Muscle areas of Ward et al. 2009, from memory', '0.99', '0.91'],
      ['Pull at rest halved', '0.985', '–'],
      ['Pull at rest doubled', '0.995', '–'],
      ['No pull at rest', '0.87', '–'],
    ],
  },
  after: [
    'Over 31 example tasks, computed once with a reference implementation of the same model. The order holds; the values do not.',
    'It agrees with teaching and with published forces: prone work and bridges from a raised pelvis lowest; deep hinges, one-leg deadlifts and deep lunges highest; more hamstring force in the Nordic than in the one-leg deadlift (Van Hooren 2022, abstract read). Agreement is not proof; see below.',
  ],
} as const; // prettier-ignore

export const DISCLOSED: readonly string[] = [
  'A first run with vertical pushes only, other muscle areas and roughly guessed cards put the hip thrust, the deep lunge and the one-leg bridge on top. What follows was changed afterwards, each for the mechanical reason given, but with knowledge of the order.',
  'Least-effort friction became the default, and vertical pushes an upper estimate. This is what moves bridges down.',
  'Bridges were posed again with contacts that do not slide, and split into from the floor and from a raised pelvis.',
  'The tendon’s arm grows as it bends over the bone, and the arm of the gluteus is held beyond 75°; share of strength in deep bends had come out above 1.',
  'Strengths of young adults took the place of areas of old ones.',
  'The stretch card stands at 90° of hip bend in place of 100°, which is beyond most runners. A leaning card with arm support and the Nordic were added.',
  'The half of the pull at rest was set from remembered torque data before the final table.',
  'So the agreement with clinical teaching is partly built in. It is no independent evidence.',
];

export const CREDIT: readonly string[] = [
  'Muscle geometry is derived from the musculoskeletal model gait2392 by Scott Delp, Peter Loan, Melissa Hoy, Felix Zajac, Eric Topp, Joseph Rosen, Darryl Thelen, Frank Anderson and Ajay Seth; lower limb after Delp et al. 1990, IEEE Trans Biomed Eng 37:757. It is licensed Creative Commons Attribution 3.0 (CC BY 3.0, creativecommons.org/licenses/by/3.0). Changes: lengths, moment arms and directions were computed from the path points, and polynomials were fitted to them.',
  'Summed maximum forces: Rajagopal et al. 2016, full-body model, read.',
  'Segments: Dempster in Winter, Biomechanics and Motor Control, read in a published copy of the table; Drillis and Contini 1966 in Winter, from memory.',
  'Least sum of squared stress and the belt over a round bone are textbook mechanics.',
];

export function seatText({ behindM, belowM }: { behindM: number; belowM: number }): string {
  return `${(behindM * 100).toFixed(1)} cm and ${(belowM * 100).toFixed(1)} cm`;
}

export function backText({ along, behind }: { along: number; behind: number }): string {
  return `${along} of the trunk, ${behind}`;
}

export function bodyText({ massKg, heightM }: { massKg: number; heightM: number }): string {
  return `${massKg} kg, ${heightM} m`;
}

export function limitsText(heightM: readonly number[], massKg: readonly number[]): string {
  return `${heightM.join(' to ')} m, ${massKg.join(' to ')} kg`;
}

export const VALUE_TEXTS = {
  bone: ['Radius of the bone under the tendon', '10 to 30 mm. It changes the squeeze only through the tendon’s arm; the order stays.'],
  onset: ['Hip bend at which contact begins', 'No measured angle is known to us; 0° to 45° are thinkable. Squeeze below would be nought by definition only.'],
  friction: ['Coefficient of friction under feet and back', 'Dry shoe on mat or floor. With 0.5 the order keeps a coefficient of 0.98.'],
  passive: ['Share of the model’s pull at rest that is used', '0.25 to 1.0. People differ by more than this.'],
  stress: ['Force of a square centimetre of muscle', 'Turns strength into area and cancels out of every force.'],
  achilles: ['Arm of the Achilles tendon at 1.80 m', 'Limits what the calf can pull at the knee.'],
  seat: ['Sit bone behind and below the hip at 1.80 m', 'Weighted hamstring origin, computed from gait2392.'],
  height: ['Height of the gait2392 model', 'Lengths and arms scale by height over this.'],
  bench: ['Support of the upper back along the trunk, and behind it as a share of height', 'Where the bench touches.'],
  gravity: ['Gravity', 'As in the published checks.'],
  samples: ['Moments looked at along a movement', 'More change the third digit.'],
  pillow: ['One pillow under the pelvis', 'For landmarks such as two stacked pillows.'],
  separable: ['Nearer than this two cards are not told apart', 'From the spread of the variants above.'],
  body: ['Reference body', 'Used on these pages, and when a consult has no height or mass; the record then says so.'],
  limits: ['Bodies it may be asked about', 'Shares of the tables are not stretched further.'],
} as const; // prettier-ignore
