/** The index of all exercises: search and filters that a script brings to life, and the whole list. */
import { type CardView, type Filter, type LibraryView } from '../../../catalogue/view.ts';
import { FILTER_KEYS } from '../../../decisions/terms/scale.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import { classesOf } from '../../../drawing/svg.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, trusted, type Html } from '../html.ts';
import { cardFigure, figurePath } from './cardFigure.ts';
import { publicHtml } from './frame.ts';
import { pagePath } from './links.ts';

const LABELS = LIBRARY_LABELS.exercises;

export function exercisesPageHtml(view: LibraryView, assets: PageAssets): string {
  return publicHtml(
    {
      title: LABELS.title,
      up: '',
      place: 'exercises',
      lead: html`<p class="lead">${LABELS.lead}</p>`,
      scripts: ['words.js', 'catalogue.js'],
      main: html`<div class="catalogue">
        ${formHtml(view.filters)}
        <section class="results" aria-labelledby="results-heading">
          <h2 id="results-heading" class="unseen" tabindex="-1">${LABELS.results}</h2>
          ${noneHtml()}
          <ul class="entries">
            ${view.cards.map((card) => entryHtml(card, assets))}
          </ul>
        </section>
      </div>`,
    },
    view,
    assets,
  );
}

/** What to do where nothing is found; the script fills in the words and what each would find. */
function noneHtml(): Html {
  return html`<div class="none" data-none hidden>
    <p>${LABELS.none}</p>
    <ul data-none-words data-count="${LABELS.noneWord}" data-unknown="${LABELS.noneUnknown}"></ul>
    <p data-none-filters hidden>
      <button type="button" data-count="${LABELS.noneFilters}"></button>
    </p>
    <p class="quiet">${LABELS.noneHint}</p>
  </div>`;
}

/** Stands there hidden until the script can answer it. */
function formHtml(filters: readonly Filter[]): Html {
  return html`<form class="filters" data-catalogue hidden autocomplete="off" aria-label="${LABELS.filters}">
    <p class="search">
      <label for="search">${LABELS.search}</label>
      <input id="search" type="search" name="q" placeholder="${LABELS.searchHint}" spellcheck="false" />
    </p>
    <p class="tally">
      <output data-count="${LABELS.count}" data-ranked="${LABELS.countRanked}" for="search"></output>
      <span role="status" data-left-out="${LABELS.leftOut}"></span>
      <button type="submit">${LABELS.toResults}</button>
      <button type="button" data-clear hidden>${LABELS.clear}</button>
    </p>
    ${filters.map(filterHtml)}
  </form> `;
}

function filterHtml(filter: Filter): Html {
  const { key, rule, heading, options } = filter;
  const groups = [...new Set(options.map(({ group }) => group))];
  return html`<details class="filter" data-filter="${key}" data-rule="${rule}">
    <summary>${heading} <span class="chosen" data-chosen></span></summary>
    ${groups.map((group) => groupHtml(filter, group))}
  </details> `;
}

function groupHtml({ key, rule, heading, options }: Filter, group: string): Html {
  const type = rule === 'atMost' ? 'radio' : 'checkbox';
  const choice = (value: string, label: string, isChosen: boolean, asked = '') =>
    html`<li>
      <label
        ><input
          type="${type}"
          name="${key}"
          value="${value}"
          ${isChosen ? trusted('checked') : nothing}
          ${asked === '' ? nothing : html`data-asked="${asked}"`}
        />
        ${label}</label
      >
    </li> `;
  return html`<fieldset>
    <legend class="${group === '' ? 'unseen' : 'group'}">${group === '' ? heading : group}</legend>
    <ul>
      ${rule === 'atMost' ? choice('', LABELS.anyBend, true) : nothing}
      ${options.filter((option) => option.group === group).map(({ value, label, asked }) => choice(value, label, false, asked))}
    </ul>
  </fieldset> `;
}

function entryHtml(card: CardView, assets: PageAssets): Html {
  const { id, title, summary, origin } = card;
  return html`<li class="entry" data-entry ${facetsHtml(card)}>
    ${thumbHtml(card, assets)}
    <div class="about">
      <h3>
        <a href="${pagePath('exercises', id)}"><bdi>${title}</bdi></a>
      </h3>
      <p>${summary}</p>
      ${origin === '' ? nothing : html`<p class="origin">${origin}</p>`} ${bendHtml(card)}
    </div>
  </li> `;
}

function facetsHtml({ facets }: CardView): Html {
  return trusted(FILTER_KEYS.map((key) => html`data-${key}="${facets[key].join(' ')}"`.markup).join(' '));
}

function thumbHtml(card: CardView, { picture }: PageAssets): Html {
  const figure = cardFigure(card, picture);
  if (figure === null) return html`<span class="thumb"></span>`;
  return html`<span class="thumb"
    ><img
      src="${figurePath(card.id)}"
      alt=""
      width="${figure.widthPx}"
      height="${figure.heightPx}"
      loading="lazy"
  /></span>`;
}

const SCALE_DEG = 120;

/** The range ruler without its words, which stand above it: so far does the hip bend, of 120 degrees. */
function bendHtml({ rulers: [first] }: CardView): Html {
  if (first === undefined) return nothing;
  const { fromDeg, toDeg } = first.ruler;
  const from = Math.min(SCALE_DEG, fromDeg);
  const wide = Math.max(2, Math.min(SCALE_DEG, toDeg) - from);
  return html`<svg class="bend" viewBox="0 0 ${SCALE_DEG} 3" preserveAspectRatio="none" aria-hidden="true">
    <path class="${classesOf('propFill', null)}" d="M0 0h${SCALE_DEG}v3h-${SCALE_DEG}z" />
    <path class="${classesOf('workLeg', null)}" d="M${from} 0h${wide}v3h-${wide}z" />
  </svg>`;
}
