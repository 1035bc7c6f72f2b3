/** One exercise card as the public pages show it. */
import type { ExerciseCard, Library, Protocol } from '../content/library.ts';
import { KIT_WORDS, type Equipment } from '../content/schema/words.ts';
import { roundTo } from '../units/round.ts';
import type { Model } from '../decisions/person/model.ts';
import {
  altText,
  ANGLE_LEGEND,
  captionText,
  captionWithDegrees,
  showsAngle,
} from '../messages/en/patient/figures.ts';
import {
  FACT_LABELS,
  KIND_WORDS,
  kitText,
  LEGS_WORDS,
  needsText,
  NEIGHBOUR_HEADINGS,
  positionsText,
  RANGE_WORDS,
  reviewedText,
  summaryText,
  cardTempoText,
  weightText,
} from '../messages/en/catalogue/library.ts';
import { rulerAlt, stageTick } from '../messages/en/catalogue/estimates.ts';
import { shownBody } from '../programme/cardWords.ts';
import { sideText } from '../messages/en/patient/dose.ts';
import type { FigureText } from '../programme/programme.ts';
import { pictureFor } from '../decisions/candidates/scene.ts';
import { estimateView } from './estimateView.ts';
import type { Measured } from './measured.ts';
import type { Scale } from './scale.ts';
import { stageFacet, type Use } from './uses.ts';
import type { CardView, Fact, Facets, Link, Origin, PhotoView } from './view.ts';

/** What surrounds a card: what names it, what it is measured with, whose it is, and its photos. */
export interface CardSetting {
  readonly library: Library;
  readonly uses: readonly Use[];
  readonly model: Model;
  readonly scale: Scale;
  readonly origin: Origin;
  readonly photos: readonly PhotoView[];
}

export function cardView(measured: Measured, setting: CardSetting): CardView {
  const { card, hipBendDeg, squeeze, pull } = measured;
  const { library, uses, model, scale, origin, photos } = setting;
  return {
    id: card.id,
    title: card.title,
    origin,
    summary: summaryText(card.kind, hipBendDeg, squeeze, pull),
    facets: facetsOf(measured, uses),
    figures: figuresOf(card, model),
    photos,
    facts: factsOf(card),
    rulers: rulersOf(measured, uses),
    estimate: estimateView(measured, uses, model, scale),
    neighbours: neighboursOf(card, library),
    uses: uses.map(({ protocol, stage, slot }) => ({
      protocol: { id: protocol.id, title: protocol.title },
      stage: stage.name,
      slot,
    })),
    body: shownBody(card.body),
    cautions: card.cautions,
    evidence: card.evidence,
    reviewed: reviewedText(card.reviewedOn, card.nextReviewOn),
  };
}

function facetsOf({ card, hipBendDeg, squeeze, pull }: Measured, uses: readonly Use[]): Facets {
  return {
    bend: [String(roundTo(hipBendDeg, 0.1))],
    squeeze: [squeeze],
    pull: [pull],
    kind: [card.kind],
    position: card.positions,
    stage: [...new Set(uses.map(({ protocol, index }) => stageFacet(protocol.id, index)))],
    kit: card.equipment.filter((thing) => !isHousehold(thing)),
    cannot: card.needs,
  };
}

function isHousehold(thing: Equipment): boolean {
  return !(KIT_WORDS as readonly Equipment[]).includes(thing);
}

function figuresOf(card: ExerciseCard, model: Model): FigureText | null {
  const picture = pictureFor(card, null, null, model, 'right');
  if (picture === null) return null;
  const { scene } = picture;
  return {
    scene,
    captions: scene.frames.map(captionText),
    captionsWithDegrees: scene.frames.map(captionWithDegrees),
    legend: showsAngle(scene) ? ANGLE_LEGEND : null,
    alt: altText(card.title, sideText(card, scene.side), scene),
  };
}

function factsOf(card: ExerciseCard): Fact[] {
  const { movement, landmark } = card;
  const facts: readonly (readonly [label: string, text: string | null])[] = [
    [FACT_LABELS.kind, KIND_WORDS[card.kind]],
    [FACT_LABELS.position, positionsText(card.positions)],
    [FACT_LABELS.legs, card.kind === 'running-drill' ? null : LEGS_WORDS[card.legs]],
    [FACT_LABELS.range, movement === null ? null : RANGE_WORDS[movement.range]],
    [FACT_LABELS.landmark, landmark],
    [FACT_LABELS.tempo, cardTempoText(card.tempo)],
    [FACT_LABELS.weight, movement?.loadAt === undefined ? null : weightText(movement.loadAt)],
    [FACT_LABELS.kit, kitText(card.equipment)],
    [FACT_LABELS.needs, needsText(card.needs)],
  ];
  return facts.flatMap(([label, text]) => (text === null ? [] : [{ label, text }]));
}

/** A ruler for each protocol that uses the card and caps hip bend; one without caps when there is none. */
function rulersOf({ card, hipBendDeg }: Measured, uses: readonly Use[]): CardView['rulers'] {
  if (card.movement === null) return [];
  const { start, end } = card.movement;
  const toDeg = roundTo(Math.max(0, hipBendDeg), 1);
  const least = Math.min(start.work.hip, end?.work.hip ?? start.work.hip);
  const fromDeg = Math.min(toDeg, roundTo(Math.max(0, least), 1));
  const ruler = (ticks: readonly Tick[]) => ({ fromDeg, toDeg, ticks, alt: rulerAlt(fromDeg, toDeg, ticks) });
  const rulers = [...new Set(uses.map(({ protocol }) => protocol))].flatMap((protocol) => {
    const ticks = ticksOf(protocol);
    return ticks.length === 0 ? [] : [{ caption: protocol.title, ruler: ruler(ticks) }];
  });
  return rulers.length === 0 ? [{ caption: '', ruler: ruler([]) }] : rulers;
}

interface Tick {
  readonly stage: string;
  readonly capDeg: number;
}

function ticksOf({ stages }: Protocol): readonly Tick[] {
  return stages.flatMap(({ caps, opensToDeg }, index) => {
    // The ruler is one of hip flexion.
    const capDeg = caps.angle === 'hipFlexion' ? (opensToDeg ?? caps.angleDeg) : null;
    return capDeg === null ? [] : [{ stage: stageTick(index), capDeg }];
  });
}

/** Cards the author named, and those whose authors named this one from the other side. */
function neighboursOf(card: ExerciseCard, { exercises }: Library): CardView['neighbours'] {
  const all = [...exercises.values()];
  const linked = (own: string | null, back: 'easier' | 'harder') =>
    all
      .filter((other) => other.id === own || other[back] === card.id)
      .map(({ id, title }): Link => ({ id, title }));
  return [
    { heading: NEIGHBOUR_HEADINGS.easier, cards: linked(card.easier, 'harder') },
    { heading: NEIGHBOUR_HEADINGS.harder, cards: linked(card.harder, 'easier') },
  ].filter(({ cards }) => cards.length > 0);
}
