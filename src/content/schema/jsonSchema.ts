/** The front matter of each kind as JSON Schema, for editors and for the files that `new` writes. */
import * as z from 'zod';
import { SCHEMAS, type Kind } from '../kind.ts';

/** JSON Schema (draft 2020-12) of what an author writes; each key carries its sentence as `description`. */
export function jsonSchemaOf(kind: Kind): z.core.JSONSchema.BaseSchema {
  return z.toJSONSchema(SCHEMAS[kind], { io: 'input' });
}
