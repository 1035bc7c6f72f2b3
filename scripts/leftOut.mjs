// Parts of packages that no leaflet asks for, left out of the program and of the desk's scripts. That what is drawn without
// them is the same, byte for byte, is a law of both; where a package has changed and a part is not where it was, bundling
// throws.
import ts from 'typescript';

/** Reading of other files than TrueType, letters that no face of ours has, and glyphs that vary, are coloured or are PostScript. */
export const FONTKIT = {
  // Every script is shaped as Latin is.
  instead: {
    $102b6fe50f1d50b4$var$SHAPERS: '{}',
    $e449ad78d50845fe$var$MAC_ENCODINGS: '{}',
    // Layout by Apple's tables.
    $3b6302b64eccc32c$var$features: '{ characterAlternatives: {} }',
    $3b6302b64eccc32c$var$OTMapping: '{}',
    $55f71433a605c87d$export$2e2bcd8739ae039: '{ getStateMachine() {} }',
    $ff5ce077dae0f144$export$2e2bcd8739ae039: '{ glyphsForValue() {} }',
  },
  // WOFF, WOFF2, collections, and the fonts of old Macs.
  formats: [
    '$760785214b9fc52c$export$2e2bcd8739ae039',
    '$21ee218f84ac7f32$export$2e2bcd8739ae039',
    '$cd5853a56c68fec7$export$2e2bcd8739ae039',
    '$05f49f930186144e$export$2e2bcd8739ae039',
  ],
  gone: [
    // Shapers: Arabic, Indic, of all other scripts, Hangul.
    '$764eb544bbe1ccf0$export$2e2bcd8739ae039',
    '$764eb544bbe1ccf0$var$trie',
    '$7826f90f6f0cecc9$export$2e2bcd8739ae039',
    '$7826f90f6f0cecc9$var$trie',
    '$7826f90f6f0cecc9$var$stateMachine',
    '$7826f90f6f0cecc9$var$setupSyllables',
    '$7826f90f6f0cecc9$var$initialReordering',
    '$7826f90f6f0cecc9$var$finalReordering',
    '$4b0735ca6c692ea5$exports',
    '$90a9d3398ee54fe5$export$e99d119da76a0fc5',
    '$7ab494fe977143c6$export$2e2bcd8739ae039',
    '$7ab494fe977143c6$var$trie',
    '$7ab494fe977143c6$var$stateMachine',
    '$7ab494fe977143c6$var$reorder',
    '$aa333a9607471296$exports',
    '$e1c6bbc8cb416f8c$export$2e2bcd8739ae039',
    '$e1c6bbc8cb416f8c$var$decompose',
    '$e1c6bbc8cb416f8c$var$compose',
    '$ba6dd74203be8728$export$2e2bcd8739ae039',
    // PostScript outlines.
    '$229224aec43783c5$export$2e2bcd8739ae039',
    '$bc0433d9b7e41f5f$export$dee0027060fa13bd',
    '$bc0433d9b7e41f5f$export$4f58f497e14a53c3',
    '$ef658f5c9a1488b2$export$c33b50336c234f16',
    '$ef658f5c9a1488b2$export$3ed0f9e1fee8d489',
    '$ef658f5c9a1488b2$export$dc28be11139d4120',
    '$62cc5109c6101893$export$2e2bcd8739ae039',
    '$001d739428a71d5a$export$2e2bcd8739ae039',
    // Variations, and pictures and colours in place of outlines.
    '$0bb840cac04e911b$export$2e2bcd8739ae039',
    '$25d8f049c222084c$export$2e2bcd8739ae039',
    '$0d411f0165859681$export$2e2bcd8739ae039',
  ],
};

/** Of pdfkit: encryption, forms, attachments, tables, gradients, its own text, paths and colours, other faces and pictures. */
export const PDFKIT = {
  instead: { K512: '[[], []]' },
  gone: [
    'SHA256',
    'RIPEMD160',
    'SHA1',
    'SHA512',
    'SHA384',
    'SHA512_224',
    'SHA512_256',
    'SHA256_K',
    'unassigned_code_points',
    'bidirectional_l',
    'bidirectional_r_al',
    'non_ASCII_space_characters',
    'saslprep',
    'PDFGradient$1',
    'PDFLinearGradient$1',
    'PDFRadialGradient$1',
    'PDFTilingPattern$1',
    'namedColors',
    'SVGPath',
    'AFMFont',
    'StandardFont',
    'characters',
    'JPEG',
    'parseExifOrientation',
    'LineWrapper',
    'PDFTable',
    'PDFA',
  ],
  kept: {
    PDFSecurity: ['generateFileID', 'create'],
    ColorMixin: ['initColor'],
    VectorMixin: ['initVector', 'save', 'restore', 'transform'],
    TextMixin: ['initText', '_line'],
    AcroFormMixin: ['endAcroForm'],
    AttachmentsMixin: [],
    TableMixin: ['initTables'],
  },
};

/**
 * A module without these of its declarations. `gone`: classes are left empty, functions throw, of all else null is left;
 * `formats`: classes that answer to no file; `kept`: the members that a class or an object keeps; `instead`: other values.
 */
export function withoutParts(text, { gone = [], formats = [], kept = {}, instead = {} }) {
  const source = ts.createSourceFile('package.mjs', text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const wanted = new Set([...gone, ...formats, ...Object.keys(kept), ...Object.keys(instead)]);
  const cuts = source.statements.flatMap(declared).flatMap((one) => {
    const name = one.name.getText(source);
    if (!wanted.delete(name)) return [];
    if (name in kept)
      return members(one)
        .filter((member) => !kept[name].includes(nameOf(member, source)))
        .map(cut);
    return [replaced(one, formats.includes(name) ? '{ static probe() { return false; } }' : instead[name])];
  });
  if (wanted.size > 0) throw new Error(`not where it was: ${[...wanted].join(', ')}`);
  return cuts
    .sort((a, b) => b.from - a.from)
    .reduce((so, { from, to, by }) => so.slice(0, from) + by + so.slice(to), text);
}

function declared(statement) {
  if (ts.isVariableStatement(statement)) return statement.declarationList.declarations;
  return statement.name === undefined ? [] : [statement];
}

/** Of a class or of the object that a variable is. */
function members(one) {
  return one.members ?? one.initializer?.members ?? one.initializer?.properties ?? [];
}

function nameOf(member, source) {
  return member.name?.getText(source) ?? '';
}

// With the comma behind it, where it stands in an object.
function cut(member) {
  const comma = member.parent.properties !== undefined && member.parent.properties.at(-1) !== member;
  return { from: member.getFullStart(), to: member.end + (comma ? 1 : 0), by: '' };
}

function replaced(one, by) {
  if (ts.isFunctionDeclaration(one)) {
    const { pos, end } = one.body;
    return { from: pos, to: end, by: " { throw new Error('no leaflet asks for this'); }" };
  }
  if (!ts.isClassDeclaration(one))
    return { from: one.initializer.getStart(), to: one.end, by: valueOf(one.initializer, by) };
  return { from: one.name.end, to: one.end, by: ` ${by ?? '{}'}` };
}

function valueOf(initializer, by) {
  return by ?? (ts.isClassExpression(initializer) ? 'class {}' : 'null');
}
