/** The patient's page: one long quiet sheet laid out from the finished programme, nothing worked out or worded here. */
import { labelsOf, type LeafletLabels } from '../../messages/en/labels.ts';
import type { Part } from '../../messages/shapes.ts';
import type { Programme } from '../../programme/programme.ts';
import { sheetInUse } from '../../programme/inUse.ts';
import { saidDays, saidExercises } from '../../programme/sheetInUse.ts';
import { leafletStyle, type LeafletPhotos, type PageAssets } from './assets.ts';
import { blockHtml, documentText, element } from './document.ts';
import { html, nothing, type Html } from './html.ts';
import { contactHtml } from './parts/contact.ts';
import { EMERGENCY_ID, emergencyHtml } from './parts/emergency.ts';
import { betweenHtml, doseHtml, exerciseHtml, exerciseId } from './parts/exercise.ts';
import { logHtml } from './parts/log.ts';
import { footHtml, mastheadHtml } from './parts/masthead.ts';
import { movingOf } from './parts/moving.ts';
import { namedHtml, placesOf } from './parts/named.ts';
import { proseHtml } from './parts/prose.ts';
import { hangHtml, partHtml, sectionHtml } from './parts/section.ts';
import { stepsHtml } from './parts/steps.ts';

/**
 * The file `leaflet.html` as text: complete without scripts and on paper, with style and figures inside it.
 * Throws when a value is missing; a programme that is one has none missing.
 */
export function leafletHtml(programme: Programme, assets: PageAssets): string {
  const labels = labelsOf(programme.language).leaflet;
  const sheet = sheetInUse(programme);
  const block = {
    ...sheet,
    exercises: saidExercises(sheet.exercises),
    days: saidDays(sheet.days),
    moving: movingOf(programme),
  };
  const inUse = html`${blockHtml(block)}${element('script', assets.inUse)}`;
  const body = html`${mastheadHtml(programme, programme.title, labels, assets.logo)}
    <main>${leafletMain(programme, assets.photos, inUse)}</main>
    ${footHtml(programme, labels)}`;
  return documentText({
    language: programme.language,
    title: programme.title,
    kind: 'leaflet',
    style: leafletStyle(assets, [body.markup, JSON.stringify(block)]),
    arrival: assets.arrival,
    within: assets.inUse,
    script: assets.script,
    body,
  });
}

/**
 * What stands between masthead and foot: the leaflet itself, also where it is only looked at. `inUse`: what puts today onto
 * the first screen, as soon as that is read.
 */
export function leafletMain(
  programme: Programme,
  photos: LeafletPhotos = new Map(),
  inUse: Html = nothing,
): Html {
  const labels = labelsOf(programme.language).leaflet;
  return html`
    ${nextSessionHtml(programme, labels, photos, inUse)}${laterHtml(
      html`${painHtml(programme)}${planHtml(programme, labels)}${helpHtml(programme)}${adviceHtml(programme)}${logHtml(programme.log)}`,
    )}
  `;
}

/** First what to do next, beside it for whom and why, then the exercises. */
function nextSessionHtml(
  programme: Programme,
  labels: LeafletLabels,
  photos: LeafletPhotos,
  inUse: Html,
): Html {
  const { nextSession, exercises, steps } = programme;
  const present = steps.find((step) => step.present);
  if (present === undefined) throw new TypeError(`${programme.alias}: no step is the present one`);
  return html`<section class="next" aria-labelledby="next-heading">
    <div class="opening">
      <div class="now">
        <h2 id="next-heading">${nextSession.heading}</h2>
        <p class="when">${nextSession.when}</p>
        <p>${nextSession.minutes}</p>
        ${glanceHtml(programme)}
      </div>
      <div class="why">
        ${programme.opening.map((sentence) => html`<p>${sentence}</p> `)}
        <p class="quiet">${programme.dates}</p>
        ${waysHtml(programme)}
      </div>
    </div>
    ${inUse}${laterHtml(html`${exercises.map((exercise, at) => exerciseHtml(exercise, at + 1, present.columns, labels, photos.get(exercise.card)))}`)}
  </section> `;
}

/** What lies below the first screen: drawn right after it, so that the next session is on the screen sooner. */
function laterHtml(content: Html): Html {
  return html`<div class="later">${content}</div> `;
}

/** The session in as many lines as it has exercises; each leads to its place below. */
function glanceHtml({ exercises }: Programme): Html {
  if (exercises.length === 0) return nothing;
  return html`<ol class="glance">
    ${exercises.map(
      (exercise, at) =>
        html`<li>
          <a href="#${exerciseId(at + 1)}"
            ><bdi>${exercise.title}</bdi> <span class="dose">${doseHtml(exercise)}</span></a
          >
          ${betweenHtml(exercise)}
        </li> `,
    )}
  </ol> `;
}

/** What must be found at once, from the top: the headings themselves as ways to their places. */
function waysHtml({ precautions, painRule, flare, getHelp, emergency }: Programme): Html {
  const ways = [
    ...[precautions, painRule, flare, getHelp].filter(({ parts }) => parts.length > 0),
    { id: EMERGENCY_ID, heading: emergency.heading },
  ];
  return html`<ul class="ways">
    ${ways.map(({ id, heading }) => html`<li><a href="#${id}">${heading}</a></li> `)}
  </ul> `;
}

function painHtml(programme: Programme): Html {
  const { precautions, painRule, morningCheck, easier, flare, missedDays } = programme;
  const places = placesOf(programme);
  return html`${sectionHtml(precautions, 'caution')}${sectionHtml(painRule, 'caution')}${[morningCheck, easier, flare, missedDays].map((part) => sectionHtml(part, '', places))}`;
}

function planHtml(programme: Programme, labels: LeafletLabels): Html {
  const { week, running, sitting, stretching, activities, steps, named, whatComesNext } = programme;
  return html`${[week, running, sitting, stretching, activities].map((part) => sectionHtml(part))}${stepsHtml(steps, labels, placesOf(programme))}${namedHtml(named, labels)}${sectionHtml(whatComesNext)}`;
}

function helpHtml({ getHelp, emergency }: Programme): Html {
  const { id, heading, parts } = getHelp;
  const content = parts.map((part) =>
    isSaid(part) ? html`<p>${contactHtml(part.text)}</p> ` : partHtml(part),
  );
  return html`${hangHtml(id, heading, html`${content}`)}${emergencyHtml(emergency)}`;
}

// How to reach the clinic stands in a sentence of its own.
function isSaid(part: Part): part is Extract<Part, { kind: 'paragraph' }> {
  return part.kind === 'paragraph' && part.weight === 'normal';
}

function adviceHtml({ advice }: Programme): Html {
  return html`${advice.map(({ id, heading, body }) =>
    hangHtml(`advice-${id}`, heading, html`${proseHtml(body, 3)}`, 'advice'),
  )}`;
}
