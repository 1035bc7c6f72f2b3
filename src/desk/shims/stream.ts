/**
 * As much of a readable stream as pdfkit's document is one. What it would push is gathered by `outputs/pdf/pdfkit/file.ts`,
 * which asks for the close alone.
 */
class Readable {
  #closed: (() => void)[] = [];

  push(): boolean {
    return true;
  }

  once(event: string, listener: () => void): this {
    if (event !== 'close') throw new Error(`${event}: only the close is told`);
    this.#closed.push(listener);
    return this;
  }

  destroy(): this {
    for (const listener of this.#closed.splice(0)) queueMicrotask(listener);
    return this;
  }

  /** What pdfkit tells of its pages nobody listens to. */
  emit(): boolean {
    return false;
  }
}

export { Readable };
export default { Readable };
