/** What a schema asks for at a path: its shape, its sentence, its keys and words. */
import * as z from 'zod';
import type { Path } from '../path.ts';

/** The shape at the path without `optional` and `default` around it; null where the schema knows no such path. */
export function schemaAt(schema: z.ZodType, path: Path): z.ZodType | null {
  return path.reduce<z.ZodType | null>((at, step) => (at === null ? null : below(at, step)), bare(schema));
}

/** The sentence for the author at the path, or null where there is none. */
export function sentenceAt(schema: z.ZodType, path: Path): string | null {
  const around = path.length === 0 ? schema : schemaAt(schema, path.slice(0, -1));
  const wrapped = around === null || path.length === 0 ? around : child(around, path.at(-1) ?? '');
  return wrapped === null ? null : described(wrapped);
}

/** The keys a group of keys knows, in the order of the schema; empty for anything else. */
export function keysOf(schema: z.ZodType | null): string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/** The fixed words (and numbers) a value may be; empty where it is not chosen from a list. */
export function wordsOf(schema: z.ZodType | null): (string | number)[] {
  if (schema === null) return [];
  const plain = bare(schema);
  if (plain instanceof z.ZodEnum) return [...plain.options];
  if (plain instanceof z.ZodLiteral) return [...plain.values].filter(isWord);
  if (plain instanceof z.ZodUnion) return plain.options.flatMap((option) => wordsOf(option as z.ZodType));
  return [];
}

function isWord(value: unknown): value is string | number {
  return typeof value === 'string' || typeof value === 'number';
}

function below(schema: z.ZodType, step: PropertyKey): z.ZodType | null {
  const found = child(schema, step);
  return found === null ? null : bare(found);
}

function child(schema: z.ZodType, step: PropertyKey): z.ZodType | null {
  if (schema instanceof z.ZodObject) {
    const shape = schema.shape as Record<PropertyKey, z.ZodType>;
    return Object.hasOwn(shape, step) ? (shape[step] ?? null) : null;
  }
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  if (schema instanceof z.ZodTuple) return (schema.def.items[Number(step)] as z.ZodType | undefined) ?? null;
  if (schema instanceof z.ZodRecord) return schema.valueType as z.ZodType;
  return null;
}

function inner(schema: z.ZodType): z.ZodType | null {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional)
    return schema.unwrap() as z.ZodType;
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault) return schema.unwrap() as z.ZodType;
  return schema instanceof z.ZodPipe ? (schema.in as z.ZodType) : null;
}

function bare(schema: z.ZodType): z.ZodType {
  const within = inner(schema);
  return within === null ? schema : bare(within);
}

function described(schema: z.ZodType): string | null {
  const within = inner(schema);
  return schema.description ?? (within === null ? null : described(within));
}
