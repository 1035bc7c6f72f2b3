/** Stands for `programme/reviewed.ts` in the worker: a log is looked back on by its second part. */
import type * as reviewed from '../../programme/reviewed.ts';
import { laterScript } from '../worker/laterScript.ts';

export const afterReview: typeof reviewed.afterReview = (...given) => laterScript().afterReview(...given);
export const reviewLogged: typeof reviewed.reviewLogged = (...given) => laterScript().reviewLogged(...given);
