/** The page 'How the numbers are made': the model's own constants beside the words about them. */
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
import { degText, MARK_WORDS } from '../messages/en/catalogue/library.ts';
import {
  ASSUMPTIONS,
  CHECKED,
  CONSTANTS,
  CREDIT,
  DISCLOSED,
  HEADINGS,
  LUMP_WORDS,
  MUSCLES,
  NUMBERS_LEAD,
  NUMBERS_TITLE,
  ORDER,
  SHARES,
  STEPS,
  TENSION_AT_REST,
  UNDER,
  USE,
  VALUE_TEXTS,
  seatText,
  backText,
  bodyText,
  limitsText,
} from '../messages/en/catalogue/numbers.ts';
import { list, paragraph, section, type Part } from '../messages/shapes.ts';
import type { Model } from '../decisions/person/model.ts';
import { muscleSections } from './muscleNumbers.ts';
import type { PlainPage } from './view.ts';

export function numbersPage(library: Library, model: Model): PlainPage {
  return {
    title: NUMBERS_TITLE,
    lead: NUMBERS_LEAD,
    sections: [
      section('model', HEADINGS.steps, [list(STEPS, true)]),
      section('use', HEADINGS.use, [list(USE)]),
      section('under', HEADINGS.under, [list(UNDER)]),
      section('order', HEADINGS.order, [
        paragraph(ORDER.before),
        { kind: 'table', table: ORDER.table },
        ...ORDER.after.map((one) => paragraph(one)),
      ]),
      ...muscleSections(library, model),
      section('assumptions', HEADINGS.assumptions, [{ kind: 'table', table: ASSUMPTIONS }]),
      section('constants', HEADINGS.constants, constants()),
      section('checked', HEADINGS.checked, [list(CHECKED)]),
      section(
        'disclosed',
        HEADINGS.disclosed,
        DISCLOSED.map((one) => paragraph(one)),
      ),
      section(
        'credit',
        HEADINGS.credit,
        CREDIT.map((one) => paragraph(one)),
      ),
    ],
  };
}

function constants(): Part[] {
  return [
    segments(),
    paragraph(SHARES.note, 'quiet'),
    muscles(),
    paragraph(MUSCLES.note, 'quiet'),
    pullAtRest(),
    others(),
  ];
}

function segments(): Part {
  const { rows } = SHARES;
  const row = (name: string, mass: number, centre: number, length: number) => [
    name,
    String(mass),
    String(centre),
    String(length),
  ];
  return {
    kind: 'table',
    table: {
      caption: SHARES.caption,
      columns: SHARES.columns,
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

function muscles(): Part {
  const arms = (hipDeg: number, kneeDeg: number) => armsAt(hipDeg, kneeDeg, MODEL_HEIGHT_M);
  const columns = [arms(0, 0).hipM, arms(45, 0).hipM, arms(90, 0).hipM, arms(0, 0).kneeM, arms(0, 90).kneeM];
  return {
    kind: 'table',
    table: {
      caption: MUSCLES.caption,
      columns: MUSCLES.columns,
      rows: LUMPS.map((lump, at) => [
        LUMP_WORDS[lump],
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

function pullAtRest(): Part {
  const rows = [0, 30, 60, 90].map((hipDeg) => [
    degText(hipDeg),
    ...[0, 30, 90].map((kneeDeg) => String(Math.round(passiveTensionN(hipDeg, kneeDeg)))),
  ]);
  return { kind: 'table', table: { ...TENSION_AT_REST, rows } };
}

function others(): Part {
  const { heightM, massKg } = BODY_LIMITS;
  const values: Readonly<Record<keyof typeof VALUE_TEXTS, string>> = {
    bone: `${BONE_RADIUS_M * 1000} mm`,
    onset: degText(ONSET_DEG),
    friction: String(FRICTION),
    passive: String(PASSIVE_SHARE),
    stress: `${STRESS_N_PER_CM2} N`,
    achilles: `${ACHILLES_ARM_M * 100} cm`,
    seat: seatText(SEAT),
    height: `${MODEL_HEIGHT_M.toFixed(2)} m`,
    bench: backText(BACK),
    gravity: `${GRAVITY} m/s²`,
    samples: String(SAMPLES),
    pillow: `${PILLOW_CM} cm`,
    separable: `${NOT_SEPARABLE * 100} %`,
    body: bodyText(REFERENCE_BODY),
    limits: limitsText(heightM, massKg),
  };
  const rows = (Object.keys(VALUE_TEXTS) as (keyof typeof VALUE_TEXTS)[]).map((name) => {
    const [text, mark, where] = VALUE_TEXTS[name];
    return [text, values[name], MARK_WORDS[mark], where];
  });
  return { kind: 'table', table: { ...CONSTANTS, rows } };
}
