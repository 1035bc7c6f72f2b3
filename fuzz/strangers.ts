/** What of a page is not ours: elements that no page has, attributes that run something, addresses that lead elsewhere. */
import { createHash } from 'node:crypto';

/** Elements that run or fetch something, with how many of each a page of ours may have. */
const NONE = [
  'iframe',
  'object',
  'embed',
  'base',
  'form',
  'frame',
  'portal',
  'applet',
  'textarea',
  'video',
  'audio',
];

export function strangers(markup: string): string[] {
  const tags = [
    ...markup.replaceAll(/<(script|style)>[^]*?<\/\1>/g, '').matchAll(/<([a-z][a-z0-9-]*)\b([^>]*)>/gi),
  ];
  const faults = tags.flatMap(([whole, name = '', attributes = '']) => {
    const bare = attributes.replaceAll(/"[^"]*"/g, '""');
    return [
      NONE.includes(name.toLowerCase()) ? `an element ${name}` : null,
      /[\s"/]on[a-z]+\s*=/i.test(bare) ? `an attribute that runs: ${whole}` : null,
      /\s(?:href|src|action|srcset)="\s*(?:javascript|data:text|vbscript|\/\/|http:)/i.test(attributes)
        ? `an address that leads elsewhere: ${whole}`
        : null,
      /^meta$/i.test(name) && /http-equiv="?refresh/i.test(attributes) ? 'a refresh' : null,
    ].filter((one) => one !== null);
  });
  return [...faults, ...unnamedScripts(markup)];
}

/** Scripts and styles whose hash the policy of the page does not name: it would not let them run, and they are not ours. */
function unnamedScripts(markup: string): string[] {
  return [...markup.matchAll(/<(script|style)>([^]*?)<\/\1>/g)].flatMap(([, name, text = '']) => {
    const hash = createHash('sha256').update(text, 'utf8').digest('base64');
    return markup.includes(`sha256-${hash}`) || !/sha256-/.test(markup) ? [] : [`a strange ${name}`];
  });
}
