/** How soon somebody has to look at what a person answers yes to on the page (house rules 2). */
import { ALARM_ITEMS, type AlarmItem, type AlarmName, type AlarmUrgency } from '../terms/alarmItem.ts';
import { effectOf } from './screen.ts';

// The emergency box of the leaflet says so of the first; a bone that may be broken waits no longer.
const SAME_DAY: readonly AlarmName[] = ['popBruise', 'suspectedFracture'];

export function alarmItems(): AlarmItem[] {
  return ALARM_ITEMS.map((item) => ({ item, urgency: urgencyOf(item) }));
}

function urgencyOf(item: AlarmName): AlarmUrgency {
  if (effectOf(item) === 'emergency') return 'call';
  return SAME_DAY.includes(item) ? 'sameDay' : 'contact';
}
