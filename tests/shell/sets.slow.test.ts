/** States a stopped build can leave: every third; with EVERY_STATE set, each one. */
import { wholeSets } from './wholeSets.ts';

wholeSets(process.env['EVERY_STATE'] === undefined ? 3 : 1);
