/** The reader of YAML as a script of its own: the page and its worker both read consults, and it is fetched once for both. */
import { Document, isAlias, isCollection, isMap, isScalar, isSeq, parseDocument, stringify } from 'yaml';

const shared = { Document, isAlias, isCollection, isMap, isScalar, isSeq, parseDocument, stringify };
export type SharedYaml = typeof shared;

(globalThis as { loadleafYaml?: SharedYaml }).loadleafYaml = shared;
