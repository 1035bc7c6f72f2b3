/** The outputs of the programme beside the form, each a file of this machine; nothing of them is kept. */
import { signal } from '@preact/signals';
import {
  FIRST_NAME,
  MADE_WORDS,
  MAKE_BAR,
  madeText,
  NO_LETTER,
  NO_SECRET,
  NO_SITE,
  NOT_SECURE,
  nothingText,
  notMadeText,
  SEALED_DONE,
  SEALED_TITLE,
  SEALED_UNPACK,
  SEALED_WORDS,
} from '../../messages/en/desk/make.ts';
import { siteAddress } from '../../units/siteAddress.ts';
import type { MadeName, SealedLink, ToMake } from '../talk.ts';
import { saveAs } from './saveAs.ts';
import { secret, SecretFields, site, tell, told } from './secret.tsx';
import { fileName, firstName, sheetNow, value, view } from './state.ts';
import { make } from './thread.ts';

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html',
  pdf: 'application/pdf',
  json: 'application/json',
  txt: 'text/plain',
  eml: 'message/rfc822',
  ics: 'text/calendar',
  zip: 'application/zip',
};

/** Link and words of the leaflet that was sealed last, and of which consult; gone with the page, or with that consult. */
const link = signal<(SealedLink & { readonly of: string }) | null>(null);

/** In the order of their buttons. */
const MADE = Object.keys(MADE_WORDS) as MadeName[];

/** Says whose it is and which: by the alias, never by a name. @example 'home-exercises-otter-r1.pdf' */
function madeName(name: MadeName): string {
  const { alias, revision } = value.value;
  const [kind = '', ending = 'zip'] = name.split('.');
  const what = kind === 'leaflet' ? 'home-exercises' : kind;
  return `${what}-${String(alias)}-r${String(revision)}.${ending}`;
}

/** Why nothing can be sealed yet; null where it can. */
function sealingFault(address: string | null): string | null {
  if (!isSecureContext) return NOT_SECURE;
  if (secret.value === null) return NO_SECRET;
  return address === null ? NO_SITE : null;
}

async function download(name: MadeName): Promise<void> {
  const { needs = [], tellsLink = false } = toMake()[name] ?? {};
  const address = siteAddress(site.value);
  const isSealing = name === 'sealed' || (secret.value !== null && tellsLink);
  const fault = isSealing ? sealingFault(address) : null;
  if (fault !== null) {
    tell(fault);
    return;
  }
  const seal =
    !isSealing || secret.value === null || address === null ? null : { secret: secret.value, site: address };
  const file = madeName(name);
  try {
    const made = await make({
      sheet: sheetNow(),
      name,
      firstName: firstName.value,
      seal,
      needs,
    });
    if (made.bytes !== null) saveAs(file, made.bytes, TYPES[file.slice(file.lastIndexOf('.') + 1)] ?? '');
    if (made.link !== undefined) link.value = { ...made.link, of: fileName.value };
    tell(made.bytes === null ? nothing(name) : madeText(file));
  } catch (error) {
    tell(notMadeText(name, error instanceof Error ? error.message : String(error)));
  }
}

function nothing(name: MadeName): string {
  return name === 'letter.txt' ? NO_LETTER : nothingText(name);
}

function toMake(): ToMake {
  return view.value?.state === 'ready' ? view.value.toMake : {};
}

function has(name: MadeName): boolean {
  return toMake()[name] !== undefined;
}

export function MakeBar() {
  return (
    <>
      <div class="bar" role="toolbar" aria-label={MAKE_BAR}>
        <label class="firstname">
          <span>{FIRST_NAME}</span>
          <input
            type="text"
            autocomplete="off"
            value={firstName.value}
            onInput={({ currentTarget }) => (firstName.value = currentTarget.value)}
          />
        </label>
        {MADE.filter((name) => name !== 'sealed' && (name !== 'fridge.pdf' || has(name))).map((name) => (
          <Make key={name} name={name} />
        ))}
      </div>
      <details class="sealing">
        <summary>{SEALED_TITLE}</summary>
        <div class="bar" role="group" aria-label={SEALED_TITLE}>
          <SecretFields />
          <Make name="sealed" />
        </div>
      </details>
      {/* Told where it was pressed; said aloud once, at the top. */}
      <p class="told" aria-hidden="true">
        {told.value}
      </p>
      <Sealed />
    </>
  );
}

function Make({ name }: { name: MadeName }) {
  return (
    <button type="button" data-make={name} disabled={!has(name)} onClick={() => void download(name)}>
      {MADE_WORDS[name]}
    </button>
  );
}

function Sealed() {
  const now = link.value;
  if (now === null || now.of !== fileName.value) return null;
  return (
    <section class="sealedlink" aria-label={SEALED_TITLE}>
      <p>{SEALED_UNPACK}</p>
      <p class="address">{now.address}</p>
      {now.words === null ? null : (
        <>
          <p>{SEALED_WORDS}</p>
          <p class="strong">{now.words}</p>
        </>
      )}
      <button type="button" onClick={() => (link.value = null)}>
        {SEALED_DONE}
      </button>
    </section>
  );
}
