/** What to heed because of blood pressure, a bone, a medicine, pregnancy or birth, in the patient's words. */
import type { Maternity } from '../../../decisions/screen/maternity.ts';
import type {
  BodyItem,
  BoneItem,
  BreathItem,
  MedicineItem,
  Precautions,
} from '../../../decisions/person/precautions.ts';
import { type Part, type Section, list, section } from '../../shapes.ts';
import { countText, listText } from '../plain.ts';

/** What the leaflet says is left out, besides what the plan holds. */
export interface PrecautionFacts {
  /** There is a run or a walk-run in the plan. */
  readonly runs: boolean;
  /** No jumping or running after birth before this week. */
  readonly impactFromWeek: number;
}

/** Without parts where nothing has to be heeded. */
export function precautionsText(precautions: Precautions, facts: PrecautionFacts): Section {
  const lines = [
    ...breathLines(precautions),
    ...boneLines(precautions),
    ...medicineLines(precautions),
    ...(precautions.sudden ? SUDDEN : []),
    ...maternityLines(precautions, facts),
    ...precautions.body.map((item) => BODY_WORDS[item]),
  ];
  const parts: Part[] = lines.length === 0 ? [] : [list(lines)];
  return section('precautions', 'What to heed', parts);
}

const BREATHE = 'Breathe out as you push. Never hold your breath.';

const BREATH_KNOWN: Readonly<Record<BreathItem, string>> = {
  uncontrolledBloodPressure: 'Your blood pressure is not under control yet.',
  hernia: 'You have a hernia.',
};
const BREATH_CLEARED: Readonly<Record<BreathItem, string>> = {
  uncontrolledBloodPressure: 'Your blood pressure has been high. It has been looked at since.',
  hernia: 'You have a hernia. It has been looked at.',
};
const BREATH_NAMES: Readonly<Record<BreathItem, string>> = {
  uncontrolledBloodPressure: 'your blood pressure',
  hernia: 'a hernia',
};

/** How long to hold and when to stop a set; empty where nothing bars straining. */
function effortText({ holdAtMostSeconds, reserveAtLeast }: Precautions): string {
  const hold =
    holdAtMostSeconds === null ? '' : ` Hold for ${countText(holdAtMostSeconds, 'second')} at most.`;
  return reserveAtLeast === null
    ? hold
    : `${hold} End each set while you could still do ${reserveAtLeast} more.`;
}

function breathLines(precautions: Precautions): string[] {
  const { breath } = precautions;
  if (breath.length === 0) return [];
  const yes = breath.flatMap(({ item, known }) =>
    known === 'not-asked' ? [] : [(known === 'yes' ? BREATH_KNOWN : BREATH_CLEARED)[item]],
  );
  const open = breath.filter(({ known }) => known === 'not-asked').map(({ item }) => BREATH_NAMES[item]);
  const items = breath.map(({ item }) => item);
  const short = effortText(precautions);
  return [
    [
      ...yes,
      ...(open.length === 0 ? [] : [`We have not asked about ${listText(open)} yet, so we take care.`]),
      BREATHE,
    ].join(' ') + short,
    ...(items.includes('uncontrolledBloodPressure')
      ? ['Stop at headache or dizziness. Tell us or your doctor before you go on.']
      : []),
    ...(items.includes('hernia') ? ['Stop if a bulge grows or hurts, and tell us.'] : []),
  ];
}

const BONE_KNOWN: Readonly<Record<BoneItem, string>> = {
  hopPain: 'A bone hurts when you hop.',
  focalBonePain: 'One spot of bone hurts.',
  nightBonePain: 'A bone hurts at night or at rest.',
  missedPeriods: 'Your periods have stayed away.',
  lowEnergy: 'You may be eating too little for what you do.',
};
const BONE_NAMES: Readonly<Record<BoneItem, string>> = {
  hopPain: 'bone pain when you hop',
  focalBonePain: 'one sore spot of bone',
  nightBonePain: 'bone pain at night',
  missedPeriods: 'missed periods',
  lowEnergy: 'how much you eat',
};

// Common practice, no source: a bone that may be overloaded is kept from impact until it has been looked at.
function boneLines({ bone }: Precautions): string[] {
  if (bone.length === 0) return [];
  const yes = bone.filter(({ known }) => known === 'yes').map(({ item }) => BONE_KNOWN[item]);
  const open = bone.filter(({ known }) => known === 'not-asked').map(({ item }) => BONE_NAMES[item]);
  return [
    [
      ...yes,
      ...(open.length === 0 ? [] : [`We have not asked about ${listText(open)} yet, so we take care.`]),
      'No running and no jumping until it has been looked at.',
    ].join(' '),
    'Stop and tell us soon if a bone hurts when you walk, or hurts more than now.',
  ];
}

