/** One exercise card as the public pages show it. */
import type { Messages } from '../messages/messages.ts';
import type { ExerciseCard, Library, Protocol } from '../content/library.ts';
import { KIT_WORDS, type Equipment } from '../content/schema/words.ts';
import { roundTo } from '../units/round.ts';
import type { Model } from '../decisions/person/model.ts';
import { shownBody } from '../programme/cardWords.ts';
import type { FigureText } from '../programme/programme.ts';
import { pictureFor } from '../decisions/candidates/scene.ts';
import { estimateView } from './estimateView.ts';
import type { Measured } from './measured.ts';
import type { Scale } from './scale.ts';
import { searchTerms } from './searchTerms.ts';
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

export function cardView(say: Messages, measured: Measured, setting: CardSetting): CardView {
  const { card, hipBendDeg, squeeze, pull } = measured;
  const { library, uses, model, scale, origin, photos } = setting;
  return {
    id: card.id,
    title: card.title,
    origin,
    summary: say.summaryText(card.kind, hipBendDeg, squeeze, pull),
    facets: facetsOf(measured, uses),
    names: [card.title, ...card.alsoCalled],
    terms: searchTerms(say, card),
    figures: figuresOf(say, card, model),
    photos,
    facts: factsOf(say, card),
    rulers: rulersOf(say, measured, uses),
    estimate: estimateView(say, measured, uses, model, scale),
    neighbours: neighboursOf(say, card, library),
    uses: uses.map(({ protocol, stage, slot }) => ({
      protocol: { id: protocol.id, title: protocol.title },
      stage: stage.name,
      slot,
    })),
    body: shownBody(say, card.body),
    cautions: card.cautions,
    evidence: card.evidence,
    reviewed: say.reviewedText(card.reviewedOn, card.nextReviewOn),
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

function figuresOf(say: Messages, card: ExerciseCard, model: Model): FigureText | null {
  const picture = pictureFor(card, null, null, model, 'right');
  if (picture === null) return null;
  const { scene } = picture;
  return {
    scene,
    captions: scene.frames.map(say.captionText),
    captionsWithDegrees: scene.frames.map(say.captionWithDegrees),
    legend: say.showsAngle(scene) ? say.ANGLE_LEGEND : null,
    alt: say.altText(card.title, say.sideText(card, scene.side), scene),
  };
}

function factsOf(say: Messages, card: ExerciseCard): Fact[] {
  const { movement, landmark } = card;
  const facts: readonly (readonly [label: string, text: string | null])[] = [
    [say.FACT_LABELS.also, card.alsoCalled.length === 0 ? null : say.capital(say.listText(card.alsoCalled))],
    [say.FACT_LABELS.kind, say.KIND_WORDS[card.kind]],
    [say.FACT_LABELS.muscles, card.muscles.length === 0 ? null : say.musclesText(card.muscles)],
    [say.FACT_LABELS.position, say.positionsText(card.positions)],
    [say.FACT_LABELS.legs, card.kind === 'running-drill' ? null : say.LEGS_WORDS[card.legs]],
    [say.FACT_LABELS.range, movement === null ? null : say.RANGE_WORDS[movement.range]],
    [say.FACT_LABELS.landmark, landmark],
    [say.FACT_LABELS.tempo, say.cardTempoText(card.tempo)],
    [say.FACT_LABELS.weight, movement?.loadAt === undefined ? null : say.weightText(movement.loadAt)],
    [say.FACT_LABELS.kit, say.kitText(card.equipment)],
    [say.FACT_LABELS.needs, say.needsText(card.needs)],
  ];
  return facts.flatMap(([label, text]) => (text === null ? [] : [{ label, text }]));
}

/** A ruler for each protocol that uses the card and caps hip bend; one without caps when there is none. */
function rulersOf(say: Messages, { card, hipBendDeg }: Measured, uses: readonly Use[]): CardView['rulers'] {
  if (card.movement === null) return [];
  const { start, end } = card.movement;
  const toDeg = roundTo(Math.max(0, hipBendDeg), 1);
  const least = Math.min(start.work.hip, end?.work.hip ?? start.work.hip);
  const fromDeg = Math.min(toDeg, roundTo(Math.max(0, least), 1));
  const ruler = (ticks: readonly Tick[]) => ({
    fromDeg,
    toDeg,
    ticks,
    alt: say.rulerAlt(fromDeg, toDeg, ticks),
  });
  const rulers = [...new Set(uses.map(({ protocol }) => protocol))].flatMap((protocol) => {
    const ticks = ticksOf(say, protocol);
    return ticks.length === 0 ? [] : [{ caption: protocol.title, ruler: ruler(ticks) }];
  });
  return rulers.length === 0 ? [{ caption: '', ruler: ruler([]) }] : rulers;
}

interface Tick {
  readonly stage: string;
  readonly capDeg: number;
}

function ticksOf(say: Messages, { stages }: Protocol): readonly Tick[] {
  return stages.flatMap(({ caps, opensToDeg }, index) => {
    // The ruler is one of hip flexion.
    const capDeg = caps.angle === 'hipFlexion' ? (opensToDeg ?? caps.angleDeg) : null;
    return capDeg === null ? [] : [{ stage: say.stageTick(index), capDeg }];
  });
}

/** Cards the author named, and those whose authors named this one from the other side. */
function neighboursOf(say: Messages, card: ExerciseCard, { exercises }: Library): CardView['neighbours'] {
  const all = [...exercises.values()];
  const linked = (own: string | null, back: 'easier' | 'harder') =>
    all
      .filter((other) => other.id === own || other[back] === card.id)
      .map(({ id, title }): Link => ({ id, title }));
  return [
    { heading: say.NEIGHBOUR_HEADINGS.easier, cards: linked(card.easier, 'harder') },
    { heading: say.NEIGHBOUR_HEADINGS.harder, cards: linked(card.harder, 'easier') },
  ].filter(({ cards }) => cards.length > 0);
}
