/** Front matter that is not YAML as we read it: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { filesWith, SAMPLE } from '../content/sample.ts';
import { BRIDGE, OTTER, printed, printedWith } from './printed.ts';

describe('no-front-matter', () => {
  it('misses the first line of hyphens', () => {
    expect(printed(filesWith({ 'advice/sitting.md': '# Sitting\n\nSit less.\n' }))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error no-front-matter found no front matter; must be a first line ---, the keys, and a closing line ---.
          # Sitting
          ^
      Fix: put the keys between two lines of three hyphens at the top of the file."
    `);
  });

  it('misses the closing line of hyphens', () => {
    const open = SAMPLE['advice/sitting.md'].replace('\n---\n', '\n');
    expect(printed(filesWith({ 'advice/sitting.md': open }))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error no-front-matter found front matter that does not end; must be a first line ---, the keys, and a closing line ---.
          ---
          ^
      Fix: put the keys between two lines of three hyphens at the top of the file."
    `);
  });

  it('takes an empty file for one without', () => {
    expect(printed(filesWith({ 'advice/sitting.md': '' }))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error no-front-matter found no front matter; must be a first line ---, the keys, and a closing line ---.
      Fix: put the keys between two lines of three hyphens at the top of the file."
    `);
  });
});

describe('yaml', () => {
  it('explains a colon in a text', () => {
    expect(printedWith(OTTER, 'clinician: M. Vale', 'clinician: Vale: M.')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:12: error yaml found a second key in one line, or a line too far in; must be keys and values that YAML can read.
          clinician: Vale: M.
                     ^
      Fix: put a text that holds a colon, or begins with a sign, into double quotes; begin keys of one level in the same column."
    `);
  });

  it('explains a tab as indent', () => {
    expect(printedWith(OTTER, '  saddleNumbness', '\tsaddleNumbness')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:19:1: error yaml found a tab at the beginning of a line; must be keys and values that YAML can read.
              saddleNumbness: no
          ^
      Fix: indent with spaces."
    `);
  });

  it('explains a bracket that does not close', () => {
    expect(printedWith(OTTER, 'days: [mon, wed, fri]', 'days: [mon, wed, fri')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:38:1: error yaml found no ] before this; must be keys and values that YAML can read.
          minutesPerDay: 30
          ^
      Fix: close the bracket opened above."
    `);
  });

  it('refuses a tag', () => {
    expect(printedWith(OTTER, 'clinician: M. Vale', 'clinician: !!str 42')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:18: error yaml clinician is marked with the tag !!str; must be without a tag.
          clinician: !!str 42
                           ^
      Fix: take the tag out; a text that begins with ! needs quotes."
    `);
  });

  it('refuses a second document', () => {
    expect(printedWith(OTTER, 'revision: 1', '...\nrevision: 1')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:1: error yaml found front matter that ends early; must be keys and values that YAML can read.
          revision: 1
          ^
      Fix: take out the line of three dots or hyphens."
    `);
  });

  it('refuses a key that is a list', () => {
    expect(printedWith(OTTER, 'revision: 1', 'revision: 1\n? [a, b]\n: 1')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:3: error yaml found a key that is not a word; must be a word before the colon.
          ? [a, b]
            ^
      Fix: write a plain key; a text that begins with [, {, ? or * needs quotes."
    `);
  });

  it('refuses brackets nested without end before it parses them', () => {
    expect(printedWith(OTTER, 'cannotDo: []', `cannotDo: ${'['.repeat(60_000)}`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:43: error yaml found keys or lists nested very deeply; must be at most a few levels deep.
          …: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[…
                                             ^
      Fix: look for brackets that do not close, or for a line indented far too much."
    `);
  });
});

describe('alias', () => {
  const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]', 'b: &b [*a, *a]'].join('\n');

  it('refuses anchors and aliases, so that nothing can grow', () => {
    expect(printedWith(OTTER, 'revision: 1', `revision: 1\n${bomb}`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:7: error alias a is marked &a; must be written out; anchors (&) and aliases (*) are not read.
          a: &a [x, x, x, x, x, x, x, x, x]
                ^
      Fix: write the value itself in each place; a text that begins with & or * needs quotes.

      consults/otter-r1.md:5:7: error alias b is marked &b; must be written out; anchors (&) and aliases (*) are not read.
          b: &b [*a, *a]
                ^
      Fix: write the value itself in each place; a text that begins with & or * needs quotes.

      consults/otter-r1.md:5:8: error alias b[0] is *a; must be written out; anchors (&) and aliases (*) are not read.
          b: &b [*a, *a]
                 ^
      Fix: write the value itself in each place; a text that begins with & or * needs quotes.

      consults/otter-r1.md:5:12: error alias b[1] is *a; must be written out; anchors (&) and aliases (*) are not read.
          b: &b [*a, *a]
                     ^
      Fix: write the value itself in each place; a text that begins with & or * needs quotes."
    `);
  });
});

describe('duplicate-key', () => {
  it('shows the second', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'massKg: 68\nmassKg: 86')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:13:1: error duplicate-key massKg is written a second time; must be written once.
          massKg: 86
          ^
      Fix: keep one of the two and take the other out."
    `);
  });

  it('sees it in a group, and does not tell 1 from "1"', () => {
    expect(printedWith(BRIDGE, 'hold: 0,', 'hold: 0, "hold": 2,')).toMatchInlineSnapshot(`
      "exercises/bridge.md:14:26: error duplicate-key tempo.hold is written a second time; must be written once.
          tempo: { go: 3, hold: 0, "hold": 2, back: 3 }
                                   ^
      Fix: keep one of the two and take the other out."
    `);
  });
});
