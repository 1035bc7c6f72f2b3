/** As much of a readable stream as pdfkit's document is one: what was pushed is read once, and its end is told. */
class Readable {
  #parts: Uint8Array[] = [];
  #listeners: (() => void)[] = [];
  #isEnded = false;

  push(chunk: Uint8Array | null): boolean {
    if (chunk !== null) this.#parts.push(chunk);
    else {
      this.#isEnded = true;
      queueMicrotask(() => this.#tell());
    }
    return true;
  }

  read(): Uint8Array {
    const parts = this.#parts;
    this.#parts = [];
    return Uint8Array.from(parts.flatMap((part) => [...part]));
  }

  resume(): this {
    return this;
  }

  /** Of `end` alone. */
  once(event: string, listener: () => void): this {
    if (event !== 'end') throw new Error(`${event}: only the end is told`);
    this.#listeners.push(listener);
    if (this.#isEnded) queueMicrotask(() => this.#tell());
    return this;
  }

  /** What pdfkit tells of its pages nobody listens to. */
  emit(): boolean {
    return false;
  }

  #tell(): void {
    for (const listener of this.#listeners.splice(0)) listener();
  }
}

export { Readable };
export default { Readable };
