/** On the page that stands in the place of a leaflet that is in use no longer: what the phone kept of it goes. */
import { forgetAll } from './kept.ts';

void forgetAll().catch(() => undefined);
