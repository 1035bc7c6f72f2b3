/** A file of this machine, as a download. */
export function saveAs(name: string, bytes: Uint8Array | string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
