/** Words colleagues type into the search of the library for what a card is: of the trade, in no sentence. */
import type { ExerciseCard } from '../../../content/library.ts';
import type { CannotDo, Muscle } from '../../../content/schema/words.ts';

export const KIND_TERMS: Readonly<Record<ExerciseCard['kind'], string>> = {
  isometric: 'isometric, static hold',
  isotonic: 'isotonic, concentric, slow strength, heavy slow resistance, HSR',
  'energy-storage': 'energy storage, plyometric, power, fast',
  mobility: 'mobility, range of motion, ROM',
  'running-drill': 'running drill',
};

export const MUSCLE_TERMS: Readonly<Record<Muscle, string>> = {
  hamstrings: 'hamstrings, biceps femoris, semitendinosus, semimembranosus',
  'gluteus-maximus': 'gluteus maximus, glute max, gluteals, buttock, hip extensors',
  'gluteus-medius': 'gluteus medius and minimus, glute med, gluteals, hip abductors',
  adductors: 'adductors, groin',
  quadriceps: 'quadriceps, thigh, knee extensors',
  calf: 'calf, calves, soleus, gastrocnemius, Achilles',
  'hip-flexors': 'hip flexors, iliopsoas',
  trunk: 'trunk, core, abdominals',
};

/** By which the search is asked for cards that leave nobody out for this: a reason against a card, and no word of it. */
export const REASON_TERMS: Readonly<Partial<Record<CannotDo, string>>> = {
  'hip-replacement': 'hip replacement, replaced hip, hip arthroplasty, THR',
  'pregnant-or-postpartum': 'pregnant, pregnancy, postpartum, after birth',
  'uncontrolled-blood-pressure': 'blood pressure, hypertension',
  osteoporosis: 'osteoporosis, osteopenia',
  dizziness: 'dizziness, dizzy, vertigo',
};

/** For what asks for nothing that does not stand in every home. */
export const NO_KIT_TERMS = 'no equipment, no kit, no weights, no gym, body weight, bodyweight';

/** What a weight can be, by where it sits. */
export const WEIGHT_TERMS = {
  hands: 'kettlebell, dumbbell, barbell, weights',
  shoulder: 'barbell, rucksack, weights',
  pelvisFront: 'barbell, weight plate, weights',
  'work.ankle': 'ankle weight, weights',
  'both.ankle': 'ankle weight, weights',
  'work.knee': 'dumbbell, weight plate, weights',
} as const;

export const LEGS_TERMS: Readonly<Record<ExerciseCard['legs'], string>> = {
  together: 'both legs, double leg, bilateral',
  each: 'one leg, single leg, unilateral',
};
