/** Invented words and numbers for the style page: one of everything, nobody's. */
import { postureOf } from '../../../mechanics/kinematics.ts';
import type { Pose } from '../../../mechanics/pose.ts';
import type { SideFrame } from '../../../mechanics/scene.ts';
import {
  type Cell,
  type CompressionLadder,
  type Exercise,
  type RangeRuler,
  type StepTable,
} from '../../../programme/programme.ts';
import { CELLS, type CellName } from '../../../decisions/terms/cell.ts';
import type { EmergencyBox, LogSheet, Section } from '../../../messages/shapes.ts';
import type { IsoDate } from '../../../units/date.ts';
import { COLUMN_WORDS } from '../../../messages/en/patient/dose.ts';

const BODY = { massKg: 70, heightM: 1.75 };
const CARD = 'forward-bend';
const SLOT = 'slow bend';

const DOSE: Partial<Record<CellName, readonly [number | string, string]>> = {
  sets: [3, '3 sets'],
  repetitions: [8, '8 repetitions'],
  tempo: ['3-0-3', '3 seconds down, 3 seconds up'],
  restSeconds: [120, '2 minutes'],
  loadKg: [16, '8 kg in each hand'],
  reserve: [3, 'you could do 3 more'],
  hipFlexionDeg: [45, '45°'],
  howFar: ['hands-above-knee-18', 'Hands 18 cm above the knee'],
  days: ['tue,fri', 'Tuesday and Friday'],
};

const [present, coming] = [step(1, DOSE), step(2, { ...DOSE, repetitions: [10, '10 repetitions'] })];

export const sampleSteps: readonly StepTable[] = [present, coming];

export const sampleExercise: Exercise = {
  card: CARD,
  title: 'Forward bend with a long back',
  slot: SLOT,
  side: 'Both legs together',
  between: { label: 'Between sessions', text: 'Tuesday and Thursday' },
  dose: '3 × 8',
  doseSign: { figures: '3 × 8', sign: '', unit: '' },
  doseWords: '3 sets of 8 repetitions',
  doseParts: [
    { text: '3 sets', cell: 'sets' },
    { text: ' of ', cell: null },
    { text: '8 repetitions', cell: 'repetitions' },
  ],
  figures: {
    scene: {
      view: 'side',
      body: BODY,
      side: 'right',
      supports: ['both.mid'],
      supportRiseM: 0,
      props: ['floor'],
      weight: { kind: 'dumbbell', at: 'hands', kg: 16 },
      frames: [
        frame('start', 5, { trunk: 2.6, arms: 'hang', work: { hip: 5, knee: 10, pitch: 0 } }),
        frame('end', 45, { trunk: 28, arms: 'hang', work: { hip: 45, knee: 20, pitch: 0 } }),
      ],
    },
    captions: ['Start', 'This far, then back'],
    captionsWithDegrees: ['Start: hip 5°', 'This far, then back: hip 45°'],
    legend: null,
    alt: 'Standing with a weight in each hand, then leaning forward with a long back to a hip bend of 45 degrees.',
  },
  howFar: ['Hands 18 cm above the knee'],
  facts: [{ label: 'Weight', text: '8 kg in each hand', cell: 'loadKg' }],
  body: [
    {
      heading: 'How',
      blocks: [
        {
          kind: 'paragraph',
          text: [
            { kind: 'text', text: 'Send the seat back as if to close a door with it. The back stays ' },
            { kind: 'emphasis', children: [{ kind: 'text', text: 'long' }] },
            { kind: 'text', text: '.' },
          ],
        },
      ],
    },
  ],
  cautions: ['Tingling down the leg: stop this exercise.'],
  cells: present.prescriptions.flatMap(({ cells }) => cells),
};

