/** A clinic's own folder over the shipped library: what takes whose place, and what is refused. */
import { describe, expect, it } from 'vitest';
import { keyOf, layered } from '../../src/content/layers.ts';
import { liesOverShipped } from '../../src/content/over.ts';
import { problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from './sample.ts';

const HIDE = '---\nhide: yes\n---\n\nWe have no room for it.\n';
const BRIDGE = 'exercises/bridge.md';
const ONE_LEG = 'exercises/single-leg-bridge.md';

type Own = readonly (readonly [file: string, text: string])[];
const over = (...own: Own) =>
  readLibrary(
    filesWith(),
    own.map(([file, text]) => fileOf(file, text)),
  );
const said = (...own: Own) => over(...own).problems.map((problem) => problemText(problem, null));

describe('one folder', () => {
  it('is read as it stands, and nothing in it is anybody’s own', () => {
    const { library, problems } = readLibrary(filesWith());
    expect(problems).toEqual([]);
    expect(library?.origins.size).toBe(0);
  });

  it('lies over nothing when the other is empty', () => {
    expect(over().library).toEqual(readLibrary(filesWith()).library);
  });
});

describe('a folder over another', () => {
  it('replaces by id, wherever the file stands below its folder', () => {
    const text = spoilt(BRIDGE, 'title: Bridge from the floor', 'title: Our bridge');
    const { library, counts } = over(['exercises/ours/bridge.md', text]);
    expect(library?.exercises.get('bridge')?.title).toBe('Our bridge');
    expect(library?.origins).toEqual(new Map([['exercises/bridge', 'replaced']]));
    expect(counts).toEqual(readLibrary(filesWith()).counts);
  });

  it('adds what is new', () => {
    const { library } = over(['exercises/our-bridge.md', SAMPLE[BRIDGE]]);
    expect(library?.exercises.has('bridge')).toBe(true);
    expect(library?.exercises.has('our-bridge')).toBe(true);
    expect(library?.origins).toEqual(new Map([['exercises/our-bridge', 'added']]));
  });

  it('replaces the clinic file', () => {
    const text = spoilt('clinic.md', 'paper: A4', 'paper: Letter');
    expect(over(['clinic.md', text]).library?.clinic.paper).toBe('Letter');
  });

  it('is another library, and with the same text again the same', () => {
    const version = (...own: Own) => over(...own).library?.version;
    const text = spoilt(BRIDGE, 'title: Bridge from the floor', 'title: Our bridge');
    expect(version([BRIDGE, text])).not.toBe(version());
    expect(version([BRIDGE, SAMPLE[BRIDGE]])).toBe(version());
    expect(version([ONE_LEG, HIDE])).not.toBe(version());
  });

  it('names its own file in a Problem', () => {
    const text = spoilt(BRIDGE, 'kind: isotonic', 'kind: isotonik');
    const [problem] = over([BRIDGE, text]).problems;
    expect(problem).toMatchObject({ file: BRIDGE, code: 'wrong-word' });
  });

  it('lies over two as over one that was laid over another', () => {
    const first = spoilt(BRIDGE, 'title: Bridge from the floor', 'title: First');
    const second = spoilt(BRIDGE, 'title: Bridge from the floor', 'title: Second');
    const { library } = readLibrary(filesWith(), [fileOf(BRIDGE, first)], [fileOf(BRIDGE, second)]);
    expect(library?.exercises.get('bridge')?.title).toBe('Second');
  });

  it('may bring back what a folder below it hides', () => {
    const { library } = readLibrary(filesWith(), [fileOf(ONE_LEG, HIDE)], [fileOf(ONE_LEG, SAMPLE[ONE_LEG])]);
    expect(library?.exercises.has('single-leg-bridge')).toBe(true);
    expect(library?.origins.get('exercises/single-leg-bridge')).toBe('replaced');
  });
});

describe('a hidden card', () => {
  it('is gone, from slots and from the neighbours of others too', () => {
    const { library, problems } = over([ONE_LEG, HIDE]);
    expect(problems).toEqual([]);
    expect(library?.exercises.has('single-leg-bridge')).toBe(false);
    expect(library?.exercises.get('bridge')?.harder).toBeNull();
    const slots = [...(library?.protocols.values() ?? [])].flatMap(({ stages }) =>
      stages.flatMap((stage) => stage.slots.flatMap(({ cards }) => cards)),
    );
    expect(slots).not.toContain('single-leg-bridge');
  });

  it('is missed by a consult that names it', () => {
    const consult = filesWith().filter(({ file }) => file.startsWith('consults/'));
    const { known } = over([ONE_LEG, HIDE]);
    const named = consult.map(({ file, bytes }) =>
      fileOf(file, new TextDecoder().decode(bytes).replaceAll(/card: bridge\b/g, 'card: single-leg-bridge')),
    );
    expect(readConsults(named, known).problems.map(({ code }) => code)).toContain('no-such-card');
  });

  it('cannot be the last one of a slot that must be filled, nor the morning check', () => {
    expect(said([BRIDGE, HIDE], [ONE_LEG, HIDE])).toMatchInlineSnapshot(`
      [
        "exercises/bridge.md:1:1: error does-not-fit hide is said of the card of the morning check of hamstring; must be said of a card that nothing needed hangs on.
      Fix: delete this file, replace the card with one of your own, or lay a protocols/hamstring.md of your own over the shipped one.",
        "exercises/bridge.md:1:1: error does-not-fit hide is said of the last card of the slot "main" in "hold" of hamstring; must be said of a card that nothing needed hangs on.
      Fix: delete this file, replace the card with one of your own, or lay a protocols/hamstring.md of your own over the shipped one.",
        "exercises/single-leg-bridge.md:1:1: error does-not-fit hide is said of the last card of the slot "main" in "keep" of hamstring; must be said of a card that nothing needed hangs on.
      Fix: delete this file, replace the card with one of your own, or lay a protocols/hamstring.md of your own over the shipped one.",
      ]
    `);
  });
});

describe('hide', () => {
  it('has nothing to hide in the lowest folder', () => {
    const { problems } = readLibrary(filesWith({ 'exercises/bound.md': HIDE }));
    expect(problems.map((problem) => problemText(problem, null))).toMatchInlineSnapshot(`
      [
        "exercises/bound.md:2:7: error does-not-fit hide is in a file with nothing of its name below; must be in a file named like a card, protocol or advice card of the library below.
      Fix: delete this file.",
      ]
    `);
  });

  it('names the card that was meant', () => {
    expect(said(['exercises/bridg.md', HIDE])).toMatchInlineSnapshot(`
      [
        "exercises/bridg.md:2:7: error does-not-fit hide is in a file with nothing of its name below; must be in a file named like a card, protocol or advice card of the library below.
      Fix: rename it to exercises/bridge.md, or delete it.",
      ]
    `);
  });

  it('stands alone', () => {
    expect(said([ONE_LEG, '---\nhide: yes\ntitle: No\n---\n'])).toMatchInlineSnapshot(`
      [
        "exercises/single-leg-bridge.md:2:7: error does-not-fit hide is beside title; must be the only key of its file.
      Fix: take the other keys out to hide the file below, or take hide out to replace it.",
      ]
    `);
  });

  it('is a yes', () => {
    expect(said([ONE_LEG, '---\nhide: no\n---\n'])).toMatchInlineSnapshot(`
      [
        "exercises/single-leg-bridge.md:2:7: error does-not-fit hide is no; must be yes.
      Fix: write hide: yes, or delete this file.",
      ]
    `);
    expect(said([ONE_LEG, '---\nhide: [yes]\n---\n'])).toHaveLength(1);
  });

  it('cannot take the clinic file away', () => {
    expect(said(['clinic.md', HIDE]).join()).toContain('clinic.md:2');
  });
});

describe('over: shipped', () => {
  const says = (line: string) =>
    liesOverShipped([fileOf('clinic.md', SAMPLE['clinic.md'].replace('---\n', `---\n${line}\n`))]);

  it.each([
    ['over: shipped', true],
    ["over: 'shipped' # ours", true],
    ['over: shipped\r', true],
    ['over: shiped', false],
    ['  over: shipped', false],
    ['paper: over: shipped', false],
    ['', false],
  ])('%j says so: %s', (line, isSaid) => {
    expect(says(line)).toBe(isSaid);
  });

  it('is said by clinic.md alone', () => {
    expect(liesOverShipped([fileOf('exercises/clinic.md', '---\nover: shipped\n---\n')])).toBe(false);
    expect(liesOverShipped([])).toBe(false);
  });
});

describe('where a file stands', () => {
  it.each([
    ['exercises/bridge.md', 'exercises/bridge'],
    ['exercises/deep/Bridge.md', 'exercises/bridge'],
    ['advice/bridge.md', 'advice/bridge'],
    ['exercises/bridge.jpg', 'exercises/bridge.jpg'],
    ['clinic.md', 'clinic.md'],
    ['README.md', 'README.md'],
  ])('%s is %s to the others', (file, key) => {
    expect(keyOf(file)).toBe(key);
  });

  it('keeps twins of one folder, so that they are refused', () => {
    const twins = [fileOf('exercises/a.md', 'x'), fileOf('exercises/b/a.md', 'x')];
    expect(layered([[], twins]).files).toHaveLength(2);
  });
});
