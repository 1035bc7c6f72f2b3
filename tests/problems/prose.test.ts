/** Bodies with more than paragraphs, strong, emphasis, links and lists: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { BRIDGE, printedWith, OTTER } from './printed.ts';

const printedBody = (by: string): string => printedWith(BRIDGE, 'Lie on your back with both feet flat.', by);

describe('prose', () => {
  it.each([
    [
      'code',
      'Lie on `your` back.',
      `exercises/bridge.md:25:8: error prose found code; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    Lie on \`your\` back.
           ^
Fix: take the backticks out.`,
    ],
    [
      'an image',
      'Lie down.\nSee *here*, **there** and ![a bridge](bridge.png).',
      `exercises/bridge.md:26:27: error prose found an image; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    See *here*, **there** and ![a bridge](bridge.png).
                              ^
Fix: take it out; figures are drawn from the pose, and a card names its photos under photos.`,
    ],
    [
      'HTML',
      'Lie down.<br>Rest.',
      `exercises/bridge.md:25:10: error prose found HTML; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    Lie down.<br>Rest.
             ^
Fix: write it without tags; for a plain < put a space after it.`,
    ],
    [
      'text struck through',
      'Lie ~~down~~ flat.',
      `exercises/bridge.md:25:5: error prose found text struck through; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    Lie ~~down~~ flat.
        ^
Fix: take the text out.`,
    ],
    [
      'a forced line break',
      'Lie down.\\\nRest.',
      `exercises/bridge.md:25:10: error prose found a forced line break; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    Lie down.\\
             ^
Fix: take out the backslash or the two spaces at the end of the line.`,
    ],
    [
      'a block of code',
      'Lie.\n\n```\ndown\n```',
      `exercises/bridge.md:27:1: error prose found a block of code; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    \`\`\`
    ^
Fix: write it as a paragraph.`,
    ],
    [
      'a line indented by four spaces',
      'Lie.\n\n    down',
      `exercises/bridge.md:27:5: error prose found a line indented by four spaces or more; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
        down
        ^
Fix: begin the line at the margin, or two spaces in for a second-level list.`,
    ],
    [
      'a quotation',
      '> Lie down.',
      `exercises/bridge.md:25:1: error prose found a quotation; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    > Lie down.
    ^
Fix: take out the > at the beginning of the line.`,
    ],
    [
      'a rule across the page',
      'Lie.\n\n***',
      `exercises/bridge.md:27:1: error prose found a rule across the page; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    ***
    ^
Fix: take it out.`,
    ],
    [
      'a table',
      '| Lie | Down |\n|---|---|\n| 1 | 2 |',
      `exercises/bridge.md:25:1: error prose found a table; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    | Lie | Down |
    ^
Fix: write it as a list.`,
    ],
    [
      'a link target on a line of its own',
      '[lie]: https://lie.example',
      `exercises/bridge.md:25:1: error prose found a link target on a line of its own; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    [lie]: https://lie.example
    ^
Fix: put the target behind the words: [words](https://…)`,
    ],
    [
      'a list of a third level',
      '- lie\n  - down\n    - flat',
      `exercises/bridge.md:27:5: error prose found a list of a third level; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
        - flat
        ^
Fix: make it a list of two levels.`,
    ],
    [
      'a list that begins with 3',
      '3. lie\n4. down',
      `exercises/bridge.md:25:1: error prose found a list that begins with 3; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    3. lie
    ^
Fix: begin it with 1.`,
    ],
    [
      'a list entry without words',
      '- lie\n-\n- down',
      `exercises/bridge.md:26:1: error prose found a list entry without words; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    -
    ^
Fix: write the words, or take the entry out.`,
    ],
    [
      'a second paragraph in a list entry',
      '- lie\n\n  down',
      `exercises/bridge.md:27:3: error prose found a second paragraph in a list entry; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
      down
      ^
Fix: join the two, or make it an entry of its own.`,
    ],
    [
      'a second list in a list entry',
      '- lie\n  - down\n\n  1. flat',
      `exercises/bridge.md:28:3: error prose found a second list in a list entry; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
      1. flat
      ^
Fix: join the two lists.`,
    ],
    [
      'a list in the line of another',
      '- - lie',
      `exercises/bridge.md:25:1: error prose found a list in the line of another; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    - - lie
    ^
Fix: write the words of the entry first.`,
    ],
    [
      'a block of code in a list',
      '- lie\n\n  ```\n  down\n  ```',
      `exercises/bridge.md:27:3: error prose found a block of code; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
      \`\`\`
      ^
Fix: write it as a paragraph.`,
    ],
    [
      'a heading in a list',
      '- ## Lie',
      `exercises/bridge.md:25:1: error prose found a heading inside a list; must be paragraphs, **strong**, *emphasis*, links, and lists of at most two levels.
    - ## Lie
    ^
Fix: write it as a paragraph, **strong** if need be.`,
    ],
  ])('%s', (_, body, text) => {
    expect(printedBody(body)).toBe(text);
  });
});

describe('heading', () => {
  it('offers the nearest', () => {
    expect(printedWith(BRIDGE, '## Look out for', '## Lookout for')).toMatchInlineSnapshot(`
      "exercises/bridge.md:31:1: error heading found the heading “Lookout for”; must be one of the headings Set up, Move or Look out for, of level 2.
          ## Lookout for
          ^
      Fix: write ## Look out for."
    `);
  });

  it('knows level 2 only', () => {
    expect(printedWith(BRIDGE, '## Move', '### Move')).toMatchInlineSnapshot(`
      "exercises/bridge.md:27:1: error heading found the heading “Move” of level 3; must be one of the headings Set up, Move or Look out for, of level 2.
          ### Move
          ^
      Fix: write ## Move."
    `);
  });

  it('names the headings when none is near', () => {
    expect(printedWith(BRIDGE, '## Move', '## Move\n\nLift.\n\n## Why')).toMatchInlineSnapshot(`
      "exercises/bridge.md:31:1: error heading found the heading “Why”; must be one of the headings Set up, Move or Look out for, of level 2.
          ## Why
          ^
      Fix: move the text under one of the headings Set up, Move or Look out for."
    `);
  });

  it('misses one that must be there', () => {
    expect(printedWith(BRIDGE, '## Move\n', '')).toMatchInlineSnapshot(`
      "exercises/bridge.md:30:1: error heading found no heading “Move”; must be text under Set up, Move and Look out for, in this order.
          ## Look out for
          ^
      Fix: add ## Move with a few sentences under it."
    `);
  });

  it('misses the last at the end of the file', () => {
    expect(printedWith('advice/sitting.md', '## What to do\n\nStand up when it begins.\n', ''))
      .toMatchInlineSnapshot(`
      "advice/sitting.md:10:65: error heading found no heading “What to do”; must be text under In short and What to do, in this order.
          Sit less deep, and not for long. See the [clinic](../clinic.md).
                                                                          ^
      Fix: add ## What to do with a few sentences under it."
    `);
  });

  it('sees one twice', () => {
    expect(printedWith(BRIDGE, '## Move', '## Set up\n\nRest.\n\n## Move')).toMatchInlineSnapshot(`
      "exercises/bridge.md:27:1: error heading found the heading “Set up” a second time; must be in the order Set up, Move and Look out for, each once.
          ## Set up
          ^
      Fix: put the text under the first of the two."
    `);
  });

  it('sees one too late', () => {
    expect(printedWith('advice/sitting.md', '## In short', '## What to do\n\nRest.\n\n## In short'))
      .toMatchInlineSnapshot(`
      "advice/sitting.md:12:1: error heading found the heading “In short” too late; must be in the order In short and What to do, each once.
          ## In short
          ^
      Fix: move it up with its text.

      advice/sitting.md:16:1: error heading found the heading “What to do” a second time; must be in the order In short and What to do, each once.
          ## What to do
          ^
      Fix: put the text under the first of the two."
    `);
  });

  it('wants text under it', () => {
    expect(printedBody('')).toMatchInlineSnapshot(`
      "exercises/bridge.md:23:1: error heading found the heading “Set up” with nothing under it; must be a heading with text under it.
          ## Set up
          ^
      Fix: write a few sentences under it."
    `);
  });

  it('wants no text before the first', () => {
    expect(printedWith(BRIDGE, '## Set up', 'A good one.\n\n## Set up')).toMatchInlineSnapshot(`
      "exercises/bridge.md:23:1: error heading found text before the first heading; must be text under one of the headings Set up, Move or Look out for.
          A good one.
          ^
      Fix: put ## Set up before it."
    `);
  });

  it('is not asked for where there is only one: notes are notes', () => {
    expect(printedWith(OTTER, '## Notes\n\nSeen by video.', 'Seen by video.')).toBe('');
    expect(printedWith(OTTER, '## Notes\n\nSeen by video.', 'Seen `by` video.').match(/^\S+/)?.[0]).toBe(
      'consults/otter-r1.md:56:6:',
    );
    expect(printedWith(OTTER, '## Notes', 'Seen early.\n\n## Notes')).toContain('text before the first');
  });

  it('takes an underlined line for one, as CommonMark does', () => {
    expect(printedBody('Lie down\n---')).toMatchInlineSnapshot(`
      "exercises/bridge.md:23:1: error heading found the heading “Set up” with nothing under it; must be a heading with text under it.
          ## Set up
          ^
      Fix: write a few sentences under it.

      exercises/bridge.md:25:1: error heading found the heading “Lie down”; must be one of the headings Set up, Move or Look out for, of level 2.
          Lie down
          ^
      Fix: move the text under one of the headings Set up, Move or Look out for."
    `);
  });
});

describe('link', () => {
  it.each([
    [
      'http',
      '[page](http://clinic.example)',
      `exercises/bridge.md:25:1: error link found a link to http://clinic.example; must be a link by https, mailto or tel, or to a file of this folder.
    [page](http://clinic.example)
    ^
Fix: write a link by https, mailto or tel, or to a file of this folder, or take the link out and leave its words.`,
    ],
    [
      'a script',
      '[page](javascript:alert(1))',
      `exercises/bridge.md:25:1: error link found a link to javascript:alert(1); must be a link by https, mailto or tel, or to a file of this folder.
    [page](javascript:alert(1))
    ^
Fix: write a link by https, mailto or tel, or to a file of this folder, or take the link out and leave its words.`,
    ],
    [
      'a page without its scheme',
      '[page](//clinic.example)',
      `exercises/bridge.md:25:1: error link found a link to //clinic.example; must be the way to a file of this folder.
    [page](//clinic.example)
    ^
Fix: write the way to a file of this folder, or take the link out and leave its words.`,
    ],
    [
      'a name before the site',
      '[page](https://clinic.example@other.example)',
      `exercises/bridge.md:25:1: error link found a link to https://clinic.example@other.example; must be https:// with the name of a site.
    [page](https://clinic.example@other.example)
    ^
Fix: write https:// with the name of a site, or take the link out and leave its words.`,
    ],
    [
      'a way out of the folder',
      '[page](../../secret.md)',
      `exercises/bridge.md:25:1: error link found a link to ../../secret.md; must be the way to a file of this folder.
    [page](../../secret.md)
    ^
Fix: write the way to a file of this folder, or take the link out and leave its words.`,
    ],
    [
      'a title',
      '[page](https://clinic.example "The clinic")',
      `exercises/bridge.md:25:1: error link found a link to https://clinic.example; must be a link without a title in quotes.
    [page](https://clinic.example "The clinic")
    ^
Fix: write a link without a title in quotes, or take the link out and leave its words.`,
    ],
    [
      'no words',
      'Lie down [](https://clinic.example)',
      `exercises/bridge.md:25:10: error link found a link to https://clinic.example; must be a link with words to press on.
    Lie down [](https://clinic.example)
             ^
Fix: write a link with words to press on, or take the link out and leave its words.`,
    ],
    [
      'a file that is not there',
      'Lie down [as here](../exercises/brigde.md)',
      `exercises/bridge.md:25:10: error link found a link to ../exercises/brigde.md; must be the way to a card, a protocol or advice that is there.
    Lie down [as here](../exercises/brigde.md)
             ^
Fix: write the way to exercises/bridge.md.`,
    ],
  ])('%s', (_, body, text) => {
    expect(printedBody(body)).toBe(text);
  });

  it('to another file of the library is taken', () => {
    expect(printedBody('Lie down [as here](../advice/sitting.md#what)')).toBe('');
  });
});
