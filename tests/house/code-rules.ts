/** House rules that need the syntax tree. */
import ts from 'typescript';
import type { Page } from '../../scripts/tree.ts';
import { type Fault, isCode, isPure, type Rule } from './rule.ts';

const LONGEST_FUNCTION = 70;
const lines = (...all: string[]): string => all.join('\n');

function parse({ path, text }: Page): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
}

const lineAt = (file: ts.SourceFile, position: number): number => file.getLineAndCharacterOfPosition(position).line + 1;

/** Asks every node of a file. */
function walk(page: Page, ask: (node: ts.Node, file: ts.SourceFile) => string | undefined): Fault[] {
  const file = parse(page);
  const faults: Fault[] = [];
  const visit = (node: ts.Node): void => {
    const says = ask(node, file);
    if (says !== undefined) faults.push({ line: lineAt(file, node.getStart(file)), says });
    node.forEachChild(visit);
  };
  visit(file);
  return faults;
}

function impure(node: ts.Node): string | undefined {
  if (node.kind === ts.SyntaxKind.AsyncKeyword)
    return '"async": return the value, or an effect that the rim carries out';
  if (ts.isAwaitExpression(node) || node.kind === ts.SyntaxKind.AwaitKeyword) {
    return '"await": take what is awaited as an argument';
  }
  if (ts.isIdentifier(node) && node.text === 'Promise') return '"Promise": pure code is synchronous: return the value';
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return 'import(): import at the head of the file';
  }
  if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random') {
    return '"Math.random": draw from the generator made from the given seed';
  }
  return undefined;
}

/** A literal that is data all through: no function, so nothing to follow when reading. */
function isTable(node: ts.Node): boolean {
  const isLiteral = ts.isArrayLiteralExpression(node) || ts.isObjectLiteralExpression(node);
  const holdsCode = (child: ts.Node): boolean => ts.isFunctionLike(child) || child.forEachChild(holdsCode) === true;
  return isLiteral && !holdsCode(node);
}

function span(node: ts.Node, file: ts.SourceFile): number {
  return lineAt(file, node.getEnd()) - lineAt(file, node.getStart(file)) + 1;
}

/** Lines of a function without the inner lines of its data tables. */
function length(node: ts.Node, file: ts.SourceFile): number {
  let tables = 0;
  const visit = (child: ts.Node): void => {
    if (isTable(child)) tables += Math.max(0, span(child, file) - 2);
    else child.forEachChild(visit);
  };
  node.forEachChild(visit);
  return span(node, file) - tables;
}

/** The function that gathers tests under a heading is a table of contents, not a function to be read as one. */
function isSuite(node: ts.Node): boolean {
  return ts.isCallExpression(node.parent) && /^describe\b/.test(node.parent.expression.getText());
}

function tooLong(node: ts.Node, file: ts.SourceFile): string | undefined {
  if (!ts.isFunctionLike(node) || !('body' in node) || isSuite(node)) return undefined;
  const count = length(node, file);
  return count > LONGEST_FUNCTION ? `a function of ${count} lines: name its steps` : undefined;
}

function importsLaw(node: ts.Node): string | undefined {
  if (!ts.isImportDeclaration(node) || (node.moduleSpecifier as ts.StringLiteral).text !== '@longrein/laws')
    return undefined;
  const bindings = node.importClause?.namedBindings;
  const names =
    bindings && ts.isNamedImports(bindings) ? bindings.elements.map((e) => (e.propertyName ?? e.name).text) : ['*'];
  const laws = names.filter((name) => !/^[A-Z][A-Z\d_]*$/.test(name));
  return laws.length > 0 ? `${laws.join(', ')}: a quantity knows constants, but no law` : undefined;
}

