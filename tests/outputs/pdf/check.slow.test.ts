/** The leaflet against the machine rules of PDF/UA-1, and every rule against a fault seeded for it. */
import { describe, expect, it } from 'vitest';
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';
import { brokenRules, RULES } from './check.ts';
import { leafletOf } from './make.ts';
import { structureOf } from './structure.ts';
import {
  dictOf,
  isStream,
  listOf,
  nameOf,
  readObjects,
  resolved,
  type Dict,
  type PdfObjects,
  type PdfString,
  type Value,
} from './objects.ts';

/** A short leaflet with all that one may hold: a link, and a title XML would choke on. */
const linked: Programme = {
  ...otter,
  exercises: otter.exercises.slice(0, 1),
  steps: otter.steps.slice(0, 2).map((step) => ({ ...step, prescriptions: step.prescriptions.slice(0, 1) })),
  log: { ...otter.log, days: otter.log.days.slice(0, 3) },
  title: 'Home exercises & <more> for "otter"',
  advice: [
    ...otter.advice,
    {
      id: 'links',
      heading: 'To read more',
      body: [
        {
          heading: '',
          blocks: [
            {
              kind: 'paragraph',
              text: [
                { kind: 'text', text: 'Read ' },
                {
                  kind: 'link',
                  href: 'https://clinic.example/tendon',
                  children: [
                    {
                      kind: 'text',
                      text: 'our page on tendons, which is long enough to run over two lines of a column',
                    },
                  ],
                },
                { kind: 'text', text: ' when you like.' },
              ],
            },
          ],
        },
      ],
    },
  ],
};

const structure = structureOf(readObjects(await leafletOf(linked)));

describe('the leaflet keeps the machine rules of ISO 14289-1 (veraPDF profile PDF_UA/1)', () => {
  it.each(RULES)('$id: $asks', ({ faultsIn }) => {
    expect(faultsIn(structure)).toEqual([]);
  });

  it.each([
    ['A4', otter],
    ['Letter', { ...otter, paper: 'Letter' as const }],
    ['without exercises', { ...otter, exercises: [], steps: [] }],
    ['without figures', { ...otter, exercises: otter.exercises.map((one) => ({ ...one, figures: null })) }],
  ])('whole: %s', async (_, programme) => {
    expect(brokenRules(readObjects(await leafletOf(programme)))).toEqual([]);
  });
});

