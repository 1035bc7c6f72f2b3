/**
 * Machine rules of PDF/UA-1 on a file. Clause and number are those of the veraPDF validation profile for
 * ISO 14289-1:2014 (PDF_UA/1, CC BY 4.0), read there; the standard itself was not read. Where a rule is not in that
 * profile, the clause of ISO 32000-1 it follows from is named. One table, long because it is whole.
 */
import { dictOf, isStream, listOf, nameOf, resolved, textOf, type Dict, type PdfObjects } from './objects.ts';
import {
  attributesOf,
  elementsIn,
  fontMaps,
  structureOf,
  walk,
  type Element,
  type Structure,
  textIn,
  textsByMark,
} from './structure.ts';
import { paintedBy } from './content.ts';
import { readTrueType } from './trueType.ts';
import { readXmp, type Xmp } from './xmp.ts';

export interface Rule {
  readonly id: string;
  readonly asks: string;
  /** What breaks the rule, in words; empty when nothing does. */
  readonly faultsIn: (structure: Structure) => readonly string[];
}

/** Names of the broken rules with the first thing that breaks each. */
export function brokenRules(file: PdfObjects): readonly string[] {
  const structure = structureOf(file);
  return RULES.flatMap(({ id, faultsIn }) => {
    const [first] = faultsIn(structure);
    return first === undefined ? [] : [`${id}: ${first}`];
  });
}

/** Structure types of ISO 32000-1 tables 333 to 340. */
const STANDARD_TYPES = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl ' +
    'LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu ' +
    'WT WP Figure Formula Form'
  ).split(' '),
);

const xmpOf = ({ file, catalog }: Structure): Xmp => {
  const metadata = resolved(file, catalog.get('Metadata'));
  return readXmp(isStream(metadata) ? metadata.data : '');
};
const all = ({ top }: Structure): readonly Element[] => [...walk(top)];
const ofRole = (structure: Structure, ...roles: string[]) =>
  all(structure).filter(({ role }) => roles.includes(role));
const kidRoles = (element: Element) => elementsIn(element).map(({ role }) => role);
const fault = (broken: boolean, words: string): readonly string[] => (broken ? [words] : []);

/** Elements of some roles whose kids are others than these. */
function strangers(roles: readonly string[], kids: readonly string[]): Rule['faultsIn'] {
  return (structure) =>
    ofRole(structure, ...roles).flatMap((element) =>
      kidRoles(element)
        .filter((role) => !kids.includes(role))
        .map((role) => `${element.role} holds ${role}`),
    );
}

/** Elements of a role whose parent is another than these. */
function astray(role: string, parents: readonly string[]): Rule['faultsIn'] {
  return (structure) =>
    ofRole(structure, role)
      .filter(({ parent }) => !parents.includes(parent?.role ?? ''))
      .map(({ parent }) => `${role} stands in ${parent?.role ?? 'nothing'}`);
}

function rowsOf(table: Element): readonly Element[] {
  return elementsIn(table).flatMap((kid) =>
    kid.role === 'TR' ? [kid] : kid.role === 'Caption' ? [] : elementsIn(kid),
  );
}

function fontsOf({ file, pages }: Structure): readonly Dict[] {
  const dicts = pages.flatMap(({ page }) => [
    ...dictOf(file, dictOf(file, page.get('Resources')).get('Font')).values(),
  ]);
  return [...new Set(dicts.map((font) => dictOf(file, font)))];
}

const descendantOf = ({ file }: Structure, font: Dict) =>
  dictOf(file, listOf(file, font.get('DescendantFonts'))[0]);

function fontProgramOf(structure: Structure, font: Dict): string | null {
  const descriptor = dictOf(structure.file, descendantOf(structure, font).get('FontDescriptor'));
  const program = resolved(structure.file, descriptor.get('FontFile2') ?? descriptor.get('FontFile3'));
  return isStream(program) ? program.data : null;
}

/** Every glyph shown, with the font it comes from. */
function glyphsShown(structure: Structure): readonly {
  readonly font: Dict;
  readonly name: string;
  readonly page: Dict;
  readonly codes: readonly number[];
}[] {
  return structure.pages.flatMap(({ page, painted }) => {
    const fonts = dictOf(structure.file, dictOf(structure.file, page.get('Resources')).get('Font'));
    return painted
      .filter(({ kind }) => kind === 'text')
      .map(({ codes, font }) => ({ font: dictOf(structure.file, fonts.get(font)), name: font, page, codes }));
  });
}

