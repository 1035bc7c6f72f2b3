/** Files that are no text, no card, or not where they belong: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import type { SourceFile } from '../../src/content/source.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from '../content/sample.ts';
import { BRIDGE, OTTER, printed, printedWith } from './printed.ts';

function bytesOf(file: string, bytes: readonly number[]): SourceFile[] {
  return [...filesWith({ [file]: null }), { file, bytes: Uint8Array.from(bytes), link: 'no' }];
}

function utf16(text: string): number[] {
  return [0xff, 0xfe, ...Buffer.from(text, 'utf16le')];
}

describe('the sample itself', () => {
  it('has no Problem', () => {
    expect(printed(filesWith())).toBe('');
  });
});

describe('not-utf8', () => {
  it('refuses UTF-16', () => {
    expect(printed(bytesOf('advice/sitting.md', utf16('---')))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error not-utf8 found UTF-16; must be text in UTF-8.
          ��-<U+0000>-<U+0000>-<U+0000>
          ^
      Fix: save the file again with the encoding UTF-8."
    `);
  });

  it('shows where a byte of an old encoding stands', () => {
    const latin1 = [...Buffer.from(SAMPLE['advice/sitting.md'].replace('Sitting', 'Café'), 'latin1')];
    expect(printed(bytesOf('advice/sitting.md', latin1))).toMatchInlineSnapshot(`
      "advice/sitting.md:2:11: error not-utf8 found a byte (E9) that is not UTF-8; must be text in UTF-8.
          title: Caf�
                    ^
      Fix: save the file again with the encoding UTF-8."
    `);
  });
});

describe('bad-character', () => {
  it('refuses a mark that turns the direction of text, and does not print it', () => {
    expect(printedWith(OTTER, 'clinician: M. Vale', 'clinician: M. \u202eelaV')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:15: error bad-character found U+202E, which turns the direction of text; must be text without control characters and without marks that turn its direction.
          clinician: M. <U+202E>elaV
                        ^
      Fix: delete it, or write the text again by hand."
    `);
  });

  it('refuses one written as an escape', () => {
    expect(printedWith(OTTER, 'clinician: M. Vale', 'clinician: "M. \\u202eelaV"')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:12: error bad-character clinician is text with U+202E, which turns the direction of text; must be text without control characters and without marks that turn its direction.
          clinician: "M. \\u202eelaV"
                     ^
      Fix: delete it, or write the text again by hand."
    `);
  });

  it('refuses one written as an entity in the body', () => {
    expect(printedWith(BRIDGE, 'both feet flat', 'both &#x202E;feet flat')).toMatchInlineSnapshot(`
      "exercises/bridge.md:25:28: error bad-character found U+202E, which turns the direction of text; must be text without control characters and without marks that turn its direction.
          Lie on your back with both &#x202E;feet flat.
                                     ^
      Fix: delete it, or write the text again by hand."
    `);
  });

  it('refuses a control character', () => {
    expect(printedWith(BRIDGE, 'title: Bridge', 'title:\u0007 Bridge')).toMatchInlineSnapshot(`
      "exercises/bridge.md:2:7: error bad-character found U+0007, a control character; must be text without control characters and without marks that turn its direction.
          title:<U+0007> Bridge from the floor
                ^
      Fix: delete it, or write the text again by hand."
    `);
  });
});

describe('too-large', () => {
  it('refuses more than 256 kB', () => {
    const long = `${SAMPLE['advice/sitting.md']}${'Stand up. '.repeat(27_000)}`;
    expect(printed(filesWith({ 'advice/sitting.md': long }))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error too-large found 264 kB; must be at most 256 kB.
          ---
          ^
      Fix: shorten the file; a card or a consult needs a few kB."
    `);
  });
});

describe('link-out', () => {
  it('refuses a symbolic link that leads out of the folder', () => {
    const link: SourceFile = { file: 'advice/outside.md', bytes: new Uint8Array(), link: 'outside' };
    expect(printed([...filesWith(), link])).toMatchInlineSnapshot(`
      "advice/outside.md:1:1: error link-out found a link that leads out of the folder or to nothing; must be a file of its own, or a link that stays inside.
      Fix: copy the file here in place of the link."
    `);
  });

  it('says no more of links to folders', () => {
    const link = (file: string): SourceFile => ({ file, bytes: new Uint8Array(), link: 'outside' });
    const text = printed([...filesWith(), link('advice/one/'), link('advice/two/')]);
    expect(text.match(/error \S+/g)).toEqual(['error link-out', 'error link-out']);
  });

  it('reads a link that stays inside', () => {
    const link: SourceFile = { ...fileOf('advice/inside.md', SAMPLE['advice/sitting.md']), link: 'inside' };
    expect(printed([...filesWith(), link])).toBe('');
  });
});

describe('cannot-read', () => {
  it('hands on what the system says, and reads the others', () => {
    const closed: SourceFile = {
      file: 'consults/wren-r1.md',
      bytes: new Uint8Array(),
      link: 'no',
      closed: 'closed to the reader (EACCES)',
    };
    expect(printed([...filesWith(), closed])).toMatchInlineSnapshot(`
      "consults/wren-r1.md:1:1: error cannot-read found closed to the reader (EACCES); must be a file that may be read.
      Fix: give yourself leave to read it, or copy it here again."
    `);
  });
});

describe('wrong-file-name', () => {
  it('asks for an id', () => {
    expect(printed(filesWith({ 'advice/Why it Hurts.md': SAMPLE['advice/sitting.md'] })))
      .toMatchInlineSnapshot(`
      "advice/Why it Hurts.md:1:1: error wrong-file-name found a file called Why it Hurts.md; must be called by an id and .md: small letters, digits and hyphens, at most 64.
          ---
          ^
      Fix: rename it to why-it-hurts.md."
    `);
  });

  it('refuses names that are devices on Windows', () => {
    expect(printed(filesWith({ 'advice/con.md': SAMPLE['advice/sitting.md'] }))).toMatchInlineSnapshot(`
      "advice/con.md:1:1: error wrong-file-name found a file called con.md; must be called by another id: con is a device on Windows.
          ---
          ^
      Fix: rename it, or move it out of this folder."
    `);
  });

  it('sees a consult saved as text', () => {
    expect(printed(filesWith({ 'consults/otter-r2.md.txt': SAMPLE[OTTER] }))).toMatchInlineSnapshot(`
      "consults/otter-r2.md.txt:1:1: error wrong-file-name found a file called otter-r2.md.txt; must be called by alias and revision, ending in .md.
          ---
          ^
      Fix: rename it to otter-r2.md."
    `);
  });

  it('sees a misspelt folder', () => {
    expect(printed(filesWith({ 'advices/flare.md': SAMPLE['advice/sitting.md'] }))).toMatchInlineSnapshot(`
      "advices/flare.md:1:1: error wrong-file-name found a folder called advices; must be called advice.
          ---
          ^
      Fix: rename the folder to advice."
    `);
  });

  it('misses the clinic file, and finds the one that was meant', () => {
    expect(printed(filesWith({ 'clinic.md': null, 'clinics.md': SAMPLE['clinic.md'] })))
      .toMatchInlineSnapshot(`
      "clinic.md:1:1: error wrong-file-name found no clinic.md; must be there, with the clinic's name and the emergency wording.
      Fix: rename clinics.md to clinic.md."
    `);
  });
});

describe('duplicate-id', () => {
  it('refuses two files of one id in two folders', () => {
    const again = spoilt('advice/sitting.md', '../clinic.md', '../../clinic.md');
    expect(printed(filesWith({ 'advice/old/sitting.md': again }))).toMatchInlineSnapshot(`
      "advice/sitting.md:1:1: error duplicate-id found the id of advice/old/sitting.md again; must be the only file of its id, in whatever folder and case.
          ---
          ^
      Fix: give one of the two files another name."
    `);
  });

  it('refuses two files of one id in other case', () => {
    expect(printed(filesWith({ 'advice/Sitting.md': SAMPLE['advice/sitting.md'] }))).toMatchInlineSnapshot(`
      "advice/Sitting.md:1:1: error wrong-file-name found a file called Sitting.md; must be called by an id and .md: small letters, digits and hyphens, at most 64.
          ---
          ^
      Fix: rename it to sitting.md.

      advice/sitting.md:1:1: error duplicate-id found the id of advice/Sitting.md again; must be the only file of its id, in whatever folder and case.
          ---
          ^
      Fix: give one of the two files another name."
    `);
  });

  it('refuses two consults of one alias and revision', () => {
    expect(printed(filesWith({ 'consults/second.md': SAMPLE[OTTER] }))).toMatchInlineSnapshot(`
      "consults/second.md:3:11: error duplicate-id revision is 1 of otter again, after consults/otter-r1.md; must be the only one of its alias.
          revision: 1
                    ^
      Fix: give the newer file the next revision."
    `);
  });
});
