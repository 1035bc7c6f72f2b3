/** A page of the clinic's own: who we are, how to find us, house rules. */
import * as z from 'zod';
import { about, changed, date, line, title, wholeFrom } from './words.ts';

export const pageSchema = z.strictObject({
  title: about('The heading of the page.', title),
  menu: about('What the menu calls it; the title when left out.', line).optional(),
  order: about('Its place in the menu, lowest first; then by title.', wholeFrom(0, 999)).default(100),
  lead: about('One sentence under the heading.', line).optional(),
  reviewedOn: about('The day it was last looked through.', date).optional(),
  changed: about('What was changed when; the feed tells of it.', changed),
});

export type PageFrontMatter = z.output<typeof pageSchema>;
