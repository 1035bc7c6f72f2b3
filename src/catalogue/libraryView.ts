/** Puts the public value together: every card measured once for the reference body, then looked at from all sides. */
import { libraryIn } from '../content/inLanguage/libraryIn.ts';
import { firstLanguage } from '../content/language.ts';
import { messagesIn, type Messages } from '../messages/messages.ts';
import { FOLDERS } from '../content/kind.ts';
import type { AdviceCard, Library } from '../content/library.ts';
import { referenceBody } from '../decisions/person/body.ts';
import { modelIn, type Models } from '../decisions/person/model.ts';

import { shownBody } from '../programme/cardWords.ts';
import { authorsPage } from './authors.ts';
import { cardView } from './card.ts';
import { filtersOf } from './filters.ts';
import { measure, type Measured } from './measured.ts';
import { numbersPage } from './numbers.ts';
import { protocolView } from './protocolView.ts';
import { rowOf } from './row.ts';
import { scaleOf } from './scale.ts';
import { siteView } from './siteView.ts';
import { usesOf } from './uses.ts';
import type { AdviceView, CardView, LibraryView, Origin, PhotoView } from './view.ts';
import { waysIn } from './filterLinks.ts';

/** Photos of cards by their card's id, in the sizes that were made of them. */
export type Photos = ReadonlyMap<string, readonly PhotoView[]>;

/** Everything the public pages show; the same library and photos give the same value. `models` may be shared. `say`: in which words, those of the clinic's first language. */
export function libraryView(
  read: Library,
  photos: Photos,
  models: Models,
  say: Messages = messagesIn(firstLanguage(read.clinic)),
): LibraryView {
  const library = libraryIn(read, firstLanguage(read.clinic));
  const { name, contact } = library.clinic;
  const measured = measuredCards(library, models);
  const cards = cardViews(say, measured, library, photos, models);
  const row = rowOf(say, measured);
  const filters = filtersOf(say, measured, library, scaleOf(library));
  const byId = new Map(measured.map((one) => [one.card.id, one]));
  const protocols = [...library.protocols.values()].map((one) =>
    protocolView(say, one, library, byId, originOf(say, library, FOLDERS.protocol, one.id)),
  );
  const advice = [...library.advice.values()].map((one) => adviceView(say, one, library)).sort(byTitle);
  return {
    language: firstLanguage(library.clinic),
    clinic: { name, contact },
    // The second sentence of the notice is for a person's own sheets.
    notice: say.NOTICE.slice(0, 1),
    id: library.version,
    version: say.versionText(library.version),
    front: {
      lead: say.frontLead(name),
      counts: say.countsText(cards.length, protocols.length, advice.length),
      row,
      rowCaption: say.ROW_CAPTION,
      ways: waysIn(say, cards, filters),
    },
    cards,
    filters,
    protocols,
    advice,
    numbers: numbersPage(say, library, modelIn(models, library.version, referenceBody(library.clinic))),
    glossary: say.GLOSSARY,
    authors: authorsPage(say),
    pages: library.pages.map(({ id, title, menu, lead, body }) => ({
      id,
      title,
      menu: menu ?? title,
      lead: lead ?? '',
      body,
    })),
    dress: library.dress,
    site: siteView(say, library),
  };
}

function measuredCards(library: Library, models: Models): readonly Measured[] {
  const model = modelIn(models, library.version, referenceBody(library.clinic));
  const scale = scaleOf(library);
  return [...library.exercises.values()].map((card) => measure(card, model, scale)).sort(bySqueeze);
}

function byTitle(a: AdviceView, b: AdviceView): number {
  return a.title < b.title ? -1 : 1;
}

// What has no estimate stands at the end.
function bySqueeze(a: Measured, b: Measured): number {
  const [one, other] = [a.squeezeBw ?? Infinity, b.squeezeBw ?? Infinity];
  if (one !== other) return one - other;
  return a.hipBendDeg - b.hipBendDeg || (a.card.title < b.card.title ? -1 : 1);
}

function cardViews(
  say: Messages,
  measured: readonly Measured[],
  library: Library,
  photos: Photos,
  models: Models,
): readonly CardView[] {
  const model = modelIn(models, library.version, referenceBody(library.clinic));
  const scale = scaleOf(library);
  const uses = usesOf(library);
  return measured.map((one) => {
    const { id } = one.card;
    return cardView(say, one, {
      library,
      uses: uses.get(id) ?? [],
      model,
      scale,
      origin: originOf(say, library, FOLDERS.exercise, id),
      photos: photos.get(id) ?? [],
    });
  });
}

function adviceView(
  say: Messages,
  { id, title, showWhen, angle, body, sources }: AdviceCard,
  library: Library,
): AdviceView {
  const origin = originOf(say, library, FOLDERS.advice, id);
  return {
    id,
    title,
    origin,
    shown: say.occasionsText(showWhen, angle),
    body: shownBody(say, body),
    sources,
  };
}

function originOf(say: Messages, { origins, clinic }: Library, folder: string, id: string): Origin {
  const how = origins.get(`${folder}/${id}`);
  return how === undefined ? '' : say.originText(how, clinic.name);
}
