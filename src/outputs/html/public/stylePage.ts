/** The style page: every element of the sheets once, so that a change of look is seen in one place. */
import type { LibraryView } from '../../../catalogue/view.ts';
import { labelsOf } from '../../../messages/en/labels.ts';
import type { PageAssets } from '../assets.ts';
import { html, join, type Html } from '../html.ts';
import { emergencyHtml } from '../parts/emergency.ts';
import { exerciseHtml } from '../parts/exercise.ts';
import { logHtml } from '../parts/log.ts';
import { toolsHtml } from '../parts/masthead.ts';
import { hangHtml, sectionHtml } from '../parts/section.ts';
import { stepsHtml } from '../parts/steps.ts';
import { ladderHtml, rulerHtml } from '../record/charts.ts';
import { reasonsHtml } from '../record/reasons.ts';
import { publicHtml } from './frame.ts';
import {
  sampleCaution,
  sampleEmergency,
  sampleExercise,
  sampleLadder,
  sampleLog,
  sampleRuler,
  sampleSteps,
  sampleText,
} from './sample.ts';

// Classes of the swatches in templates/styles/public.css: colours and type sizes by the names of the tokens.
const SWATCHES = [
  'paper',
  'ink',
  'quiet',
  'hair',
  'wash',
  'accent',
  'arc',
  'body',
  'arm',
  'prop',
  'caution-paper',
  'caution-rule',
] as const;
const SIZES = ['note', 'body', 'lead', 'label', 'heading3', 'heading2', 'heading1', 'dose'] as const;

/** `style/index.html` of the public folder as text. */
export function stylePageHtml(view: LibraryView, assets: PageAssets): string {
  const { public: labels, leaflet, record } = labelsOf(view.language);
  const columns = sampleSteps.map((step) => step.columns)[0];
  if (columns === undefined) throw new TypeError('the sample has no step');
  return publicHtml(
    {
      title: labels.styleTitle,
      up: '../',
      place: null,
      lead: html`<p class="lead">${labels.aboutStyle}</p>
        ${toolsHtml(leaflet)}`,
      scripts: ['sheet.js'],
      main: html`${hangHtml('colour', labels.colour, swatchesHtml())}
        ${hangHtml('type', labels.type, sizesHtml())} ${sectionHtml(sampleText)}
        <section class="next" aria-labelledby="session-heading">
          <h2 id="session-heading">${labels.session}</h2>
          ${exerciseHtml(sampleExercise, 1, columns, leaflet)}
        </section>
        ${stepsHtml(sampleSteps, leaflet)} ${sectionHtml(sampleCaution, 'caution')}
        ${emergencyHtml(sampleEmergency)} ${logHtml(sampleLog)}
        ${hangHtml('charts', labels.charts, html`${rulerHtml(sampleRuler)}${ladderHtml(sampleLadder)}`, 'broad')}
        ${hangHtml(
          'folded',
          labels.folded,
          html`<details>
            <summary>${record.cells}</summary>
            ${reasonsHtml(sampleExercise.cells, columns, sampleExercise.title, record)}
          </details>`,
        )}`,
    },
    view,
    assets,
  );
}

function swatchesHtml(): Html {
  return html`<ul class="swatches">
    ${SWATCHES.map((name) => html`<li><span class="swatch ${name}"></span>${name}</li> `)}
  </ul> `;
}

function sizesHtml(): Html {
  return join(
    SIZES.map((name) => html`<p class="size-${name}">${name} 0123456789 × ½ °</p>`),
    '\n',
  );
}
