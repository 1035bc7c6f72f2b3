/** A text that means harm: pieces of markup, signs and odd letters, put together by chance. */
import { NAUGHTY } from '../tests/laws/naughty.ts';
import type { Chance } from './chance.ts';

const MARKUP = [
  '<script>globalThis.caught=1</script>',
  '"><img src=x onerror="globalThis.caught=1">',
  "' onfocus='globalThis.caught=1' autofocus='",
  '</li></ul></main><svg onload=globalThis.caught=1>',
  '</title></style></textarea><iframe src=//elsewhere.example>',
  '--></style><style>@import"//elsewhere.example"',
  '<meta http-equiv=refresh content=0;url=//elsewhere.example>',
  '<base href=//elsewhere.example/>',
  '<form action=//elsewhere.example><input>',
  '<a href="javascript:1">a</a>',
  '&#60;script&#62;',
  ']]>',
  '{{ 1 }}{% raw %}<%= 1 %>${1}',
  'Subject: x\\r\\nBcc: a@elsewhere.example',
  '](javascript:1)',
  '(D:1) Tj ET endstream endobj',
  'BEGIN:VEVENT',
  ',"=1+1"',
];

/** Of one line, not too long to be read. */
export function hostileText(chance: Chance): string {
  const pieces = Array.from({ length: 1 + chance.below(3) }, () =>
    chance.onceIn(3) ? chance.of(NAUGHTY) : chance.of(MARKUP),
  );
  const text = pieces.join(chance.of(['', ' ', 'plain words ']));
  // Content refuses the characters themselves; most texts have to come past it.
  return chance.onceIn(4) ? text : withoutRefused(text).slice(0, 200);
}

function withoutRefused(text: string): string {
  return text.replaceAll(
    /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\uffff]/g,
    ' ',
  );
}
