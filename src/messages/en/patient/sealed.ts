/** What the page of a sealed leaflet says before it is open, and when it is in use no longer. */

export interface SealedWords {
  readonly title: string;
  /** Shown whenever it does not open. */
  readonly wrong: readonly string[];
  readonly asks: {
    readonly label: string;
    readonly hint: string;
    readonly open: string;
    readonly wrong: string;
  };
  readonly withdrawn: readonly string[];
  readonly contact: { readonly heading: string; readonly lines: readonly string[] };
  /** For the question whether it may be kept. */
  readonly keep: { readonly keep: string; readonly yes: string; readonly no: string; readonly kept: string };
}

interface Clinic {
  readonly name: string;
  readonly contact: readonly string[];
}

export function sealedWords({ name, contact }: Clinic): SealedWords {
  return {
    title: 'Home exercises',
    wrong: [
      'This page does not open here.',
      'Open it with the whole link from your message, down to the last letter, in a browser that is up to date. If it still does not open, ring us.',
    ],
    asks: {
      label: 'Your five words',
      hint: 'You were told them by telephone. Type them in their order, with a space between.',
      open: 'Open',
      wrong: 'It does not open with these words. Look at each letter, and try again.',
    },
    withdrawn: [
      'This leaflet is no longer in use.',
      'Please do not go on with its exercises, from here or from paper. Ring us first.',
      'In an emergency call your emergency number at once.',
    ],
    contact: { heading: 'How to reach us', lines: [name, ...contact] },
    keep: {
      keep: 'Open this page on this phone without the link from now on? Say yes only if the phone is yours alone.',
      yes: 'Yes, keep it',
      no: 'No',
      kept: 'Kept. You can save this page to your home screen.',
    },
  };
}
