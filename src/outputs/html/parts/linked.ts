/** Text in which the name of an exercise leads to its place on the page. */
import { html, type Html } from '../html.ts';

/** Addresses in the page by title. */
export type Places = ReadonlyMap<string, string>;

export const NO_PLACES: Places = new Map();

/** The text with each title in it as a way to its place; of titles that lie in one another the longest. */
export function linked(text: string, places: Places): Html {
  const pieces: Html[] = [];
  let rest = text;
  for (let next = firstIn(rest, places); next !== null; next = firstIn(rest, places)) {
    const { title, id, at } = next;
    pieces.push(html`${rest.slice(0, at)}<a href="#${id}">${title}</a>`);
    rest = rest.slice(at + title.length);
  }
  return html`${pieces}${rest}`;
}

interface Found {
  readonly title: string;
  readonly id: string;
  readonly at: number;
}

function firstIn(text: string, places: Places): Found | null {
  const found = [...places]
    .map(([title, id]): Found => ({ title, id, at: title === '' ? -1 : text.indexOf(title) }))
    .filter(({ at }) => at >= 0);
  return found.reduce<Found | null>(
    (best, one) =>
      best === null || one.at < best.at || (one.at === best.at && one.title.length > best.title.length)
        ? one
        : best,
    null,
  );
}
