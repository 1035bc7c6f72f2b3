/** What the files of a library say to their readers, text by text, with where each stands. */
import type { AdviceCard, ExerciseCard, OwnPage, Protocol, LibraryFiles } from '../content/library.ts';
import type { Path } from '../content/path.ts';
import { proseTexts } from '../content/prose/plainText.ts';
import type { ProseSection } from '../content/prose/block.ts';

export interface Text {
  readonly path: Path;
  readonly text: string;
  /** `leaflet`: for the patient, at home and alone · `site`: on the public pages alone, beside the glossary. */
  readonly on: 'leaflet' | 'site';
}

/** One file with its texts in the order of reading. */
export interface Sheet {
  readonly kind: 'exercise' | 'advice' | 'protocol' | 'page';
  readonly id: string;
  readonly texts: readonly Text[];
}

/** Every card and protocol with its texts. Sources, names of stages and slots are for the clinician and left out. */
export function sheetsOf({
  exercises,
  advice,
  protocols,
  pages = [],
}: LibraryFiles & { readonly pages?: readonly OwnPage[] }): readonly Sheet[] {
  return [
    ...[...exercises.values()].map(exerciseSheet),
    ...[...advice.values()].map(adviceSheet),
    ...[...protocols.values()].map(protocolSheet),
    ...pages.map(pageSheet),
  ];
}

export function exerciseSheet({ id, title, landmark, photos, cautions, body }: ExerciseCard): Sheet {
  const texts = [
    leaflet(['title'], title),
    ...(landmark === null ? [] : [leaflet(['landmark'], landmark)]),
    ...photos.map(({ alt }, index) => leaflet(['photos', index, 'alt'], alt)),
    ...cautions.map((caution, index) => leaflet(['cautions', index], caution)),
    ...bodyTexts(body, 'leaflet'),
  ];
  return { kind: 'exercise', id, texts };
}

function adviceSheet({ id, title, givesWay, body }: AdviceCard): Sheet {
  const texts = [
    leaflet(['title'], title),
    ...givesWay.flatMap(({ instead }, index) =>
      instead === undefined ? [] : [leaflet(['givesWay', index, 'instead'], instead)],
    ),
    ...bodyTexts(body, 'leaflet'),
  ];
  return { kind: 'advice', id, texts };
}

function protocolSheet({
  id,
  tendon,
  why,
  whyGentle,
  whyLater,
  whySudden,
  getHelp,
  stages,
  activities,
  body,
}: Protocol): Sheet {
  const texts = [
    leaflet(['tendon'], tendon),
    ...why.map((sentence, index) => leaflet(['why', index], sentence)),
    ...(whyGentle ?? []).map((sentence, index) => leaflet(['whyGentle', index], sentence)),
    ...(whyLater ?? []).map((sentence, index) => leaflet(['whyLater', index], sentence)),
    ...whySudden.map((sentence, index) => leaflet(['whySudden', index], sentence)),
    leaflet(['getHelp', 'night'], getHelp.night),
    ...(getHelp.expected === undefined ? [] : [leaflet(['getHelp', 'expected'], getHelp.expected)]),
    ...stages.flatMap(({ running, sitting, stretching }, index) => [
      leaflet(['stages', index, 'running', 'words'], running.words),
      leaflet(['stages', index, 'sitting'], sitting),
      leaflet(['stages', index, 'stretching'], stretching),
    ]),
    ...activities.flatMap(({ how, until }, index) => [
      leaflet(['activities', index, 'how'], how),
      leaflet(['activities', index, 'until'], until),
    ]),
    ...bodyTexts(body, 'site'),
  ];
  return { kind: 'protocol', id, texts };
}

// Read by patients at home and alone, though never printed on a leaflet.
function pageSheet({ id, title, lead, body }: OwnPage): Sheet {
  const texts = [
    leaflet(['title'], title),
    ...(lead === undefined ? [] : [leaflet(['lead'], lead)]),
    ...bodyTexts(body, 'leaflet'),
  ];
  return { kind: 'page', id, texts };
}

function leaflet(path: Path, text: string): Text {
  return { path, text, on: 'leaflet' };
}

function bodyTexts(body: readonly ProseSection[], on: Text['on']): Text[] {
  return proseTexts(body).map(({ path, text }) => ({ path: ['body', ...path], text, on }));
}
