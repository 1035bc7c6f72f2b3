/** States a stopped build can leave: every fifth; with EVERY_STATE set, each one. */
import { wholeSets } from './wholeSets.ts';

wholeSets(process.env['EVERY_STATE'] === undefined ? 5 : 1);