const MEDICINE_KNOWN: Readonly<Record<MedicineItem, string>> = {
  oralSteroid: 'You take steroid tablets. Go on with them as your doctor says.',
  fluoroquinolone: 'You had an antibiotic that tendons do not like (a fluoroquinolone).',
  recentInjection: 'You had an injection near the tendon.',
};
const MEDICINE_NAMES: Readonly<Record<MedicineItem, string>> = {
  oralSteroid: 'steroid tablets',
  fluoroquinolone: 'a certain antibiotic (a fluoroquinolone)',
  recentInjection: 'an injection near the tendon',
};

function medicineLines({ medicines }: Precautions): string[] {
  if (medicines.length === 0) return [];
  const yes = medicines.filter(({ known }) => known === 'yes').map(({ item }) => MEDICINE_KNOWN[item]);
  const open = medicines.filter(({ known }) => known === 'not-asked').map(({ item }) => MEDICINE_NAMES[item]);
  return [
    [
      ...yes,
      ...(open.length === 0 ? [] : [`We do not know yet whether you had ${listText(open, 'or')}.`]),
      'So this plan is light: still holds and gentle moving, no weight, no running.',
    ].join(' '),
    'Ask the doctor who prescribed or gave it before you do more.',
    'A snap, a sudden sharp pain, or a leg that gives way: stop, and be seen the same day.',
  ];
}

const SUDDEN = [
  'Add no weight of your own to this first plan.',
  'A new pop, a new bruise, a sudden sharp pain, or a leg that gives way: stop, and be seen the same day.',
] as const;

// Common practice, no source: what is said with each of these before any exercise.
const BODY_WORDS: Readonly<Record<BodyItem, string>> = {
  dizziness:
    'You get dizzy at times. Keep a hand on something steady while you stand. Get up slowly, and stop when you feel dizzy.',
  osteoporosis: 'You have osteoporosis. Keep your back straight when you bend, and do not twist under load.',
  'hip-replacement': 'You have a new hip. What your surgeon told you not to do comes first.',
};

const ASK = 'Ask your midwife or doctor about this plan, and before you do more.';
const NOT_FLAT = 'Do not lie flat on your back for long.';
// General stop signs of exercise in pregnancy and after birth, from memory; local advice comes first. Chest pain,
// breathlessness and a swollen leg stand in the emergency box beside them.
const PREGNANT_SIGNS =
  'Stop, and call your midwife or doctor at once for these: bleeding, lost fluid, or a belly that tightens again and again. Also for a headache or dizziness that stays, or a baby that moves less.';
const BIRTH_SIGNS =
  'Stop if you leak urine, feel a weight or bulge below, or a scar hurts. Then ask your midwife, your doctor or us. Call at once for heavy bleeding or fever.';

function maternityLines(precautions: Precautions, facts: PrecautionFacts): string[] {
  const { maternity } = precautions;
  if (maternity === null) return [];
  const flat = maternity.liesFlat ? [] : [NOT_FLAT];
  // Once is enough: with blood pressure or a hernia it stands there already.
  const breathe = precautions.breath.length > 0 ? [] : [BREATHE + effortText(precautions)];
  switch (maternity.kind) {
    case 'pregnant':
      return [
        `You are pregnant. ${ASK}`,
        ...breathe,
        ...flat,
        facts.runs
          ? 'No jumping, and nothing fast. Run easy at most.'
          : 'No jumping, and no running in this plan.',
        PREGNANT_SIGNS,
      ];
    case 'after-birth':
      return [
        `${bornText(maternity, facts)} ${ASK}`,
        ...breathe,
        ...impactLines(maternity, facts),
        BIRTH_SIGNS,
      ];
    case 'not-recorded':
      return [
        `You are pregnant, or gave birth not long ago. ${ASK}`,
        ...breathe,
        ...flat,
        'No jumping and no running until we have talked about it.',
        PREGNANT_SIGNS,
        BIRTH_SIGNS,
      ];
  }
}

function bornText({ weeks }: Maternity, { impactFromWeek }: PrecautionFacts): string {
  return weeks !== null && weeks >= impactFromWeek
    ? 'You gave birth some months ago.'
    : 'You gave birth not long ago.';
}

function impactLines({ jumps, clearedBy }: Maternity, { impactFromWeek }: PrecautionFacts): string[] {
  if (!jumps)
    return [
      `No jumping and no running in the first ${countText(impactFromWeek, 'week')} after birth, unless you have been cleared for it.`,
    ];
  return clearedBy === null
    ? []
    : ['You have been cleared to run or jump as far as this plan goes, and no further.'];
}
