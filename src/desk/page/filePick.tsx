/** Files of the person's choice. The field keeps no name of them, so that the same ones can be chosen again. */

interface Picking {
  /** What is opened, as `data-open` says it. */
  readonly opens: string;
  readonly words: string;
  /** Endings and kinds; left out, any file. */
  readonly accept?: string;
  readonly multiple?: boolean;
  /** All files of a folder. */
  readonly isFolder?: boolean;
  readonly onFiles: (files: readonly File[]) => Promise<void>;
}

export function FilePick({ opens, words, accept, multiple = false, isFolder = false, onFiles }: Picking) {
  return (
    <label class="open press">
      <span>{words}</span>
      <input
        type="file"
        {...(accept === undefined ? {} : { accept })}
        multiple={multiple || isFolder}
        {...(isFolder ? { webkitdirectory: true } : {})}
        data-open={opens}
        onChange={({ currentTarget }) => {
          void onFiles([...(currentTarget.files ?? [])]).then(() => (currentTarget.value = ''));
        }}
      />
    </label>
  );
}
