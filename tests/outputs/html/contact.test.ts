/** Which words of a line a phone can follow. */
import { describe, expect, it } from 'vitest';
import { contactHtml } from '../../../src/outputs/html/parts/contact.ts';

const linksIn = (line: string) =>
  [...contactHtml(line).markup.matchAll(/<a href="([^"]+)">([^<]+)<\/a>/g)].map(([, href, words]) => [
    href,
    words?.replaceAll('\u00a0', ' '),
  ]);

describe('a line of contact', () => {
  it.each([
    ['Telephone: 00 0000 0000, weekdays 8 to 18', [['tel:0000000000', '00 0000 0000']]],
    ['Mail: desk@larkfield.example', [['mailto:desk@larkfield.example', 'desk@larkfield.example']]],
    ['+44 20 7946 0000 or a.b@c.example', [['tel:+442079460000', '+44 20 7946 0000'], ['mailto:a.b@c.example', 'a.b@c.example']]],
    ['Call 999 or go to A&E at once', [['tel:999', '999']]],
    ['Emergency: 999', [['tel:999', '999']]],
    ['Call 112 or 999 now', [['tel:112', '112'], ['tel:999', '999']]],
    ['Urgent but no emergency: call the health line on 1450 or your doctor', [['tel:1450', '1450']]],
    ['call Healthline on 0800 611 116 or your GP', [['tel:0800611116', '0800 611 116']]],
    ['weekdays 8 to 18', []],
    ['Your score has been over 3 for 14 days', []],
    ['From 2026-11-24 to 2026-12-15', []],
    ['3 sets of 120 seconds', []],
  ])('%s', (line, links) => {
    expect(linksIn(line)).toEqual(links);
  }); // prettier-ignore

  it('keeps every letter', () => {
    const line = 'Call 999 <now>, "or" write to x@y.example & wait';
    const text = contactHtml(line).markup.replace(/<[^>]+>/g, '');
    expect(text).toBe('Call 999 &lt;now&gt;, &quot;or&quot; write to x@y.example &amp; wait');
  });
});