interface Annotation {
  readonly dict: Dict;
  readonly ref: number;
}

function annotationsOf({ file, pages }: Structure): readonly Annotation[] {
  return pages.flatMap(({ page }) =>
    listOf(file, page.get('Annots')).map((one) => ({
      dict: dictOf(file, one),
      ref: (one as { ref: number }).ref,
    })),
  );
}

/** Marked content that belongs to an element, as `page/mcid`. */
function claimedMarks(structure: Structure): ReadonlySet<string> {
  return new Set(
    all(structure).flatMap(({ kids }) =>
      kids.flatMap((kid) => (kid.kind === 'content' ? [`${kid.page}/${kid.mcid}`] : [])),
    ),
  );
}

/** All dictionaries of structure elements and the catalog, where a language may stand. */
const languages = (structure: Structure) =>
  [structure.catalog, ...all(structure).map(({ dict }) => dict)].flatMap((dict) => {
    const tag = textOf(dict.get('Lang'));
    return tag === null ? [] : [tag];
  });

const noLanguage = (structure: Structure) => textOf(structure.catalog.get('Lang')) === null;

export const RULES: readonly Rule[] = [
  {
    id: '5-1',
    asks: 'the metadata name the PDF/UA identification schema',
    faultsIn: (s) =>
      fault(xmpOf(s).namespaceOf('pdfuaid') !== 'http://www.aiim.org/pdfua/ns/id/', 'no pdfuaid schema'),
  },
  {
    id: '5-2',
    asks: 'pdfuaid:part is 1',
    faultsIn: (s) => fault(xmpOf(s).text('pdfuaid:part') !== '1', `part is ${xmpOf(s).text('pdfuaid:part')}`),
  },
  {
    id: '6.2-1',
    asks: 'the file says that it is tagged',
    faultsIn: ({ file, catalog }) =>
      fault(dictOf(file, catalog.get('MarkInfo')).get('Marked') !== true, 'Marked is not true'),
  },
  {
    id: '7.1-1',
    asks: 'no artifact inside tagged content',
    faultsIn: ({ pages }) =>
      pages.flatMap(({ painted }) =>
        painted
          .filter(
            ({ marks }) =>
              marks.findIndex(({ tag }) => tag === 'Artifact') >
                marks.findIndex(({ mcid }) => mcid !== null) && marks.some(({ mcid }) => mcid !== null),
          )
          .map(({ kind }) => `${kind} in an artifact in tagged content`),
      ),
  },
  {
    id: '7.1-2',
    asks: 'no tagged content inside an artifact',
    faultsIn: ({ pages }) =>
      pages.flatMap(({ painted }) =>
        painted
          .filter(({ marks }) => {
            const artifact = marks.findIndex(({ tag }) => tag === 'Artifact');
            return artifact !== -1 && marks.findIndex(({ mcid }) => mcid !== null) > artifact;
          })
          .map(({ kind }) => `tagged ${kind} in an artifact`),
      ),
  },
  {
    id: '7.1-3',
    asks: 'everything painted is an artifact or belongs to an element',
    faultsIn: (s) => {
      const claimed = claimedMarks(s);
      return s.pages.flatMap(({ painted }, page) =>
        painted
          .filter(
            ({ marks }) =>
              !marks.some(
                ({ tag, mcid }) => tag === 'Artifact' || (mcid !== null && claimed.has(`${page}/${mcid}`)),
              ),
          )
          .map(({ kind }) => `${kind} on page ${page + 1} belongs to nothing`),
      );
    },
  },
  {
    id: '7.1-4',
    asks: 'Suspects is not true',
    faultsIn: ({ file, catalog }) =>
      fault(dictOf(file, catalog.get('MarkInfo')).get('Suspects') === true, 'Suspects'),
  },
  {
    id: '7.1-5',
    asks: 'every structure type is a standard one or mapped to one',
    faultsIn: (s) => {
      const roleMap = dictOf(s.file, s.root.get('RoleMap'));
      return all(s)
        .filter(
          ({ role }) => !STANDARD_TYPES.has(role) && !STANDARD_TYPES.has(nameOf(roleMap.get(role)) ?? ''),
        )
        .map(({ role }) => `type ${role}`);
    },
  },
  {
    id: '7.1-7',
    asks: 'no standard structure type is mapped to another',
    faultsIn: (s) =>
      [...dictOf(s.file, s.root.get('RoleMap')).keys()]
        .filter((role) => STANDARD_TYPES.has(role))
        .map((role) => `${role} is mapped`),
  },
  {
    id: '7.1-8',
    asks: 'the catalog has metadata',
    faultsIn: ({ file, catalog }) => fault(!isStream(resolved(file, catalog.get('Metadata'))), 'no metadata'),
  },
  {
    id: '7.1-9',
    asks: 'the metadata have a dc:title',
    faultsIn: (s) => fault(!xmpOf(s).text('dc:title'), 'no dc:title'),
  },
  {
    id: '7.1-10',
    asks: 'a viewer shows the title, not the file name',
    faultsIn: ({ file, catalog }) =>
      fault(
        dictOf(file, catalog.get('ViewerPreferences')).get('DisplayDocTitle') !== true,
        'DisplayDocTitle is not true',
      ),
  },
  {
    id: '7.1-11',
    asks: 'there is a structure tree',
    faultsIn: ({ top }) => fault(top.length === 0, 'no structure tree'),
  },
  {
    id: '7.2-2',
    asks: 'bookmarks have a language',
    faultsIn: (s) => fault(s.catalog.has('Outlines') && noLanguage(s), 'bookmarks without a language'),
  },
  {
    id: '7.2-3',
    asks: 'a table holds rows, their groups and a caption',
    faultsIn: strangers(['Table'], ['TR', 'THead', 'TBody', 'TFoot', 'Caption']),
  },
  {
    id: '7.2-4',
    asks: 'a row stands in a table or a group of rows',
    faultsIn: astray('TR', ['Table', 'THead', 'TBody', 'TFoot']),
  },
  { id: '7.2-5', asks: 'a table head stands in a table', faultsIn: astray('THead', ['Table']) },
  { id: '7.2-6', asks: 'a table body stands in a table', faultsIn: astray('TBody', ['Table']) },
  { id: '7.2-8', asks: 'a header cell stands in a row', faultsIn: astray('TH', ['TR']) },
  { id: '7.2-9', asks: 'a cell stands in a row', faultsIn: astray('TD', ['TR']) },
  { id: '7.2-10', asks: 'a row holds cells', faultsIn: strangers(['TR'], ['TH', 'TD']) },
  {
    id: '7.2-11',
    asks: 'a table has at most one head',
    faultsIn: (s) =>
      ofRole(s, 'Table')
        .filter((table) => kidRoles(table).filter((role) => role === 'THead').length > 1)
        .map(() => 'two heads'),
  },
  {
    id: '7.2-14',
    asks: 'a table with a head has a body',
    faultsIn: (s) =>
      ofRole(s, 'Table')
        .filter((table) => kidRoles(table).includes('THead') && !kidRoles(table).includes('TBody'))
        .map(() => 'a head without a body'),
  },
  {
    id: '7.2-16',
    asks: 'a caption is the first or last of a table',
    faultsIn: (s) =>
      ofRole(s, 'Table')
        .filter((table) => kidRoles(table).slice(1, -1).includes('Caption'))
        .map(() => 'a caption in the midst'),
  },
  { id: '7.2-17', asks: 'a list entry stands in a list', faultsIn: astray('LI', ['L']) },
  { id: '7.2-18', asks: 'an entry’s body stands in an entry', faultsIn: astray('LBody', ['LI']) },
  {
    id: '7.2-19',
    asks: 'a list holds entries and lists',
    faultsIn: strangers(['L'], ['LI', 'L', 'Caption']),
  },
  { id: '7.2-20', asks: 'an entry holds a label and a body', faultsIn: strangers(['LI'], ['Lbl', 'LBody']) },
  {
    id: '7.2-22',
    asks: 'text alternatives have a language',
    faultsIn: (s) =>
      fault(
        noLanguage(s) && all(s).some(({ dict }) => dict.has('Alt') && !dict.has('Lang')),
        'an alternative without a language',
      ),
  },
  {
    id: '7.2-29',
    asks: 'languages are language tags (RFC 3066)',
    faultsIn: (s) =>
      languages(s)
        .filter((tag) => !/^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/.test(tag))
        .map((tag) => `language ${tag}`),
  },
  {
    id: '7.2-33',
    asks: 'the metadata have a language',
    faultsIn: (s) => fault(noLanguage(s), 'no language in the catalog'),
  },
  {
    id: '7.2-34',
    asks: 'the text has a language',
    faultsIn: (s) => fault(noLanguage(s), 'no language in the catalog'),
  },
  { id: '7.2-36', asks: 'a table head holds rows', faultsIn: strangers(['THead'], ['TR']) },
  { id: '7.2-37', asks: 'a table body holds rows', faultsIn: strangers(['TBody'], ['TR']) },
  {
    id: '7.2-42',
    asks: 'all rows of a table are of one length',
    faultsIn: (s) =>
      ofRole(s, 'Table').flatMap((table) => {
        const lengths = new Set(rowsOf(table).map((row) => elementsIn(row).length));
        return fault(lengths.size > 1, `rows of ${[...lengths].join(' and ')} cells`);
      }),
  },
  {
    id: '7.3-1',
    asks: 'a figure has a text alternative',
    faultsIn: (s) =>
      ofRole(s, 'Figure')
        .filter(({ dict }) => !textOf(dict.get('Alt')) && !textOf(dict.get('ActualText')))
        .map(() => 'a figure without text'),
  },
  {
    id: '7.4.2-1',
    asks: 'the first heading is H1, and no level is skipped on the way down',
    faultsIn: (s) => {
      let last = 0;
      return all(s).flatMap(({ role }) => {
        const level = Number(/^H([1-6])$/.exec(role)?.[1] ?? 0);
        if (level === 0) return [];
        const skipped = level > last + 1;
        last = level;
        return fault(skipped, `${role} comes too early`);
      });
    },
  },
  {
    id: '7.4.4-2',
    asks: 'headings are numbered or not, never both',
    faultsIn: (s) =>
      fault(ofRole(s, 'H').length > 0 && all(s).some(({ role }) => /^H[1-6]$/.test(role)), 'H beside H1'),
  },
  {
    id: '7.5-1',
    asks: 'a header cell says what it heads',
    faultsIn: (s) =>
      ofRole(s, 'TH')
        .filter(
          (cell) =>
            !['Row', 'Column', 'Both'].includes(nameOf(attributesOf(s, cell, 'Table').get('Scope')) ?? ''),
        )
        .map(() => 'a header cell without scope'),
  },
  {
    id: '7.16-1',
    asks: 'the file is not locked against assistive technology',
    faultsIn: ({ file }) => fault(file.trailer.has('Encrypt'), 'encrypted'),
  },
  {
    id: '7.18.1-2',
    asks: 'an annotation other than a link has an alternative',
    faultsIn: (s) =>
      annotationsOf(s)
        .filter(({ dict }) => nameOf(dict.get('Subtype')) !== 'Link' && !textOf(dict.get('Contents')))
        .map(({ dict }) => `${nameOf(dict.get('Subtype'))} without words`),
  },
  {
    id: '7.18.3-1',
    asks: 'on a page with annotations the tab key follows the structure',
    faultsIn: ({ file, pages }) =>
      pages
        .filter(({ page }) => listOf(file, page.get('Annots')).length > 0 && nameOf(page.get('Tabs')) !== 'S')
        .map(() => 'a page without Tabs S'),
  },
  {
    id: '7.18.5-1',
    asks: 'a link stands in a Link element',
    faultsIn: (s) => {
      const tagged = new Set(
        ofRole(s, 'Link').flatMap(({ kids }) =>
          kids.flatMap((kid) => (kid.kind === 'annotation' ? [kid.ref] : [])),
        ),
      );
      return annotationsOf(s)
        .filter(({ dict, ref }) => nameOf(dict.get('Subtype')) === 'Link' && !tagged.has(ref))
        .map(() => 'a link outside the tree');
    },
  },
  {
    id: '7.18.5-2',
    asks: 'a link says in words where it leads',
    faultsIn: (s) =>
      annotationsOf(s)
        .filter(({ dict }) => nameOf(dict.get('Subtype')) === 'Link' && !textOf(dict.get('Contents')))
        .map(() => 'a link without words'),
  },
  {
    id: '7.21.3.2-1',
    asks: 'a TrueType font maps its codes to glyphs',
    faultsIn: (s) =>
      fontsOf(s)
        .map((font) => descendantOf(s, font))
        .filter((font) => nameOf(font.get('Subtype')) === 'CIDFontType2' && !font.has('CIDToGIDMap'))
        .map(() => 'no CIDToGIDMap'),
  },
  {
    id: '7.21.4.1-1',
    asks: 'every font is embedded',
    faultsIn: (s) =>
      fontsOf(s)
        .filter((font) => fontProgramOf(s, font) === null)
        .map((font) => `${nameOf(font.get('BaseFont'))} is not embedded`),
  },
  {
    id: '7.21.4.1-3',
    asks: 'every glyph shown is in the embedded font',
    faultsIn: (s) =>
      glyphsShown(s).flatMap(({ font, codes }) => {
        const program = readTrueType(fontProgramOf(s, font) ?? '');
        return codes
          .filter((code) => code >= (program?.glyphs ?? 0))
          .map((code) => `glyph ${code} is not there`);
      }),
  },
  {
    id: '7.21.5-1',
    asks: 'widths in the file are those of the font',
    faultsIn: (s) =>
      fontsOf(s).flatMap((font) => {
        const program = readTrueType(fontProgramOf(s, font) ?? '');
        const [, widths] = listOf(s.file, descendantOf(s, font).get('W'));
        return listOf(s.file, widths).flatMap((width, glyph) =>
          fault(
            typeof width === 'number' && Math.abs(width - (program?.widthOf(glyph) ?? NaN)) > 1,
            `glyph ${glyph} is ${String(width)} wide`,
          ),
        );
      }),
  },
  {
    id: '7.21.7-1',
    asks: 'every glyph shown stands for a character',
    faultsIn: (s) =>
      glyphsShown(s).flatMap(({ codes, name, page }) => {
        const map = fontMaps(s, page).get(name);
        return codes.filter((code) => !map?.get(code)).map((code) => `glyph ${code} stands for nothing`);
      }),
  },
  {
    id: '7.21.7-2',
    asks: 'no glyph stands for U+0000, U+FEFF or U+FFFE',
    faultsIn: (s) =>
      s.pages.flatMap(({ page }) =>
        [...fontMaps(s, page).values()].flatMap((map) =>
          [...map].filter(([, text]) => /[\u0000\ufeff\ufffe]/.test(text)).map(([code]) => `glyph ${code}`),
        ),
      ),
  },
  {
    id: '7.21.8-1',
    asks: 'no .notdef is shown',
    faultsIn: (s) =>
      glyphsShown(s)
        .filter(({ codes }) => codes.includes(0))
        .map(() => '.notdef is shown'),
  },
  { id: 'XML 1.0', asks: 'the metadata are well-formed XML', faultsIn: (s) => xmpOf(s).faults },
  {
    id: 'ISO 32000-1 14.7.4.4',
    asks: 'the parent tree leads from every mark to its element',
    faultsIn: (s) => {
      const nums = listOf(s.file, dictOf(s.file, s.root.get('ParentTree')).get('Nums'));
      const parents = new Map(
        nums.flatMap((key, at) => (at % 2 === 0 ? [[key, nums[at + 1]] as const] : [])),
      );
      return all(s).flatMap(({ kids, dict, role }) =>
        kids.flatMap((kid) => {
          if (kid.kind !== 'content') return [];
          const list = listOf(s.file, parents.get(s.pages[kid.page]?.page.get('StructParents') ?? null));
          return fault(
            dictOf(s.file, list[kid.mcid]) !== dict,
            `${role} is not the parent of its mark ${kid.mcid}`,
          );
        }),
      );
    },
  },
  {
    id: 'ISO 32000-1 table 37',
    asks: 'the root of the parent tree has no limits',
    faultsIn: (s) => fault(dictOf(s.file, s.root.get('ParentTree')).has('Limits'), 'a root with limits'),
  },
  {
    id: 'ISO 32000-1 14.8.5.4.3',
    asks: 'a figure has a bounding box',
    faultsIn: (s) =>
      ofRole(s, 'Figure')
        .filter((figure) => listOf(s.file, attributesOf(s, figure, 'Layout').get('BBox')).length !== 4)
        .map(() => 'a figure without a box'),
  },
  {
    id: 'order on the page',
    asks: 'what is read next stands below or to the right of what was read, as on the page',
    faultsIn: (s) => {
      const texts = textsByPlace(s);
      return texts.flatMap((next, at) => {
        const before = texts[at - 1];
        if (before?.page !== next.page) return [];
        const above = next.yPt < before.yPt - SAME_LINE_PT;
        const beside = Math.abs(next.yPt - before.yPt) <= SAME_LINE_PT;
        const back = above || (beside && next.xPt < before.xPt - SAME_LINE_PT);
        return fault(
          back && next.xPt < columnPt(before, next) + COLUMN_PT && !(beside && next.xPt > before.xPt),
          next.text,
        );
      });
    },
  },
  {
    id: 'list entries are whole',
    asks: 'every entry of a list has one label and one body',
    faultsIn: (s) =>
      ofRole(s, 'LI')
        .filter((entry) => kidRoles(entry).join(' ') !== 'Lbl LBody')
        .map((entry) => `an entry of ${kidRoles(entry).join(' ') || 'nothing'}`),
  },
  {
    id: 'tables compare',
    asks: 'a table has more than one row below its head',
    faultsIn: (s) =>
      ofRole(s, 'TBody')
        .filter((body) => elementsIn(body).length < 2)
        .map(() => 'a table of one row'),
  },
  {
    id: 'links have words',
    asks: 'a link holds the words one follows it by',
    faultsIn: (s) => {
      const texts = textsByMark(s);
      return ofRole(s, 'Link')
        .filter((link) => textIn(link, texts).trim() === '')
        .map(() => 'an empty link');
    },
  },
  {
    id: 'ISO 32000-1 8.10',
    asks: 'what is placed is a form with its bounds, which holds paths alone, or an image',
    faultsIn: (s) =>
      s.pages.flatMap(({ page, painted }) => {
        const known = dictOf(s.file, dictOf(s.file, page.get('Resources')).get('XObject'));
        return painted
          .filter(({ kind }) => kind === 'image')
          .flatMap(({ placed }) => {
            const form = resolved(s.file, known.get(placed));
            if (!isStream(form)) return [`${placed} is not in the file`];
            if (nameOf(form.dict.get('Subtype')) === 'Image') return [];
            const inside = paintedBy(form.data, new Map(), s.file);
            return [
              ...fault(listOf(s.file, form.dict.get('BBox')).length !== 4, `${placed} has no bounds`),
              ...fault(
                inside.some(({ kind, marks }) => kind !== 'path' || marks.length > 0),
                `${placed} holds more than paths`,
              ),
            ];
          });
      }),
  },
];

