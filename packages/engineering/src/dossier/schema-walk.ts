/** Finds the schema that stands at a path, so that a message can say what is accepted there. */
import type * as z from 'zod';

type Path = readonly PropertyKey[];
type Shape = Readonly<Record<string, z.ZodType>>;

interface Definition {
  readonly type: string;
  readonly shape?: Shape;
  readonly innerType?: z.ZodType;
  readonly element?: z.ZodType;
  readonly options?: readonly z.ZodType[];
  readonly in?: z.ZodType;
  readonly values?: readonly unknown[];
}
const definition = (schema: z.ZodType) => schema.def as unknown as Definition;

/** The value at a path, own keys only; undefined where the path leads nowhere. */
export function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, step)
        ? (inner as Record<PropertyKey, unknown>)[step]
        : undefined,
    value,
  );
}

export const isOptional = (schema: z.ZodType) => definition(schema).type === 'optional';

/** Without what only says that it may be left out. */
export function required(schema: z.ZodType): z.ZodType {
  const { type, innerType } = definition(schema);
  return type === 'optional' && innerType ? required(innerType) : schema;
}

/** The schemas at a path into a value; more than one only where a union leaves it open which is meant. */
export function schemasAt(schema: z.ZodType, path: Path, value: unknown): z.ZodType[] {
  let here = [schema];
  path.forEach((step, i) => {
    const inner = valueAt(value, path.slice(0, i));
    here = here.flatMap((outer) => opened(outer, inner)).flatMap((outer) => child(outer, step));
  });
  return here;
}

/** The keys an object at a path may have. */
export function keysAt(schema: z.ZodType, path: Path, value: unknown): string[] {
  const here = valueAt(value, path);
  const shapes = schemasAt(schema, path, value)
    .flatMap((outer) => opened(outer, here))
    .map((inner) => definition(inner).shape ?? {});
  return [...new Set(shapes.flatMap((shape) => Object.keys(shape)))];
}

function child(schema: z.ZodType, step: PropertyKey): z.ZodType[] {
  const { element, shape } = definition(schema);
  if (element) return [element];
  const inner = shape && Object.hasOwn(shape, step) ? shape[String(step)] : undefined;
  return inner ? [inner] : [];
}

/** A schema down to those that could be meant by this value, unions decided by its `kind` where it has one. */
function opened(schema: z.ZodType, value: unknown): z.ZodType[] {
  const { type, innerType, in: input, options } = definition(schema);
  if (type === 'optional' && innerType) return opened(innerType, value);
  if (type === 'pipe' && input) return opened(input, value);
  if (type !== 'union' || !options) return [schema];
  const all = options.flatMap((option) => opened(option, value));
  const kind = valueAt(value, ['kind']);
  const meant = all.filter((option) => kindsOf(option).includes(kind));
  return meant.length > 0 ? meant : all;
}

/** The kinds an object schema stands for, by its literal `kind`. */
function kindsOf(schema: z.ZodType): readonly unknown[] {
  const kind = definition(schema).shape?.kind;
  return kind ? (definition(kind).values ?? []) : [];
}