/** The name and the comment of an exported law, if this is one. */
function lawOf(node: ts.Node): { readonly name: string; readonly comment: string } | undefined {
  if (!ts.isVariableStatement(node)) return undefined;
  const [declared] = node.declarationList.declarations;
  const call = declared?.initializer;
  if (!declared || !call || !ts.isCallExpression(call) || call.expression.getText() !== 'law') return undefined;
  const comments = ts.getJSDocCommentsAndTags(node).map((doc) => doc.getText().replace(/^\/\*\*|\*\/$|^\s*\*/gm, ''));
  return { name: declared.name.getText(), comment: comments.join('\n').trim() };
}

function lawIsUnclear(node: ts.Node): string | undefined {
  const found = lawOf(node);
  if (!found) return undefined;
  const { name, comment } = found;
  if (comment === '') return `${name}: say in one sentence what the law gives`;
  if (!/[.!?)]$/.test(comment)) return `${name}: its comment is a sentence and ends like one`;
  const repeats = /@(?:param|returns?)\b|\bSource:|[\p{L}\d]\s=\s(?!\d[\d.]*(?:e[+-]?\d+)?(?:[\s.,;)]|$))/u.test(
    comment,
  );
  return repeats ? `${name}: its facts stand once, as data; the comment repeats one` : undefined;
}

const sample = (comment: string): string => `${comment}\nexport const stopping = law({ id: 'stopping' }, () => 1);`;

export const codeRules: readonly Rule[] = [
  {
    claim: 'pure code neither waits nor draws by chance',
    covers: isPure,
    faults: (page) => walk(page, impure),
    broken: {
      path: 'packages/laws/src/a.ts',
      text: lines(
        'export const a = async () => 1;',
        'export type B = Promise<number>;',
        'const c = Math.random();',
        'for await (const x of y) x();',
        'const z = await y;',
        "const m = import('./m.ts');",
      ),
      at: [1, 2, 3, 4, 5, 6],
    },
    kept: {
      path: 'packages/laws/src/a.ts',
      text: "// async, await, Promise\nexport const a = 'await Promise' + Math.sqrt(2);",
    },
  },
  {
    claim: `no function has more than ${LONGEST_FUNCTION} lines, its data tables not counted`,
    covers: isCode,
    faults: (page) => walk(page, tooLong),
    broken: { path: 'a.ts', text: `\nfunction a() {${'\n  b();'.repeat(LONGEST_FUNCTION)}\n}`, at: [2] },
    kept: {
      path: 'a.ts',
      text: lines(
        `function a() {${'\n  b();'.repeat(LONGEST_FUNCTION - 2)}\n}`,
        `const table = () => [${'\n  { is: 1 },'.repeat(LONGEST_FUNCTION)}\n];`,
        `describe('a', () => {${'\n  it();'.repeat(LONGEST_FUNCTION)}\n});`,
      ),
    },
  },
  {
    claim: 'a quantity knows no law',
    covers: (path) => /^packages\/engineering\/src\/quantity\/.*(?<!\.test)\.ts$/.test(path),
    faults: (page) => walk(page, importsLaw),
    broken: {
      path: 'packages/engineering/src/quantity/a.ts',
      text: lines(
        "import { copperResistance, GRAVITY } from '@longrein/laws';",
        "import * as laws from '@longrein/laws';",
      ),
      at: [1, 2],
    },
    kept: {
      path: 'packages/engineering/src/quantity/a.ts',
      text: lines(
        "import { ZERO_CELSIUS } from '@longrein/laws';",
        "import { checkSubject } from '@longrein/laws/check';",
      ),
    },
  },
  {
    claim: 'a law says in a sentence what it gives and repeats none of its facts',
    covers: (path) => /^packages\/laws\/src\/.*(?<!\.test)\.ts$/.test(path),
    faults: (page) => walk(page, lawIsUnclear),
    broken: {
      path: 'packages/laws/src/a.ts',
      text: lines(
        sample(''),
        sample('/** stopping distance */'),
        sample('/** Stopping distance, s = v²/(2a). */'),
        sample('/** Stopping distance. Source: a book. */'),
      ),
      at: [2, 4, 6, 8],
    },
    kept: { path: 'packages/laws/src/a.ts', text: sample('/** How far it still goes below Fr = 1e3. */') },
  },
];
