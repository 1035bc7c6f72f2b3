/** Stands for the package in the scripts of page and worker, which come after the one that has it. */
import type { SharedYaml } from '../yaml.ts';

const { loadleafYaml } = globalThis as unknown as { readonly loadleafYaml: SharedYaml };

export const { Document, isAlias, isCollection, isMap, isScalar, isSeq, parseDocument, stringify } =
  loadleafYaml;
