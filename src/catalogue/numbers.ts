/** The page 'How the numbers are made': the model's own constants beside the words about them. */
import type { Messages } from '../messages/messages.ts';
import type { Library } from '../content/library.ts';
import { BACK, CENTRE, GRAVITY, LENGTH, MASS, MODEL_HEIGHT_M, SEAT } from '../mechanics/anthropometry.ts';
import { BONE_RADIUS_M, ONSET_DEG } from '../mechanics/belt.ts';
import { BODY_LIMITS, REFERENCE_BODY } from '../mechanics/body.ts';
import { NOT_SEPARABLE } from '../mechanics/bracket.ts';
import { FRICTION } from '../mechanics/friction.ts';
import { PILLOW_CM } from '../mechanics/landmark.ts';
import { ACHILLES_ARM_M, armsAt, LUMPS, STRENGTH_N, STRESS_N_PER_CM2 } from '../mechanics/muscle.ts';
import { PASSIVE_SHARE, passiveTensionN } from '../mechanics/passiveTension.ts';
import { SAMPLES } from '../mechanics/sweep.ts';

import { list, paragraph, section, type Part } from '../messages/shapes.ts';
import type { Model } from '../decisions/person/model.ts';
import { muscleSections } from './muscleNumbers.ts';
import type { PlainPage } from './view.ts';

export function numbersPage(say: Messages, library: Library, model: Model): PlainPage {
  return {
    title: say.NUMBERS_TITLE,
    lead: say.NUMBERS_LEAD,
    sections: [
      section('model', say.HEADINGS.steps, [list(say.STEPS, true)]),
      section('use', say.HEADINGS.use, [list(say.USE)]),
      section('under', say.HEADINGS.under, [list(say.UNDER)]),
      section('order', say.HEADINGS.order, [
        paragraph(say.ORDER.before),
        { kind: 'table', table: say.ORDER.table },
        ...say.ORDER.after.map((one) => paragraph(one)),
      ]),
      ...muscleSections(say, library, model),
      section('assumptions', say.HEADINGS.assumptions, [{ kind: 'table', table: say.ASSUMPTIONS }]),
      section('constants', say.HEADINGS.constants, constants(say)),
      section('checked', say.HEADINGS.checked, [list(say.CHECKED)]),
      section(
        'disclosed',
        say.HEADINGS.disclosed,
        say.DISCLOSED.map((one) => paragraph(one)),
      ),
      section(
        'credit',
        say.HEADINGS.credit,
        say.CREDIT.map((one) => paragraph(one)),
      ),
    ],
  };
}

function constants(say: Messages): Part[] {
  return [
    segments(say),
    paragraph(say.SHARES.note, 'quiet'),
    muscles(say),
    paragraph(say.MUSCLES.note, 'quiet'),
    pullAtRest(say),
    others(say),
  ];
}

function segments(say: Messages): Part {
  const { rows } = say.SHARES;
  const row = (name: string, mass: number, centre: number, length: number) => [
    name,
    String(mass),
    String(centre),
    String(length),
  ];
  return {
    kind: 'table',
    table: {
      caption: say.SHARES.caption,
      columns: say.SHARES.columns,
      rows: [
        // The foot's centre is given from the ankle, forward and down; its length is not used.
        [rows.foot, String(MASS.foot), '–', '–'],
        row(rows.shank, MASS.shank, CENTRE.shank, LENGTH.shank),
        row(rows.thigh, MASS.thigh, CENTRE.thigh, LENGTH.thigh),
        row(rows.trunk, MASS.trunkHead, CENTRE.trunkHead, LENGTH.trunk),
        row(rows.arms, MASS.arms, CENTRE.arm, LENGTH.arm),
      ],
    },
  };
}

function muscles(say: Messages): Part {
  const arms = (hipDeg: number, kneeDeg: number) => armsAt(hipDeg, kneeDeg, MODEL_HEIGHT_M);
  const columns = [arms(0, 0).hipM, arms(45, 0).hipM, arms(90, 0).hipM, arms(0, 0).kneeM, arms(0, 90).kneeM];
  return {
    kind: 'table',
    table: {
      caption: say.MUSCLES.caption,
      columns: say.MUSCLES.columns,
      rows: LUMPS.map((lump, at) => [
        say.LUMP_WORDS[lump],
        String(STRENGTH_N[at]),
        ...columns.map((column) => cmText(column[at] ?? 0)),
      ]),
    },
  };
}

// A muscle that does not cross a joint has no arm there.
function cmText(metres: number): string {
  if (metres === 0) return '–';
  const cm = (Math.abs(metres) * 100).toFixed(1);
  return metres < 0 ? `−${cm}` : cm;
}

function pullAtRest(say: Messages): Part {
  const rows = [0, 30, 60, 90].map((hipDeg) => [
    say.degText(hipDeg),
    ...[0, 30, 90].map((kneeDeg) => String(Math.round(passiveTensionN(hipDeg, kneeDeg)))),
  ]);
  return { kind: 'table', table: { ...say.TENSION_AT_REST, rows } };
}

/** The constants of the model in the order they are shown, with how sure each is. */
const VALUE_MARKS = {
  bone: 'choice',
  onset: 'choice',
  friction: 'choice',
  passive: 'choice',
  stress: 'memory',
  achilles: 'memory',
  seat: 'read',
  height: 'memory',
  bench: 'choice',
  gravity: 'read',
  samples: 'choice',
  pillow: 'choice',
  separable: 'choice',
  body: 'choice',
  limits: 'choice',
} as const;

function others(say: Messages): Part {
  const { heightM, massKg } = BODY_LIMITS;
  const values: Readonly<Record<keyof typeof VALUE_MARKS, string>> = {
    bone: `${BONE_RADIUS_M * 1000} mm`,
    onset: say.degText(ONSET_DEG),
    friction: String(FRICTION),
    passive: String(PASSIVE_SHARE),
    stress: `${STRESS_N_PER_CM2} N`,
    achilles: `${ACHILLES_ARM_M * 100} cm`,
    seat: say.seatText(SEAT),
    height: `${MODEL_HEIGHT_M.toFixed(2)} m`,
    bench: say.backText(BACK),
    gravity: `${GRAVITY} m/s²`,
    samples: String(SAMPLES),
    pillow: `${PILLOW_CM} cm`,
    separable: `${NOT_SEPARABLE * 100} %`,
    body: say.bodyText(REFERENCE_BODY),
    limits: say.limitsText(heightM, massKg),
  };
  const rows = (Object.keys(VALUE_MARKS) as (keyof typeof VALUE_MARKS)[]).map((name) => {
    const [text, where] = say.VALUE_TEXTS[name];
    return [text, values[name], say.MARK_WORDS[VALUE_MARKS[name]], where];
  });
  return { kind: 'table', table: { ...say.CONSTANTS, rows } };
}
