/** What the page 'How the numbers are made' works out of the clinic's muscles and of friction, on the library's own cards. */
import type { Messages } from '../messages/messages.ts';
import type { Library } from '../content/library.ts';
import { clinicSchema } from '../content/schema/clinic.ts';
import { sentenceAt } from '../content/schema/schemaAt.ts';
import { FRICTION } from '../mechanics/friction.ts';
import { WHOLE } from '../mechanics/gentle.ts';
import { leavesFriction } from '../mechanics/loading.ts';
import { strengthFactor } from '../mechanics/strength.ts';
import { squeezeUnder } from '../mechanics/sweep.ts';
import { markedNumbers } from '../content/houseNumbers.ts';
import { isPosed, modelOf, type Model, type PosedCard } from '../decisions/person/model.ts';

import { paragraph, section, type Part, type Section, type Table } from '../messages/shapes.ts';

import { WEIGHTS_KG } from './estimateView.ts';
import { isFast, peakWith } from './measured.ts';
import { KNEE_LED } from './scale.ts';

/** Sections on body size, on hamstrings that work along, and on the push between two supports. */
export function muscleSections(say: Messages, library: Library, model: Model): readonly Section[] {
  const cards = [...library.exercises.values()].filter(isPosed).filter((card) => !isFast(card));
  const share = library.clinic.muscles.leastHamstringShare.value;
  return [
    section('body-size', say.BODY_SIZE.heading, [
      ...say.BODY_SIZE.text.map((text) => paragraph(text)),
      ...bodySizes(say, cards, model),
      settings(say, library),
    ]),
    section('together', say.TOGETHER.heading, [
      paragraph(say.leastShareText(share)),
      ...say.TOGETHER.text.map((text) => paragraph(text)),
      workedTogether(say, cards, model),
    ]),
    section('friction', say.FRICTIONS.heading, [
      ...say.FRICTIONS.text.map((text) => paragraph(text)),
      paragraph(say.usedFrictionText(FRICTION)),
      frictions(say, cards, model),
    ]),
  ];
}

/** Light, middling and heavy bodies, kilograms [choice]. */
const MASSES_KG = [47, 60, 75, 90, 120];

// On the card that asks for the greatest share of strength without a weight.
function bodySizes(say: Messages, cards: readonly PosedCard[], { body, sweepTo }: Model): readonly Part[] {
  const demandOf = (card: PosedCard) => sweepTo(card, null, 0, card.tempo)?.peak.demand ?? 0;
  const [hardest] = cards.toSorted((a, b) => demandOf(b) - demandOf(a));
  if (hardest === undefined) return [];
  const { heightM, muscles } = body;
  const rows = MASSES_KG.flatMap((massKg) => {
    const scaled = muscles === undefined ? { massKg, heightM } : { massKg, heightM, muscles };
    const [fixed, byMass] = [{ massKg, heightM }, scaled].map((one) => peakWith(hardest, 0, modelOf(one)));
    if (!fixed || !byMass) return [];
    const { tensionBw, demand } = byMass;
    const values = [strengthFactor(scaled), tensionBw, fixed.demand, demand];
    return [[say.kgText(massKg), ...values.map(say.bwText)]];
  });
  return [{ kind: 'table', table: { ...say.strengthTable(hardest.title), rows } }];
}

function settings(say: Messages, { clinic }: Library): Part {
  const rows = markedNumbers(clinic.muscles).map(({ name, value, mark, cite }) => [
    sentenceAt(clinicSchema, ['muscles', name]) ?? name,
    say.settingValue(value),
    say.MARK_WORDS[mark],
    cite ?? '–',
  ]);
  return { kind: 'table', table: { caption: say.SETTINGS_OF_MUSCLES, columns: say.SETTING_COLUMNS, rows } };
}

/** Cards the knee leads, before and with the least share; only those that it changes. */
function workedTogether(say: Messages, cards: readonly PosedCard[], model: Model): Part {
  const rows = cards.filter(isKneeLed).flatMap((card) =>
    weightsOf(card).flatMap((loadKg) => {
      const [before, after] = [model.leastEffort(), model].map((one) => wholeTexts(say, card, loadKg, one));
      if (!before || !after || before.join() === after.join()) return [];
      return [[say.weightedCard(card.title, loadKg), ...before.map((text, i) => changeText(text, after[i]))]];
    }),
  );
  return rows.length === 0
    ? paragraph(say.TOGETHER.none)
    : { kind: 'table', table: { caption: say.TOGETHER.caption, columns: say.TOGETHER.columns, rows } };
}

// Largest squeeze and pull, and both over a repetition.
function wholeTexts(say: Messages, card: PosedCard, loadKg: number, model: Model): readonly string[] | null {
  const swept = model.sweepTo(card, null, loadKg, card.tempo);
  if (swept === null) return null;
  const { peak, compressionTimeBwS, tensionTimeBwS } = swept;
  return [peak.compressionBw, peak.tensionBw, compressionTimeBwS, tensionTimeBwS].map(say.bwText);
}

function changeText(before: string, after = before): string {
  return before === after ? before : `${before} → ${after}`;
}

function weightsOf({ movement: { loadAt } }: PosedCard): readonly number[] {
  return loadAt === undefined ? [0] : WEIGHTS_KG[loadAt];
}

function isKneeLed({ positions }: PosedCard): boolean {
  return positions.some((position) => KNEE_LED.includes(position));
}

/** Coefficients between a floor that gives nothing and a rubber sole on a mat [choice]. */
const COEFFICIENTS = [0, 0.1, 0.2, 0.3, 0.4, 0.5];

function frictions(say: Messages, cards: readonly PosedCard[], { body }: Model): Part {
  const rows = cards
    .filter(({ movement, positions }) => positions.includes('lunge') && leavesFriction(movement))
    .map((card) => [
      card.title,
      ...COEFFICIENTS.map((coefficient) => {
        const squeezeBw = squeezeUnder(coefficient, card.movement, body, 0, WHOLE);
        return squeezeBw === null ? '–' : say.bwText(squeezeBw);
      }),
    ]);
  const table: Table = {
    caption: say.FRICTIONS.caption,
    columns: [say.FRICTIONS.card, ...COEFFICIENTS.map(say.numberText)],
    rows,
  };
  return rows.length === 0 ? paragraph(say.FRICTIONS.none) : { kind: 'table', table };
}
