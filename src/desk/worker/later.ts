/** The script that is fetched with the first file made, log opened or review asked for, and with the first named sign (`&auml;`). */
import { decodeHTMLStrict } from 'entities';
import { pageAssets } from '../../outputs/html/assets.ts';
import { afterReview, reviewLogged } from '../../programme/reviewed.ts';
import { openedPhotos } from '../photos.ts';
import { openLog, writeLog } from './logSheet.ts';
import { outputOf } from './outputs.ts';
import { reviewSheet } from './review.ts';

export const later = {
  afterReview,
  decodeHTMLStrict,
  openedPhotos,
  openLog,
  outputOf,
  pageAssets,
  reviewLogged,
  reviewSheet,
  writeLog,
};

(globalThis as { loadleafLater?: typeof later }).loadleafLater = later;
