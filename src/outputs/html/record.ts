/** The clinician's page: what was found, what was decided, and why, with the numbers on demand. */
import { labelsOf, type LeafletLabels, type RecordLabels } from '../../messages/en/labels.ts';
import { weekdayText } from '../../messages/en/plain.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Table } from '../../messages/shapes.ts';
import type { PageAssets } from './assets.ts';
import { documentText } from './document.ts';
import { html, nothing, type Html } from './html.ts';
import { emergencyHtml } from './parts/emergency.ts';
import { footHtml, mastheadHtml } from './parts/masthead.ts';
import { listHtml, proseHtml } from './parts/prose.ts';
import { hangHtml, partHtml, sectionHtml } from './parts/section.ts';
import { tableHtml } from './parts/table.ts';
import { decidedHtml } from './record/decided.ts';
import { ladderHtml } from './record/charts.ts';
import { keyWords } from './record/keyWords.ts';
import { picturesHtml } from './record/pictures.ts';
import { reasonsHtml } from './record/reasons.ts';

/** The file `record.html` as text; on paper it is the same sheet, what is folded left out. */
export function recordHtml(programme: Programme, assets: PageAssets): string {
  const { leaflet, record: labels } = labelsOf(programme.language);
  const { record } = programme;
  return documentText({
    language: programme.language,
    title: record.heading,
    kind: 'record',
    style: assets.record,
    arrival: assets.arrival,
    script: assets.script,
    body: html`${mastheadHtml(programme, record.heading, leaflet, assets.logo)}
      <main>
        ${stageHtml(programme, labels)} ${reviewHtml(programme)}
        ${hangHtml('pictures', labels.pictures, picturesHtml(record.pictures, labels), 'broad')}
        ${foundHtml(programme, labels)}
        ${hangHtml('exercises', labels.exercises, decidedHtml(programme, labels), 'broad')}
        ${passedOverHtml(programme, labels)} ${remarksHtml(programme, labels)}
        ${hangHtml(
          'ladder',
          labels.ladder,
          html`<p class="on-paper">${labels.ladderOnScreen}</p>
            ${ladderHtml(record.ladder)}`,
          'broad',
        )}
        ${aheadHtml(programme, leaflet, labels)} ${planHtml(programme, labels)}
        ${accountHtml(programme, labels)} ${hangHtml('note', labels.note, noteHtml(record.note))}
        ${programme.letter === null ? nothing : sectionHtml(programme.letter)}
        ${emergencyHtml(programme.emergency)}
      </main>
      ${footHtml(programme, leaflet)}`,
  });
}

function stageHtml({ stage, step, dates, clinician }: Programme, labels: RecordLabels): Html {
  return hangHtml(
    'stage',
    labels.stage,
    html`<p class="lead">${stage.chosen}: ${stage.name}. ${labels.step} ${step}.</p>
      <p>
        ${stage.chosenBy === 'clinician' && stage.proposed === stage.chosen ? '' : `${labels.proposed}: ${stage.proposed}. `}${labels.chosenBy[stage.chosenBy]}.
        <bdi>${clinician}</bdi>
      </p>
      ${sentences(stage.because)}
      <p class="quiet">${dates}</p>`,
  );
}

/** What the log of the revision before says; nothing where none was kept. */
function reviewHtml({ record: { review } }: Programme): Html {
  if (review === null) return nothing;
  const asks =
    review.asks.length === 0
      ? nothing
      : html`<h3>${review.asksHeading}</h3>
          ${sentences(review.asks)}`;
  return hangHtml(
    'review',
    review.heading,
    html`${review.sentences.map((sentence) => html`<p>${sentence}</p> `)}${asks}${tableHtml(review.table)}${tableHtml(review.weeks)}`,
    'broad',
  );
}

function foundHtml({ record }: Programme, labels: RecordLabels): Html {
  return html`${hangHtml('findings', labels.findings, html`${record.findings.map((one) => tableHtml(one))}${proseHtml(record.notes, 3)}`)}
  ${hangHtml('screen', labels.screen, html`${tableHtml(record.screen)}${sentences(record.effects)}`)}`;
}

