/** Turns what the schema library finds wrong into faults of our own catalogue. */
import type * as z from 'zod';
import type { QuantityFault } from '../quantity/shapes.ts';
import { ACCEPTS, type Accepts } from './accepts.ts';
import { FAULTS_MAX, type Fault, fault, show } from './faults.ts';
import { pointer } from './locate.ts';
import { perhaps } from './near.ts';
import { aKind, PART_SCHEMAS } from './schema/parts.ts';
import { isOptional, keysAt, required, schemasAt, valueAt } from './schema-walk.ts';

type Path = readonly PropertyKey[];
type Issue = z.core.$ZodIssue;

/** Where an issue stands: the whole value and its schema, and the path within. */
interface Place {
  readonly value: unknown;
  readonly schema: z.ZodType;
  readonly path: Path;
  readonly at: string;
  readonly found: unknown;
  /** So much is wrong that no hint will be read: none is sought. */
  readonly crowded: boolean;
}

/** The faults of a value against its schema. */
export function faultsOf(issues: readonly Issue[], value: unknown, schema: z.ZodType): Fault[] {
  const crowded = issues.reduce((sum, issue) => sum + countOf(issue), 0) > FAULTS_MAX;
  const faults = issues.flatMap((issue) => faultsOfIssue(issue, value, schema, [], crowded));
  // A number far out breaks two bounds, that of its type and that of the key: the later one is the narrower.
  const byPlace = new Map(faults.map((f) => [`${f.code} ${f.at}`, f]));
  return [...byPlace.values()];
}

function countOf(issue: Issue): number {
  if (issue.code === 'unrecognized_keys') return issue.keys.length;
  if (issue.code !== 'invalid_union') return 1;
  return issue.errors.flat().reduce((sum, inner) => sum + countOf(inner), 1);
}

function faultsOfIssue(issue: Issue, value: unknown, schema: z.ZodType, base: Path, crowded: boolean): Fault[] {
  const path = [...base, ...issue.path];
  const place: Place = { value, schema, path, at: pointer(path), found: valueAt(value, path), crowded };
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(issue.keys, place);
    case 'invalid_type':
      return [notAccepted(place, words(issue.expected))];
    case 'invalid_value':
      return [notOneOf(place, issue.values.map(String))];
    case 'invalid_union':
      return faultsOfUnion(issue, place);
    case 'too_small':
      return [outOfBounds(place, boundText(issue.origin, issue.minimum, issue.inclusive === false, 'least'))];
    case 'too_big':
      return [outOfBounds(place, boundText(issue.origin, issue.maximum, issue.inclusive === false, 'most'))];
    case 'invalid_format':
      return [outOfBounds(place, issue.format === 'date' ? 'a date such as 2024-05-31' : issue.message)];
    case 'custom':
      return [custom(issue, place)];
    default:
      return [outOfBounds(place, issue.message)];
  }
}

const outOfBounds = ({ at, found }: Place, accepted: string) => fault('DOSSIER_VALUE', at, show(found), accepted);

function unknownKeys(keys: readonly string[], { value, schema, path, crowded }: Place): Fault[] {
  const known = keysAt(schema, path, value);
  const accepted = known.join(', ');
  return keys.map((key) => {
    const hint = crowded ? undefined : perhaps(key, known);
    return fault('DOSSIER_KEY_UNKNOWN', pointer([...path, key]), `the key "${key}"`, accepted, hint);
  });
}

function custom(issue: Extract<Issue, { code: 'custom' }>, place: Place): Fault {
  const known = issue.params?.quantityFault as QuantityFault | undefined;
  if (known === undefined) return notAccepted(place, issue.message);
  return fault(known.code, place.at, `"${String(issue.params?.text)}"`, known.accepted.join(', '), known.hint);
}

/** The fault of a value that is absent, or of a kind that is not accepted. */
function notAccepted({ value, schema, path, at, found }: Place, accepted: string): Fault {
  const here = schemasAt(schema, path, value);
  const said = here.map((inner) => ACCEPTS.get(required(inner))).find((words) => words !== undefined);
  const wanted = said?.accepted ?? accepted;
  if (found === undefined) return missing(at, wanted, said);
  if (found === null && here.some(isOptional)) {
    return fault('DOSSIER_TYPE', at, show(found), wanted, 'Leave the key out where nothing is known.');
  }
  if (typeof found === 'number' && said?.unit !== undefined) {
    const hint =
      said.unit === '1'
        ? `Write a text: "${found}".`
        : `Write a text with its unit: "${found} ${said.unit}", if ${said.unit} is meant.`;
    return fault('DOSSIER_TYPE', at, show(found), wanted, hint);
  }
  return fault('DOSSIER_TYPE', at, show(found), wanted);
}

function missing(at: string, wanted: string, said: Accepts | undefined): Fault {
  const todo = said?.how === undefined ? undefined : `Add it. ${said.how}`;
  return fault('DOSSIER_KEY_MISSING', at, 'nothing', wanted, todo);
}

function notOneOf(place: Place, values: readonly string[]): Fault {
  const { at, found, path, crowded } = place;
  const accepted = values.join(', ');
  if (found === undefined) return missing(at, accepted, undefined);
  if (path.length === 1 && path[0] === 'format') return fault('DOSSIER_FORMAT', at, show(found), accepted);
  return fault('DOSSIER_VALUE', at, show(found), accepted, crowded ? undefined : perhaps(found, values));
}

/** Of a union only the branch that fits the kind of value speaks; the others would confuse. */
function faultsOfUnion(issue: z.core.$ZodIssueInvalidUnion, place: Place): Fault[] {
  const { value, schema, path, at, found } = place;
  if ('options' in issue && Array.isArray(issue.options)) return [notOneOf(place, issue.options.map(String))];
  const isObject = typeof found === 'object' && found !== null && !Array.isArray(found);
  const branch = isObject ? issue.errors.find((issues) => !issues.some(isOtherKind)) : undefined;
  if (branch === undefined) return [notAccepted(place, 'another kind of value')];
  const wrongKind = branch.find((inner) => inner.code === 'invalid_value' && inner.path[0] === 'kind');
  const kind = valueAt(found, ['kind']);
  if (wrongKind?.code === 'invalid_value' && typeof kind === 'string' && Object.hasOwn(PART_SCHEMAS, kind)) {
    return [fault('PART_KIND', `${at}/kind`, aKind(kind), aKind(wrongKind.values.join(', ')))];
  }
  return branch.flatMap((inner) => faultsOfIssue(inner, value, schema, path, place.crowded));
}

const isOtherKind = (issue: Issue) => issue.path.length === 0 && issue.code === 'invalid_type';

function words(expected: string): string {
  const articles: Record<string, string> = {
    string: 'a text in double quotes',
    number: 'a number',
    int: 'a whole number',
    boolean: 'true or false',
    object: 'an object { … }',
    array: 'a list [ … ]',
  };
  return articles[expected] ?? expected;
}

function boundText(origin: string, bound: number | bigint, excluded: boolean, end: 'least' | 'most'): string {
  if (origin === 'string' || origin === 'array') {
    const unit = origin === 'string' ? 'character' : 'value';
    return `at ${end} ${bound} ${unit}${Number(bound) === 1 ? '' : 's'}`;
  }
  if (end === 'least') return excluded ? `a number above ${bound}` : `a number from ${bound}`;
  return excluded ? `a number below ${bound}` : `a number up to ${bound}`;
}
