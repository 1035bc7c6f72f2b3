/** The page of one staged protocol, and the list of them all. */
import type { LibraryView, ProtocolView, SlotView, StageView } from '../../../catalogue/view.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { proseHtml } from '../parts/prose.ts';
import { hangHtml, partHtml, sectionHtml } from '../parts/section.ts';
import { tableHtml } from '../parts/table.ts';
import { ladderHtml } from '../record/charts.ts';
import { indexWith, publicHtml } from './frame.ts';
import { linkHtml, linksHtml } from './links.ts';
import { sourceHtml, sourcesHtml } from './sources.ts';

const LABELS = LIBRARY_LABELS.protocol;
const UP = '../';

export function protocolsPageHtml(view: LibraryView, assets: PageAssets): string {
  const { title, lead } = LIBRARY_LABELS.protocols;
  return publicHtml(
    {
      title,
      up: '',
      place: 'protocols',
      lead: html`<p class="lead">${lead}</p>`,
      main: html`<ul class="titles">
        ${view.protocols.map((one) => entryHtml(one))}
      </ul>`,
    },
    view,
    assets,
  );
}

function entryHtml(protocol: ProtocolView): Html {
  return html`<li>
    <h2>${linkHtml('', 'protocols', protocol)}</h2>
    <p>${protocol.guard}</p>
    ${originHtml(protocol)}
    <ol>
      ${protocol.stageTable.rows.map(([name = '']) => html`<li>${name.replace(/^\d+\. /, '')}</li> `)}
    </ol>
  </li> `;
}

export function protocolPageHtml(protocol: ProtocolView, view: LibraryView, assets: PageAssets): string {
  const { title, tendon, guard, why, body, stageTable, stages, ladder, ladderNote } = protocol;
  return publicHtml(
    {
      title,
      up: UP,
      place: null,
      lead: html`<p class="lead">${tendon}</p>
        <p>${guard}</p>
        ${originHtml(protocol)}`,
      main: html`${body.map(({ heading, blocks }) => hangHtml('how', heading, html`${proseHtml([{ heading: '', blocks }], 3, UP)}`))}
      ${protocol.ownChanges.map((section) => sectionHtml(section, 'broad own-caption'))}
      ${hangHtml('why', LABELS.why, html`${why.map((sentence) => html`<p>${sentence}</p> `)}`)}
      ${hangHtml('stages', LABELS.stages, tableHtml(stageTable), 'broad')}
      ${stages.map((stage, at) => stageHtml(stage, at + 1))}
      ${
        ladder === null
          ? nothing
          : hangHtml(
              'ladder',
              LABELS.ladder,
              html`<p>${ladderNote}</p>
                ${ladderHtml(ladder)}`,
              'broad',
            )
      }
      ${protocol.sections.map((section) => sectionHtml(section, section.id === 'activities' ? 'broad own-caption' : ''))}
      ${hangHtml(
        'settings',
        LABELS.settings,
        html`<details>
          <summary>${LABELS.foldedSettings}</summary>
          ${protocol.settings.map((one) => tableHtml(one))}
        </details>`,
        'broad',
      )}
      ${hangHtml('sources', LABELS.sources, sourcesHtml(protocol.sources))}`,
    },
    view,
    assets,
  );
}

function originHtml({ origin }: ProtocolView): Html {
  return origin === '' ? nothing : html`<p class="origin">${origin}</p>`;
}

function stageHtml({ facet, heading, parts, slots }: StageView, number: number): Html {
  return hangHtml(
    `stage-${number}`,
    heading,
    html`${parts.map((part) => partHtml(part))} ${slots.map(slotHtml)}
      <p><a href="${UP}${indexWith('stage', facet)}">${LABELS.cardsOfStage}</a></p>`,
  );
}

function slotHtml({ heading, sentences, cards, source }: SlotView): Html {
  return html`<h3>${heading}</h3>
    ${sentences.map((sentence) => html`<p>${sentence}</p> `)}
    <p>${linksHtml(UP, 'exercises', cards)}</p>
    <p class="quiet">${LABELS.rests} ${sourceHtml(source)}</p> `;
}
