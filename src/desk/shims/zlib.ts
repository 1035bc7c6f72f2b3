/** What `zlib` does for pdfkit, in a browser. Its streams are packed by `outputs/pdf/pdfkit/streams.ts`, there and in Node alike. */
import { unzlibSync, zlibSync } from 'fflate';

export const deflateSync = (bytes: Uint8Array): Uint8Array => zlibSync(bytes);
export const inflateSync = (bytes: Uint8Array): Uint8Array => unzlibSync(bytes);
export default { deflateSync, inflateSync };