function passedOverHtml({ record }: Programme, labels: RecordLabels): Html {
  const columns = [labels.card, labels.slot, labels.stageColumn, labels.because];
  const rows = record.passedOver.map(({ title, slot, stage, because }) => [title, slot, `${stage}`, because]);
  const table = tableHtml({ caption: labels.passedOver, columns, rows });
  const content = rows.length === 0 ? nothing : table;
  return hangHtml('passed-over', labels.passedOver, content, 'broad own-caption');
}

function remarksHtml({ record }: Programme, labels: RecordLabels): Html {
  return hangHtml('remarks', labels.remarks, sentences(record.remarks));
}

/** The steps to come, each with the reasons of its numbers folded beneath. */
function aheadHtml({ record, steps }: Programme, leaflet: LeafletLabels, labels: RecordLabels): Html {
  const coming = steps.filter((step) => !step.present);
  return hangHtml(
    'steps-ahead',
    labels.stepsAhead,
    html`${record.stepsAhead.parts.map((part) => partHtml(part))}
    ${coming.map(
      (step) =>
        html`<details>
          <summary>${step.heading}</summary>
          <p>${step.change}</p>
          ${step.goOnWhen.length === 0 ? nothing : html`<p>${leaflet.goOnWhen}</p>`}
          ${sentences(step.goOnWhen)}
          ${step.prescriptions.map(({ title, cells }) => reasonsHtml(cells, step.columns, title, labels))}
        </details> `,
    )}`,
    'broad',
  );
}

function planHtml({ record }: Programme, labels: RecordLabels): Html {
  const { week } = record;
  const table = tableHtml({
    caption: labels.week,
    columns: [labels.day, labels.entries],
    rows: week.days.map(({ weekday, entries }) => [weekdayText(weekday), entries.join('; ')]),
  });
  return html`${hangHtml('week', labels.week, html`${table}${tableHtml(record.totals)}${gaveUpHtml(week.gaveUp, labels)}`, 'own-caption')}
  ${sectionHtml(record.running)} ${sectionHtml(record.sitting)}`;
}

function gaveUpHtml(gaveUp: readonly string[], labels: RecordLabels): Html {
  if (gaveUp.length === 0) return nothing;
  return html`<h3>${labels.gaveUp}</h3>
    ${sentences(gaveUp)}`;
}

/** What the clinic answers for: changes, the reporting template, every setting with its mark, versions. */
function accountHtml({ record }: Programme, labels: RecordLabels): Html {
  const { versions } = record;
  const rows = [
    [labels.library, versions.library],
    [labels.protocol, versions.protocol],
    [labels.loadleaf, versions.loadleaf],
  ];
  const changes = record.changes.length === 0 ? html`<p>${labels.noChanges}</p>` : sentences(record.changes);
  return html`${hangHtml('changes', labels.changes, changes)}
  ${hangHtml('cert', record.cert.caption, tableHtml(record.cert), 'broad own-caption')}
  ${hangHtml('settings', record.settings.caption, settingsHtml(record.settings, labels), 'broad own-caption')}
  ${hangHtml('versions', labels.versions, tableHtml({ caption: labels.versions, columns: [labels.part, labels.version], rows }), 'own-caption')}`;
}

/** Every number of the protocol with its mark: long, and seldom asked for. */
function settingsHtml(settings: Table, { everySetting }: RecordLabels): Html {
  return html`<details>
    <summary>${everySetting}</summary>
    ${tableHtml({ ...settings, rows: settings.rows.map(([key = '', ...others]) => [keyWords(key), ...others]) })}
  </details> `;
}

function noteHtml(note: readonly string[]): Html {
  return html`<pre class="note">${note.join('\n')}</pre>`;
}

function sentences(entries: readonly string[]): Html {
  if (entries.length === 0) return nothing;
  return listHtml(
    entries.map((entry) => html`${entry}`),
    false,
  );
}