export const sampleText: Section = {
  id: 'sample-text',
  heading: 'A section',
  parts: [
    { kind: 'paragraph', text: 'The sentence that matters most stands strong.', weight: 'strong' },
    { kind: 'paragraph', text: 'A plain paragraph says the rest in short words.', weight: 'normal' },
    { kind: 'list', ordered: true, entries: ['First this.', 'Then that.'] },
    { kind: 'list', ordered: false, entries: ['One of several.', 'Another of them.'] },
    {
      kind: 'table',
      table: {
        caption: 'A table',
        columns: ['Seat', 'Minutes'],
        rows: [
          ['Upright on a cushion', '20'],
          ['Hard seat, or leaning forward', '10'],
        ],
      },
    },
    { kind: 'paragraph', text: 'What is only for information stands back.', weight: 'quiet' },
  ],
};

export const sampleCaution: Section = {
  id: 'sample-caution',
  heading: 'How much pain is all right',
  parts: [{ kind: 'paragraph', text: 'Up to 3 out of 10 is all right.', weight: 'strong' }],
};

export const sampleEmergency: EmergencyBox = {
  country: 'nowhere',
  heading: 'Emergency: 000',
  call: 'Call 000 at once for any of these:',
  lines: ['new numbness between the legs', 'weakness in both legs'],
  then: ['Urgent but no emergency: ring the clinic.'],
  foreign: [],
};

export const sampleLog: LogSheet = {
  heading: 'Log',
  hint: 'Fill in one line a day.',
  columns: ['Day', 'Planned', 'Morning check 0-10', 'Done', 'Slept well'],
  days: [
    { on: '2026-03-03' as IsoDate, label: 'Tuesday 3 March', planned: 'Session' },
    { on: '2026-03-04' as IsoDate, label: 'Wednesday 4 March', planned: 'Easy run' },
  ],
};

export const sampleRuler: RangeRuler = {
  fromDeg: 5,
  toDeg: 45,
  ticks: [
    { stage: '1', capDeg: 30 },
    { stage: '2', capDeg: 60 },
    { stage: '3', capDeg: 90 },
  ],
  alt: 'Hip bend from 5 to 45 of 120 degrees. Caps: 30, 60 and 90 degrees.',
};

export const sampleLadder: CompressionLadder = {
  rungs: [
    { card: 'hold', title: 'Long bridge, held', compressionBw: 0.05, prescribed: true, bracket: 0 },
    { card: 'step', title: 'Step-up', compressionBw: 0.24, prescribed: false, bracket: 1 },
    { card: 'bridge', title: 'Single-leg bridge', compressionBw: 0.27, prescribed: false, bracket: 1 },
    { card: CARD, title: 'Forward bend with a long back', compressionBw: 0.56, prescribed: true, bracket: 2 },
    { card: 'squat', title: 'Split squat', compressionBw: 1.12, prescribed: false, bracket: 3 },
  ],
  caps: [
    { stage: '1', compressionBw: 0.35 },
    { stage: '2', compressionBw: 0.8 },
  ],
  alt: 'Five cards by squeeze, from 0.05 to 1.12 body weights; caps at 0.35 and 0.8. Two are prescribed.',
};

function step(number: number, dose: typeof DOSE): StepTable {
  return {
    step: number,
    heading: `Step ${number}`,
    columns: COLUMN_WORDS,
    caption: `What you do in step ${number}`,
    change: number === 1 ? '' : 'Two repetitions more.',
    goOnWhen: number === 1 ? [] : ['the full dose is done in 2 sessions'],
    present: number === 1,
    prescriptions: [
      {
        card: CARD,
        title: 'Forward bend with a long back',
        slot: SLOT,
        cells: CELLS.filter((name) => name !== 'kneeFlexionDeg' && name !== 'ankleDorsiflexionDeg').map(
          (name) => cell(number, name, dose[name]),
        ),
        news: number === 1 ? [] : ['repetitions'],
      },
    ],
  };
}

function cell(step: number, name: CellName, dose: readonly [number | string, string] | undefined): Cell {
  const [value, text] = dose ?? [null, ''];
  return {
    step,
    slot: SLOT,
    card: CARD,
    cell: name,
    value,
    text,
    rule: 'A rule in words.',
    inputs: {},
    source: { cite: 'house choice', mark: 'choice' },
    decidedBy: 'dose',
  };
}

function frame(name: SideFrame['name'], hipFlexionDeg: number, pose: Pose): SideFrame {
  return { name, hipFlexionDeg, posture: postureOf(pose, BODY) };
}
