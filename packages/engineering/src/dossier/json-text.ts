/**
 * JSON text (RFC 8259, nothing more lenient) into values that remember where they stood. Written here because a fault in
 * a dossier must be placed and worded, and because hostile nesting must end at a limit and not at the end of the stack.
 */
import { type SyntaxFault, unexpected } from './json-words.ts';

/** Deepest nesting read; a dossier needs eight levels. */
export const DEPTH_MAX = 40;

/** A value with its place. */
export interface JsonNode {
  /** Where the value begins or, for a member of an object, its key. */
  readonly offset: number;
  readonly value: unknown;
  readonly members?: ReadonlyMap<string, JsonNode>;
  readonly items?: readonly JsonNode[];
}

/** Something JSON allows and no dossier may hold. */
export interface Oddity {
  readonly kind: 'key twice' | 'not finite' | 'not text';
  readonly path: readonly string[];
  readonly offset: number;
  readonly found: string;
}

export type JsonReading =
  | { readonly ok: true; readonly root: JsonNode; readonly oddities: readonly Oddity[]; readonly more: number }
  | { readonly ok: false; readonly fault: SyntaxFault; readonly path: readonly string[] };

/**
 * Reads a JSON text.
 * @param text        without a byte order mark
 * @param odditiesMax oddities beyond this many are only counted, in `more`
 */
export function parseJson(text: string, odditiesMax: number): JsonReading {
  const reader = new Reader(text, odditiesMax);
  try {
    const root = reader.document();
    return { ok: true, root, oddities: reader.oddities, more: reader.more };
  } catch (error) {
    if (error instanceof Unexpected) return { ok: false, fault: error.fault, path: reader.path };
    throw error;
  }
}

/** Unwinds the reader at the first fault of the text; never leaves this file. */
class Unexpected extends Error {
  readonly fault: SyntaxFault;
  constructor(fault: SyntaxFault) {
    super(fault.found);
    this.fault = fault;
  }
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const HEX = /[\dA-Fa-f]{4}/y;
const ESCAPES: Readonly<Record<string, string>> = {
  '"': '"',
  '\\': '\\',
  '/': '/',
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};
const WORDS: readonly (readonly [string, unknown])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
];
/** Halves of characters, and control characters that would act on a terminal; tab and line breaks are harmless. */
const NOT_TEXT = /(?![\t\n\r])[\p{Cc}\p{Cs}]/u;

class Reader {
  readonly oddities: Oddity[] = [];
  more = 0;
  /** Keys and indices down to the value that is being read. */
  readonly path: string[] = [];
  private readonly text: string;
  private readonly odditiesMax: number;
  private at = 0;

  constructor(text: string, odditiesMax: number) {
    this.text = text;
    this.odditiesMax = odditiesMax;
  }

  document(): JsonNode {
    this.blank();
    if (this.at >= this.text.length) this.fail('document');
    const root = this.value(this.at);
    this.blank();
    if (this.at < this.text.length) this.fail('end');
    return root;
  }

  private value(offset: number): JsonNode {
    const c = this.text[this.at];
    if (c === '{') return this.nested(() => this.object(offset));
    if (c === '[') return this.nested(() => this.list(offset));
    if (c === '"') {
      const from = this.at;
      return { offset, value: this.checked(this.string(), from) };
    }
    for (const [word, value] of WORDS) {
      if (!this.text.startsWith(word, this.at)) continue;
      this.at += word.length;
      return { offset, value };
    }
    return { offset, value: this.number() };
  }

  private nested(read: () => JsonNode): JsonNode {
    if (this.path.length >= DEPTH_MAX) this.fail('depth');
    this.at++;
    this.blank();
    return read();
  }

  private object(offset: number): JsonNode {
    const members = new Map<string, JsonNode>();
    while (this.text[this.at] !== '}') {
      if (members.size > 0) this.comma('}', 'key after comma');
      const keyAt = this.at;
      if (this.text[this.at] !== '"') this.fail('key');
      const key = this.string();
      this.path.push(key);
      this.checked(key, keyAt);
      if (members.has(key)) this.odd('key twice', keyAt, 'this key a second time');
      this.blank();
      if (this.text[this.at] !== ':') this.fail('colon');
      this.at++;
      this.blank();
      members.set(key, this.value(keyAt));
      this.path.pop();
      this.blank();
    }
    this.at++;
    return { offset, members, value: Object.fromEntries([...members].map(([key, node]) => [key, node.value])) };
  }

  private list(offset: number): JsonNode {
    const items: JsonNode[] = [];
    while (this.text[this.at] !== ']') {
      if (items.length > 0) this.comma(']', 'value after comma');
      this.path.push(String(items.length));
      items.push(this.value(this.at));
      this.path.pop();
      this.blank();
    }
    this.at++;
    return { offset, items, value: items.map((node) => node.value) };
  }

  /** Takes the comma between two members; what follows it must not close the object or list. */
  private comma(closer: string, after: 'key after comma' | 'value after comma'): void {
    if (this.text[this.at] !== ',') this.fail(closer === '}' ? 'comma in object' : 'comma in list');
    this.at++;
    this.blank();
    if (this.text[this.at] === closer) this.fail(after);
  }

  private number(): number {
    const from = this.at;
    NUMBER.lastIndex = from;
    const digits = NUMBER.exec(this.text)?.[0] ?? '';
    if (digits === '') this.fail(/[-+.\d]/.test(this.text[from] ?? '') ? 'number' : 'value');
    this.at += digits.length;
    if (/[\w.+-]/.test(this.text[this.at] ?? ' ')) {
      this.at = from;
      this.fail('number');
    }
    const number = Number(digits);
    if (!Number.isFinite(number)) this.odd('not finite', from, digits);
    return number;
  }

  private string(): string {
    this.at++;
    const pieces: string[] = [];
    let plain = this.at;
    for (;;) {
      const c = this.text[this.at];
      if (c === undefined) this.fail('string end');
      if (c < ' ') this.fail('control');
      if (c === '"') break;
      if (c === '\\') {
        pieces.push(this.text.slice(plain, this.at), this.escape());
        plain = this.at;
      } else this.at++;
    }
    return pieces.join('') + this.text.slice(plain, this.at++);
  }

  private checked(string: string, offset: number): string {
    const odd = NOT_TEXT.exec(string)?.[0];
    if (odd !== undefined) this.odd('not text', offset, odd);
    return string;
  }

  private escape(): string {
    const letter = this.text[this.at + 1] ?? '';
    HEX.lastIndex = this.at + 2;
    const hex = letter === 'u' ? HEX.exec(this.text)?.[0] : undefined;
    const character = hex === undefined ? ESCAPES[letter] : String.fromCharCode(Number.parseInt(hex, 16));
    if (character === undefined || !(hex || Object.hasOwn(ESCAPES, letter))) this.fail('escape');
    this.at += hex === undefined ? 2 : 6;
    return character;
  }

  private blank(): void {
    while (/[ \t\n\r]/.test(this.text[this.at] ?? 'x')) this.at++;
  }

  private odd(kind: Oddity['kind'], offset: number, found: string): void {
    if (this.oddities.length >= this.odditiesMax) this.more++;
    else this.oddities.push({ kind, path: [...this.path], offset, found });
  }

  private fail(wanted: Parameters<typeof unexpected>[2]): never {
    throw new Unexpected(unexpected(this.text, this.at, wanted));
  }
}
