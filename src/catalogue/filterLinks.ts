/** Ways from the first page into the index, each a filter with one word chosen. */
import type { Messages } from '../messages/messages.ts';

import type { CardView, Filter, FrontView, FilterLink } from './view.ts';
import type { FilterKey } from '../decisions/terms/scale.ts';

/** Filters that part the whole library and are asked first. */
const KEYS: readonly FilterKey[] = ['squeeze', 'stage'];

/** By filter, or by the groups of its words where it has any; words that no card has are left out. */
export function waysIn(
  say: Messages,
  cards: readonly CardView[],
  filters: readonly Filter[],
): FrontView['ways'] {
  return filters
    .filter(({ key }) => KEYS.includes(key))
    .flatMap(({ key, heading, options }) =>
      [...new Set(options.map(({ group }) => group))].map((group) => ({
        heading: group === '' ? say.byText(heading) : group,
        entries: options
          .filter((option) => option.group === group)
          .flatMap(({ value, label }) => wayTo(say, key, value, label, cards)),
      })),
    );
}

function wayTo(
  say: Messages,
  filter: FilterKey,
  value: string,
  label: string,
  cards: readonly CardView[],
): FilterLink[] {
  const count = cards.filter(({ facets }) => facets[filter].includes(value)).length;
  return count === 0 ? [] : [{ label, filter, value, count: say.countText(count, 'exercise') }];
}
