/** All files of the public folder: the pages, and what they fetch. */
import type { LibraryView } from '../../../catalogue/view.ts';
import type { PageAssets } from '../assets.ts';
import { advicePageHtml, adviceListHtml } from './advicePage.ts';
import { cardFigure, figurePath } from './cardFigure.ts';
import { cardPageHtml } from './cardPage.ts';
import { exercisesPageHtml } from './exercisesPage.ts';
import { ADDRESSES, OWN_STYLE } from './frame.ts';
import { ownPageHtml } from './ownPage.ts';
import { siteFiles } from './siteFiles.ts';
import { pagePath } from './links.ts';
import { authorsPageHtml, glossaryPageHtml, numbersPageHtml } from './plainPages.ts';
import { protocolPageHtml, protocolsPageHtml } from './protocolPage.ts';
import { startPageHtml } from './startPage.ts';
import { stylePageHtml } from './stylePage.ts';
import { indexText } from './wordIndex.ts';

/** Paths below the public folder with what makes each page. */
export type PublicPages = ReadonlyMap<string, (view: LibraryView, assets: PageAssets) => string>;

/** The pages of a library; none is made before it is asked for. */
export function publicPages(view: LibraryView): PublicPages {
  return new Map<string, (view: LibraryView, assets: PageAssets) => string>([
    [ADDRESSES.start, startPageHtml],
    [ADDRESSES.exercises, exercisesPageHtml],
    [ADDRESSES.protocols, protocolsPageHtml],
    [ADDRESSES.advice, adviceListHtml],
    [ADDRESSES.numbers, numbersPageHtml],
    [ADDRESSES.glossary, glossaryPageHtml],
    [ADDRESSES.authors, authorsPageHtml],
    ['style/index.html', stylePageHtml],
    ...view.cards.map((card) => [pagePath('exercises', card.id), makes(cardPageHtml, card)] as const),
    ...view.protocols.map((one) => [pagePath('protocols', one.id), makes(protocolPageHtml, one)] as const),
    ...view.pages.map((one) => [pagePath('pages', one.id), makes(ownPageHtml, one)] as const),
    ...view.advice.map((one) => [pagePath('advice', one.id), makes(advicePageHtml, one)] as const),
  ]);
}

function makes<T>(page: (of: T, view: LibraryView, assets: PageAssets) => string, of: T) {
  return (view: LibraryView, assets: PageAssets) => page(of, view, assets);
}

/** Style, scripts, the words of the cards and their small pictures, by path below the public folder. */
export function publicFiles(view: LibraryView, assets: PageAssets): ReadonlyMap<string, string> {
  return new Map([
    ['assets/sheet.css', assets.public.text],
    ['assets/sheet.js', assets.script.text],
    ['assets/catalogue.js', assets.catalogue.text],
    ...(view.dress.style === null ? [] : [[`assets/${OWN_STYLE}`, view.dress.style] as const]),
    ...siteFiles(view, [...publicPages(view).keys()]),
    ['assets/words.js', `var libraryWords=${JSON.stringify(indexText(view))};\n`],
    ...view.cards.flatMap((card): [string, string][] => {
      const figure = cardFigure(card, assets.picture);
      return figure === null ? [] : [[figurePath(card.id), figure.svg]];
    }),
  ]);
}
