/** The published JSON Schemas, and a way to look into them. */
import { dossierJsonSchema, shelfJsonSchema } from '@longrein/engineering';
import type { Page } from '../tree.ts';

export function schemas(): Page[] {
  const text = (schema: object): string => `${JSON.stringify(schema, null, 1)}\n`;
  return [
    { path: 'docs/dossier.schema.json', text: text(dossierJsonSchema()) },
    { path: 'docs/shelf.schema.json', text: text(shelfJsonSchema()) },
  ];
}

/** The part of JSON Schema that is looked at here. */
export interface Node {
  readonly $ref?: string;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly format?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
}

/** A key of an object in the file. */
export interface Key {
  readonly name: string;
  readonly required: boolean;
  readonly node: Node;
}

/** Looks up the keys of the object at a place such as '/donor/axles/*'; rivals of a choice are taken together. */
function keysOf(root: object): (place: string) => readonly Key[] {
  const top = root as Node;
  const follow = (node: Node): Node => {
    if (node.$ref === undefined) return node;
    const path = node.$ref.replace(/^#\/?/, '').split('/').filter(Boolean);
    return follow(path.reduce((at: unknown, key) => (at as Record<string, unknown>)[key], top) as Node);
  };
  /** A node and whatever it may be instead. */
  const rivals = (node: Node): Node[] => {
    const here = follow(node);
    return [here, ...[...(here.anyOf ?? []), ...(here.oneOf ?? [])].flatMap(rivals)];
  };
  const step = (nodes: readonly Node[], name: string): Node[] =>
    nodes.flatMap(rivals).flatMap((node) => (name === '*' ? (node.items ?? []) : (node.properties?.[name] ?? [])));
  return (place) => {
    const names = place.split('/').filter(Boolean);
    const objects = names
      .reduce((nodes, name) => step(nodes, name), [top])
      .flatMap(rivals)
      .filter((node) => node.properties !== undefined);
    if (objects.length === 0) throw new Error(`the schema has no object at ${place}`);
    const keys = new Map<string, Key>();
    for (const { properties = {}, required = [] } of objects) {
      for (const [name, node] of Object.entries(properties)) {
        const before = keys.get(name);
        const needed =
          required.includes(name) && (before?.required ?? objects.every((o) => o.required?.includes(name)));
        keys.set(name, { name, required: needed, node: before?.node ?? follow(node) });
      }
    }
    return [...keys.values()];
  };
}

export const dossierKeys = keysOf(dossierJsonSchema());
