/** What the page of the desk offers of a programme, and what it has to fetch before. */
import { describe, expect, it } from 'vitest';
import { toMakeOf } from '../../src/desk/worker/toMake.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { programmes } from '../outputs/html/programmes.ts';

const [, marten] = programmes[1]!;
const posted = (over: Partial<Programme['post']>): Programme => ({
  ...marten,
  post: { ...marten.post, from: { name: 'A clinic', address: 'desk@clinic.example' }, ...over },
});

describe('what can be made', () => {
  it.each<
    [what: string, programme: Programme, file: keyof ReturnType<typeof toMakeOf>, needs: string[] | null]
  >([
    ['the page needs its style', marten, 'leaflet.html', ['dress']],
    ['paper needs what draws it', marten, 'leaflet.pdf', ['paper']],
    ['the record as data is there at once', marten, 'record.json', []],
    ['a note alone is there at once', posted({ fridge: false }), 'note.txt', []],
    ['a note tells whether the sheet went on its page', posted({ fridge: true }), 'note.txt', ['paper']],
    ['a sheet that the clinic does not have made', posted({ fridge: false }), 'fridge.pdf', null],
    ['a sheet that it has', posted({ fridge: true }), 'fridge.pdf', ['paper']],
    ['a letter before the end of treatment', { ...marten, letter: null }, 'letter.txt', null],
    ['a calendar', marten, 'sessions.ics', ['post']],
    ['a calendar without a day', posted({ events: [] }), 'sessions.ics', null],
    ['a draft holds paper, page and calendar', posted({}), 'message.eml', ['dress', 'post', 'paper']],
    ['a draft from nobody', posted({ from: null }), 'message.eml', null],
    ['the archive', marten, 'sealed', ['dress', 'post']],
  ])('%s', (_, programme, file, needs) => {
    expect(toMakeOf(programme)[file]?.needs ?? null).toEqual(needs);
  });

  it('the link is told by note, message and archive', () => {
    const telling = Object.entries(toMakeOf(posted({}))).flatMap(([file, { tellsLink }]) =>
      tellsLink ? [file] : [],
    );
    expect(telling.sort()).toEqual(['message.eml', 'message.txt', 'note.txt', 'sealed']);
  });
});
