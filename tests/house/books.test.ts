/**
 * Goal: no check is written and then forgotten.
 * Method: every file of checks must be gathered by the book of its folder, and every such book by the package's book.
 */
import { posix } from 'node:path';
import { expect, it } from 'vitest';
import { files, read, tracked } from '../../scripts/tree.ts';

const checks = files(/^packages\/[^/]+\/src\/.*\.checks\.ts$/).map((page) => page.path);
const books = files(/^packages\/[^/]+\/src\/.+\/book\.ts$/).map((page) => page.path);

/** Does one file import another, and do so for its values? */
function imports(from: string, to: string): boolean {
  if (!tracked.includes(from)) return false;
  const relative = posix.relative(posix.dirname(from), to);
  const specifier = relative.startsWith('.') ? relative : `./${relative}`;
  return new RegExp(`^import (?!type\\b)[^;]*from '${specifier.replaceAll('.', '\\.')}'`, 'm').test(read(from));
}

it.each(checks)('%s is in the book of its folder', (path) => {
  expect(imports(posix.join(posix.dirname(path), 'book.ts'), path)).toBe(true);
});

it.each(books)('%s is in the book of its package', (path) => {
  const root = path.split('/').slice(0, 3).join('/');
  const above = posix.join(posix.dirname(posix.dirname(path)), 'book.ts');
  expect(imports(`${root}/book.ts`, path) || imports(above, path)).toBe(true);
});
