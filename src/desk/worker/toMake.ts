/** What can be made of a programme, and what the page fetches before it is. */
import type { Programme } from '../../programme/programme.ts';
import { OUTPUTS, outputOf } from '../../set/outputs.ts';
import type { Output, Room } from '../../set/output.ts';
import type { Fetched, ToMake } from '../talk.ts';

/** A page, and a sealed one, is dressed; the other rooms come as scripts of their own, or are there already. */
const FETCHED: Readonly<Record<Room, readonly Fetched[]>> = {
  html: ['dress'],
  pdf: ['paper'],
  text: [],
  calendar: ['post'],
  mail: ['dress', 'post'],
};

export function toMakeOf(programme: Programme): ToMake {
  // Nothing is asked for beyond what the clinic sets; the secret is the page's.
  const isThere = ({ isFor }: Output) =>
    isFor?.(programme, { isFridgeAsked: false, isSealed: false }) ?? true;
  const own = OUTPUTS.filter(isThere).map(({ file, room, parts = [], tellsLink }: Output) => {
    const rooms = [
      room,
      ...parts
        .map(outputOf)
        .filter(isThere)
        .map((part) => part.room),
    ];
    const needs = new Set(rooms.flatMap((one) => (one === null ? [] : FETCHED[one])));
    return [file, { needs: [...needs], tellsLink: tellsLink === true }] as const;
  });
  return { ...Object.fromEntries(own), sealed: { needs: FETCHED.mail, tellsLink: true } };
}