/** One fault for each rule, put into a fresh reading of the file. */
const SEEDS: Readonly<Record<string, (file: PdfObjects) => void>> = {
  '5-1': (f) => editXmp(f, (xml) => xml.replace('http://www.aiim.org/pdfua/ns/id/', 'http://example.org/')),
  '5-2': (f) => editXmp(f, (xml) => xml.replace('<pdfuaid:part>1<', '<pdfuaid:part>2<')),
  '6.2-1': (f) => dictOf(f, catalogOf(f).get('MarkInfo')).set('Marked', false),
  '7.1-1': (f) =>
    editContent(f, (content) =>
      content.replace(/(\/P <<[^>]*>> BDC)([^]*?)EMC/, '$1 /Artifact BMC $2 EMC EMC'),
    ),
  '7.1-2': (f) =>
    editContent(f, (content) => content.replace(/(\/P <<[^>]*>> BDC[^]*?EMC)/, '/Artifact BMC $1 EMC')),
  '7.1-3': (f) => editContent(f, (content) => `${content} 0 0 10 10 re f`),
  '7.1-4': (f) => dictOf(f, catalogOf(f).get('MarkInfo')).set('Suspects', true),
  '7.1-5': (f) => element(f, 'P').set('S', { name: 'Dose' }),
  '7.1-7': (f) => treeOf(f).set('RoleMap', new Map<string, Value>([['P', { name: 'H1' }]])),
  '7.1-8': (f) => catalogOf(f).delete('Metadata'),
  '7.1-9': (f) => editXmp(f, (xml) => xml.replaceAll('dc:title', 'dc:subject')),
  '7.1-10': (f) => dictOf(f, catalogOf(f).get('ViewerPreferences')).set('DisplayDocTitle', false),
  '7.1-11': (f) => catalogOf(f).delete('StructTreeRoot'),
  '7.2-2': (f) => catalogOf(f).delete('Lang'),
  '7.2-3': (f) => element(f, 'THead').set('S', { name: 'P' }),
  '7.2-4': (f) => element(f, 'TBody').set('S', { name: 'Sect' }),
  '7.2-5': (f) => element(f, 'Table').set('S', { name: 'Sect' }),
  '7.2-6': (f) => element(f, 'Table').set('S', { name: 'Sect' }),
  '7.2-8': (f) => element(f, 'TR').set('S', { name: 'Sect' }),
  '7.2-9': (f) => parentOf(f, element(f, 'TD')).set('S', { name: 'Sect' }),
  '7.2-10': (f) => element(f, 'TD').set('S', { name: 'P' }),
  '7.2-11': (f) => element(f, 'TBody').set('S', { name: 'THead' }),
  '7.2-14': (f) => element(f, 'TBody').set('S', { name: 'TFoot' }),
  '7.2-16': (f) => swapKids(f, element(f, 'Table'), 0, 1),
  '7.2-17': (f) => element(f, 'L').set('S', { name: 'Sect' }),
  '7.2-18': (f) => element(f, 'LI').set('S', { name: 'Sect' }),
  '7.2-19': (f) => element(f, 'LI').set('S', { name: 'P' }),
  '7.2-20': (f) => element(f, 'LBody').set('S', { name: 'P' }),
  '7.2-22': (f) => catalogOf(f).delete('Lang'),
  '7.2-29': (f) => catalogOf(f).set('Lang', text('en_GB, please')),
  '7.2-33': (f) => catalogOf(f).delete('Lang'),
  '7.2-34': (f) => catalogOf(f).delete('Lang'),
  '7.2-36': (f) => element(f, 'TR').set('S', { name: 'TD' }),
  '7.2-37': (f) => parentOf(f, element(f, 'TD')).set('S', { name: 'TH' }),
  '7.2-42': (f) =>
    parentOf(f, element(f, 'TD')).set('K', listOf(f, parentOf(f, element(f, 'TD')).get('K')).slice(0, 1)),
  '7.3-1': (f) => element(f, 'Figure').delete('Alt'),
  '7.4.2-1': (f) => element(f, 'H2').set('S', { name: 'H4' }),
  '7.4.4-2': (f) => element(f, 'H3').set('S', { name: 'H' }),
  '7.5-1': (f) => element(f, 'TH').delete('A'),
  '7.16-1': (f) => f.trailer.set('Encrypt', new Map()),
  '7.18.1-2': (f) => {
    annotation(f).set('Subtype', { name: 'Text' });
    annotation(f).delete('Contents');
  },
  '7.18.3-1': (f) => pageWith(f, 'Annots').delete('Tabs'),
  '7.18.5-1': (f) => element(f, 'Link').set('S', { name: 'Span' }),
  '7.18.5-2': (f) => annotation(f).set('Contents', text('')),
  '7.21.3.2-1': (f) => ofType(f, 'Font', 'CIDFontType2').delete('CIDToGIDMap'),
  '7.21.4.1-1': (f) => ofType(f, 'FontDescriptor').delete('FontFile2'),
  '7.21.4.1-3': (f) => editContent(f, (content) => content.replace('(\0\x01', '(\x0f\xff')),
  '7.21.5-1': (f) => (listOf(f, ofType(f, 'Font', 'CIDFontType2').get('W'))[1] as Value[]).splice(1, 1, 999),
  '7.21.7-1': (f) => ofType(f, 'Font', 'Type0').delete('ToUnicode'),
  '7.21.7-2': (f) =>
    editStream(f, ofType(f, 'Font', 'Type0').get('ToUnicode'), (cmap) =>
      cmap.replace(/\[<[0-9a-f]+>/, '[<0000>'),
    ),
  '7.21.8-1': (f) => editContent(f, (content) => content.replace('(\0\x01', '(\0\0')),
  'XML 1.0': (f) => editXmp(f, (xml) => xml.replace('&amp;', '&')),
  'ISO 32000-1 14.7.4.4': (f) => {
    const nums = listOf(f, dictOf(f, treeOf(f).get('ParentTree')).get('Nums'));
    (nums[1] as Value[]).reverse();
  },
  'ISO 32000-1 table 37': (f) => dictOf(f, treeOf(f).get('ParentTree')).set('Limits', [0, 1]),
  // As it was: the heading of an exercise hung behind what it heads.
  'order on the page': (f) => {
    const kids = listOf(f, parentOf(f, element(f, 'H3')).get('K'));
    kids.push(kids.shift() ?? null);
  },
  'list entries are whole': (f) => {
    const entry = element(f, 'LI');
    entry.set('K', listOf(f, entry.get('K')).slice(1));
  },
  'tables compare': (f) => {
    const body = element(f, 'TBody');
    body.set('K', listOf(f, body.get('K')).slice(0, 1));
  },
  'links have words': (f) => {
    const link = element(f, 'Link');
    link.set(
      'K',
      listOf(f, link.get('K')).filter((kid) => typeof kid !== 'number'),
    );
  },
  'ISO 32000-1 8.10': (f) => {
    const forms = dictOf(f, dictOf(f, pageWith(f, 'Contents').get('Resources')).get('XObject'));
    editStream(f, forms.values().next().value, (paths) => `/P <</MCID 0>> BDC ${paths} EMC`);
  },
  'ISO 32000-1 14.8.5.4.3': (f) => element(f, 'Figure').delete('A'),
};

describe('every rule sees the fault seeded for it', () => {
  it('has a seed for each rule and no other', () => {
    expect(Object.keys(SEEDS).sort()).toEqual(RULES.map(({ id }) => id).sort());
  });

  it.each(Object.entries(SEEDS))('%s', async (id, seed) => {
    const faulty = readObjects(await leafletOf(linked));
    seed(faulty);
    const rule = RULES.find((one) => one.id === id)!;
    expect(rule.faultsIn(structureOf(faulty))).not.toEqual([]);
  });
});

function catalogOf(f: PdfObjects): Dict {
  return dictOf(f, f.trailer.get('Root'));
}

function treeOf(f: PdfObjects): Dict {
  return dictOf(f, catalogOf(f).get('StructTreeRoot'));
}

/** The first structure element of a role. */
function element(f: PdfObjects, role: string): Dict {
  return found(f, (dict) => nameOf(dict.get('S')) === role && dict.has('P'));
}

function parentOf(f: PdfObjects, dict: Dict): Dict {
  return dictOf(f, dict.get('P'));
}

function annotation(f: PdfObjects): Dict {
  return found(f, (dict) => nameOf(dict.get('Type')) === 'Annot');
}

function pageWith(f: PdfObjects, key: string): Dict {
  return found(f, (dict) => nameOf(dict.get('Type')) === 'Page' && dict.has(key));
}

function ofType(f: PdfObjects, type: string, subtype?: string): Dict {
  return found(
    f,
    (dict) =>
      nameOf(dict.get('Type')) === type && (subtype === undefined || nameOf(dict.get('Subtype')) === subtype),
  );
}

function found(f: PdfObjects, fits: (dict: Dict) => boolean): Dict {
  for (const value of f.objects.values()) if (value instanceof Map && fits(value)) return value;
  throw new Error('the fault finds nothing to be put into');
}

function swapKids(f: PdfObjects, dict: Dict, one: number, other: number): void {
  const kids = listOf(f, dict.get('K'));
  [kids[one], kids[other]] = [kids[other] ?? null, kids[one] ?? null];
}

function editStream(f: PdfObjects, value: Value | undefined, edit: (data: string) => string): void {
  const stream = resolved(f, value);
  if (!isStream(stream)) throw new Error('no stream to edit');
  const edited = edit(stream.data);
  if (edited === stream.data) throw new Error('the fault changes nothing');
  stream.data = edited;
}

function editXmp(f: PdfObjects, edit: (xml: string) => string): void {
  editStream(f, catalogOf(f).get('Metadata'), edit);
}

/** Edits the content of the first page. */
function editContent(f: PdfObjects, edit: (content: string) => string): void {
  editStream(f, pageWith(f, 'Contents').get('Contents'), edit);
}

function text(words: string): PdfString {
  return { bytes: words };
}
