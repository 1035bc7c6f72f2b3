/** A slice of the states a stopped build can leave; the slow tests look at more of them. */
import { wholeSets } from './wholeSets.ts';

wholeSets(11);
