/** Turns what the schema library finds wrong into faults of our own catalogue. */
import type * as z from 'zod';
import type { QuantityFault } from '../quantity/shapes.ts';
import { type Fault, fault, show } from './faults.ts';
import { pointer } from './locate.ts';

type Path = readonly PropertyKey[];
type Issue = z.core.$ZodIssue;

const A_QUANTITY = 'a quantity such as "1.62 kg ± 5 g", or an object with "value", "basis" and "remark"';

/** The faults of a value against its schema. */
export function faultsOf(issues: readonly Issue[], value: unknown, schema: z.ZodType): Fault[] {
  return issues.flatMap((issue) => faultsOfIssue(issue, value, schema, []));
}

function faultsOfIssue(issue: Issue, value: unknown, schema: z.ZodType, base: Path): Fault[] {
  const path = [...base, ...issue.path];
  const found = valueAt(value, path);
  const at = pointer(path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        fault('DOSSIER_KEY_UNKNOWN', pointer([...path, key]), `the key "${key}"`, acceptedKeys(schema, path, found)),
      );
    case 'invalid_type':
      return found === undefined
        ? [fault('DOSSIER_KEY_MISSING', at, 'nothing', words(issue.expected))]
        : [fault('DOSSIER_TYPE', at, show(found), words(issue.expected))];
    case 'invalid_value':
      return [
        found === undefined
          ? fault('DOSSIER_KEY_MISSING', at, 'nothing', issue.values.map(String).join(', '))
          : fault(
              path.at(-1) === 'format' ? 'DOSSIER_FORMAT' : 'DOSSIER_VALUE',
              at,
              show(found),
              issue.values.map(String).join(', '),
            ),
      ];
    case 'invalid_union':
      return faultsOfUnion(issue, value, schema, path, found);
    case 'custom': {
      const known = issue.params?.quantityFault as QuantityFault | undefined;
      return known
        ? [fault(known.code, at, `"${String(issue.params?.text)}"`, known.accepted.join(', '), known.hint)]
        : [fault(found === undefined ? 'DOSSIER_KEY_MISSING' : 'DOSSIER_VALUE', at, show(found), issue.message)];
    }
    default:
      return [fault('DOSSIER_VALUE', at, show(found), issue.message)];
  }
}

/** Of a union only the branch that fits the kind of value speaks; the others would confuse. */
function faultsOfUnion(
  issue: z.core.$ZodIssueInvalidUnion,
  value: unknown,
  schema: z.ZodType,
  path: Path,
  found: unknown,
): Fault[] {
  if (found === undefined) return [fault('DOSSIER_KEY_MISSING', pointer(path), 'nothing', A_QUANTITY)];
  const isObject = typeof found === 'object' && found !== null && !Array.isArray(found);
  const branch = issue.errors.find((issues) => issues.some((inner) => inner.path.length > 0 || isOfObject(inner)));
  if (isObject && branch) return branch.flatMap((inner) => faultsOfIssue(inner, value, schema, path));
  const accepted =
    'note' in issue && issue.note === 'No matching discriminator'
      ? `one of ${discriminators(schema, path)}`
      : 'a quantity text such as "1.62 kg ± 5 g", the id of a part, or an object';
  return [fault(isObject ? 'DOSSIER_VALUE' : 'DOSSIER_TYPE', pointer(path), show(found), accepted)];
}

const isOfObject = (issue: Issue) => issue.code === 'unrecognized_keys';

function words(expected: string): string {
  const articles: Record<string, string> = {
    string: 'a text',
    number: 'a number',
    int: 'a whole number',
    boolean: 'true or false',
    object: 'an object { … }',
    array: 'a list [ … ]',
  };
  return articles[expected] ?? expected;
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, step)
        ? (inner as Record<PropertyKey, unknown>)[step]
        : undefined,
    value,
  );
}

interface Definition {
  type: string;
  shape?: Record<string, z.ZodType>;
  innerType?: z.ZodType;
  element?: z.ZodType;
  options?: readonly z.ZodType[];
  in?: z.ZodType;
  discriminator?: string;
}
const definition = (schema: z.ZodType) => schema.def as unknown as Definition;

/** The object schemas that stand at a path, unions opened. */
function schemasAt(schema: z.ZodType, path: Path): z.ZodType[] {
  const def = definition(schema);
  if (def.type === 'optional' && def.innerType) return schemasAt(def.innerType, path);
  if (def.type === 'pipe' && def.in) return schemasAt(def.in, path);
  if (def.type === 'union') return (def.options ?? []).flatMap((option) => schemasAt(option, path));
  const [step, ...rest] = path;
  if (step === undefined) return [schema];
  if (def.type === 'array' && def.element) return schemasAt(def.element, rest);
  const inner = def.shape && Object.hasOwn(def.shape, step) ? def.shape[String(step)] : undefined;
  return inner ? schemasAt(inner, rest) : [];
}

function acceptedKeys(schema: z.ZodType, path: Path, found: unknown): string {
  const shapes = schemasAt(schema, path).flatMap((inner) => {
    const { shape } = definition(inner);
    return shape ? [shape] : [];
  });
  const kind = valueAt(found, ['kind']);
  const fitting = shapes.filter((shape) => {
    const literal = shape.kind && (definition(shape.kind) as unknown as { values?: unknown[] }).values;
    return !literal || literal.includes(kind);
  });
  const keys = new Set((fitting.length > 0 ? fitting : shapes).flatMap((shape) => Object.keys(shape)));
  return [...keys].join(', ');
}

function discriminators(schema: z.ZodType, path: Path): string {
  const kinds = schemasAt(schema, path).flatMap(
    (inner) =>
      (definition(definition(inner).shape?.kind ?? inner) as unknown as { values?: unknown[] }).values?.map(String) ??
      [],
  );
  return [...new Set(kinds)].join(', ');
}
