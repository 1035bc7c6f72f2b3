/** Puts the public value together: every card measured once for the reference body, then looked at from all sides. */
import { FOLDERS } from '../../content/kind.ts';
import type { Library } from '../../content/library.ts';
import { REFERENCE_BODY } from '../../mechanics/body.ts';
import { modelIn, type Models } from '../model.ts';
import { countsText, frontLead, occasionsText, originText } from '../phrases/library.ts';
import { GLOSSARY } from '../phrases/glossary.ts';
import { NOTICE } from '../phrases/opening.ts';
import { authorsPage } from './authors.ts';
import { cardView } from './card.ts';
import { filtersOf } from './filters.ts';
import { measure, type Measured } from './measured.ts';
import { numbersPage } from './numbers.ts';
import { protocolView } from './protocolView.ts';
import { scaleOf } from './scale.ts';
import { usesOf } from './uses.ts';
import type { LibraryView, Origin, PhotoView } from './view.ts';

/** Photos of cards by their card's id, in the sizes that were made of them. */
export type Photos = ReadonlyMap<string, readonly PhotoView[]>;

/** Everything the public pages show; the same library and photos give the same value. `models` may be shared. */
export function libraryView(library: Library, photos: Photos, models: Models): LibraryView {
  const model = modelIn(models, library.version, REFERENCE_BODY);
  const scale = scaleOf(library);
  const uses = usesOf(library);
  const measured = [...library.exercises.values()].map((card) => measure(card, model, scale)).sort(bySqueeze);
  const byId = new Map(measured.map((one) => [one.card.id, one]));
  const { name, contact } = library.clinic;
  const originOf = (folder: string, id: string): Origin => {
    const how = library.origins.get(`${folder}/${id}`);
    return how === undefined ? '' : originText(how, name);
  };
  const protocols = [...library.protocols.values()];
  const advice = [...library.advice.values()];
  return {
    language: 'en',
    clinic: { name, contact },
    notice: NOTICE.slice(0, 1),
    front: { lead: frontLead(name), counts: countsText(measured.length, protocols.length, advice.length) },
    cards: measured.map((one) =>
      cardView(one, {
        library,
        uses: uses.get(one.card.id) ?? [],
        model,
        scale,
        origin: originOf(FOLDERS.exercise, one.card.id),
        photos: photos.get(one.card.id) ?? [],
      }),
    ),
    filters: filtersOf(measured, library, scale),
    protocols: protocols.map((one) => protocolView(one, library, byId, originOf(FOLDERS.protocol, one.id))),
    advice: advice.map(({ id, title, showWhen, body, sources }) => ({
      id,
      title,
      origin: originOf(FOLDERS.advice, id),
      shown: occasionsText(showWhen),
      body,
      sources,
    })),
    numbers: numbersPage(),
    glossary: GLOSSARY,
    authors: authorsPage(),
  };
}

function bySqueeze(a: Measured, b: Measured): number {
  return (
    (a.squeezeBw ?? Infinity) - (b.squeezeBw ?? Infinity) ||
    a.hipBendDeg - b.hipBendDeg ||
    (a.card.title < b.card.title ? -1 : 1)
  );
}