/** On one line, or one edge, within this, points: a small word beside a large one has its own baseline. */
const SAME_LINE_PT = 8;

/** Text this far to the right stands in a column of its own, points. */
const COLUMN_PT = 60;

interface Place {
  readonly page: number;
  readonly xPt: number;
  readonly yPt: number;
  readonly text: string;
  /** The row of a table that it stands in, and where that row begins; null outside of tables. */
  readonly row: { readonly element: Element; readonly xPt: number } | null;
}

/** Where the column begins that one leaves: of a row its first cell stands for it, for its last is far to the right. */
function columnPt(before: Place, next: Place): number {
  return before.row !== null && before.row.element !== next.row?.element ? before.row.xPt : before.xPt;
}

/** The first text of every element that holds text itself, in reading order. */
function textsByPlace(s: Structure): readonly Place[] {
  const firsts = new Map<string, { xPt: number; yPt: number }>();
  s.pages.forEach(({ painted }, page) => {
    for (const { kind, marks, at } of painted) {
      const key = `${page}/${marks.findLast(({ mcid }) => mcid !== null)?.mcid ?? ''}`;
      if (kind === 'text' && !firsts.has(key)) firsts.set(key, at);
    }
  });
  const texts = textsByMark(s);
  const read = (element: Element): readonly Place[] => {
    const { kids, role } = element;
    if (role === 'Figure') return [];
    const found = kids.flatMap((kid): readonly Place[] => {
      if (kid.kind === 'element') return read(kid.element);
      const key = kid.kind === 'content' ? `${kid.page}/${kid.mcid}` : '';
      const place = firsts.get(key);
      if (kid.kind !== 'content' || !place) return [];
      const text = `${role} ${(texts.get(key) ?? '').slice(0, 30)}`;
      return [{ page: kid.page, ...place, text, row: null }];
    });
    const [first] = found;
    if (role !== 'TR' || first === undefined) return found;
    return found.map((one) => ({ ...one, row: { element, xPt: first.xPt } }));
  };
  return s.top.flatMap(read);
}
