/**
 * Goal: what is installed is what was tried, and every package says on one screen what lives in it.
 * Method: reads the package files, the lock and the READMEs.
 */
import { describe, expect, it } from 'vitest';
import { files, read, tracked } from '../../scripts/tree.ts';

const LONGEST_README = 60;
const HEADINGS = ['## What lives here', '## What may not', '## Read first', '## Example'];

interface Package {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly sideEffects?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

const manifests = files(/^(?:packages\/[^/]+\/)?package\.json$/).map(({ path, text }) => ({
  path,
  folder: path.replace(/\/?package\.json$/, ''),
  content: JSON.parse(text) as Package,
}));
const packages = manifests.filter(({ folder }) => folder !== '');

/** A version that names one release: digits only, or an alias to such a version. */
const isPinned = (version: string): boolean =>
  /^(?:npm:(?:@[\w.-]+\/)?[\w.-]+@)?\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version);

describe('a pin', () => {
  it.each(['1.2.3', '0.1.0-rc.1', 'npm:typescript@7.0.2'])('is %s', (version) => {
    expect(isPinned(version)).toBe(true);
  });

  it.each(['^1.2.3', '~1.2.3', '1.2', '*', 'latest', '>=1.2.3', 'npm:typescript@7', 'file:../a', ''])(
    'is not %j',
    (version) => {
      expect(isPinned(version)).toBe(false);
    },
  );
});

describe.each(manifests)('$path', ({ content }) => {
  it('pins every dependency to one release', () => {
    const all = { ...content.dependencies, ...content.devDependencies, ...content.optionalDependencies };
    expect(Object.entries(all).filter(([, version]) => !isPinned(version))).toEqual([]);
  });

  it('has the licence and the version of the house', () => {
    const house = JSON.parse(read('package.json')) as Package;
    expect([content.license, content.version]).toEqual([house.license, house.version]);
  });
});

describe('the lock', () => {
  it('has the pinned version of every dependency', () => {
    const { packages: locked } = JSON.parse(read('package-lock.json')) as {
      readonly packages: Readonly<Record<string, Package>>;
    };
    const part = ({ dependencies, devDependencies }: Package): object => ({ dependencies, devDependencies });
    for (const { folder, content } of manifests) {
      const written = JSON.stringify(part(locked[folder] ?? content));
      expect(JSON.parse(written)).toEqual(
        JSON.parse(JSON.stringify(part(content), (_key, value) => (isEmpty(value) ? undefined : value))),
      );
    }
  });
});

const isEmpty = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0;

describe.each(packages)('the README of $folder', ({ folder }) => {
  const path = `${folder}/README.md`;
  const readme = tracked.includes(path) ? read(path) : '';

  it('is there, named after the package', () => {
    expect(readme).toMatch(/^# @longrein\/[a-z]+\n/);
  });

  it(`fits on one screen of ${LONGEST_README} lines`, () => {
    expect(readme.trimEnd().split('\n').length).toBeLessThanOrEqual(LONGEST_README);
  });

  it('says what lives there, what may not, what to read first, and gives an example', () => {
    const headings = readme.match(/^## .*$/gm) ?? [];
    expect(headings.filter((heading) => HEADINGS.includes(heading))).toEqual(HEADINGS);
  });
});
