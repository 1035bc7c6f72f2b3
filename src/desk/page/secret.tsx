/** The clinic secret: read from the file that is chosen, into memory alone, and the address that goes with it. */
import { FilePick } from './filePick.tsx';
import { computed, signal } from '@preact/signals';
import {
  FORGET_SECRET,
  NOT_A_SECRET,
  SECRET,
  SECRET_FORGOTTEN,
  SECRET_READ,
  SITE,
} from '../../messages/en/desk/make.ts';
import { secretOf } from '../../outputs/sealed/secret.ts';
import { catalogue, laidTimes, said } from './state.ts';

/** In no draft and no storage; null while none is chosen. */
export const secret = signal<Uint8Array<ArrayBuffer> | null>(null);

const typed = signal<string | null>(null);
export const site = {
  /** As it was typed, else as the clinic's file has it. */
  get value(): string {
    return typed.value ?? catalogue.value?.starts.site ?? '';
  },
};

const last = signal({ words: '', of: 0 });

/** The last that was said of what is made, beside where it was pressed; of the consult on the desk alone. */
export const told = computed(() => (last.value.of === laidTimes.value ? last.value.words : ''));

export function tell(words: string): void {
  said.value = words;
  last.value = { words, of: laidTimes.value };
}

/** A secret is one line; of a longer file nothing is read. */
const MOST_BYTES = 200;

async function choose(file: File | undefined): Promise<void> {
  if (file === undefined) return;
  secret.value = file.size > MOST_BYTES ? null : secretOf(await file.text());
  tell(secret.value === null ? NOT_A_SECRET : SECRET_READ);
}

export function SecretFields() {
  return (
    <>
      <FilePick opens="secret" words={SECRET} onFiles={([file]) => choose(file)} />
      {secret.value === null ? null : (
        <button
          type="button"
          onClick={() => {
            secret.value = null;
            tell(SECRET_FORGOTTEN);
          }}
        >
          {FORGET_SECRET}
        </button>
      )}
      <label class="firstname">
        <span>{SITE}</span>
        <input
          type="url"
          autocomplete="off"
          spellcheck={false}
          data-site
          value={site.value}
          onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
        />
      </label>
    </>
  );
}
