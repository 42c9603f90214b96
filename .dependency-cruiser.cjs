/**
 * The arrows of the house: who may import whom, and why. `npm run arrows` holds them; `tests/house/arrows.test.ts`
 * plants one violation of every rule and sees it caught. Type imports count as imports.
 */

/** What each package may import of ours, and why no more. */
const PACKAGES = {
  laws: [[], 'A law is a published relation: it stands on nothing of ours, so that anything may stand on it.'],
  wire: [[], 'Records outlive programs: the record formats must not follow what a program happens to look like.'],
  formats: [[], 'A file format knows no vehicle: it turns plain data into bytes and back.'],
  dynamics: [['laws'], 'The vehicle in time is laws and plain parameters; it runs where no dossier is.'],
  guard: [['laws', 'wire'], 'The guard is read in one sitting: limits in, allowed motion out, nothing else in reach.'],
  engineering: [
    ['laws', 'wire', 'dynamics', 'guard'],
    'What is true of a vehicle must not depend on who asks (a command, a page, a station).',
  ],
  onboard: [
    ['laws', 'wire', 'dynamics', 'guard'],
    'The limits record is computed before the drive: engineering on board would ride into the vehicle’s memory.',
  ],
  station: [['engineering', 'wire'], 'The station knows vehicles by their records, never by their insides.'],
};

/** What each folder of engineering may import of its neighbours and of other packages, and why no more. */
const FOLDERS = {
  quantity: [
    ['packages/laws/src/(check|index)\\.ts$'],
    'A quantity is a value with its doubt: it knows units and the check harness, but no vehicle, law or record.',
  ],
  dossier: [
    ['packages/engineering/src/quantity/', 'packages/laws/'],
    'A dossier says what the maker knows; what follows from it is the reckoning’s affair.',
  ],
  reckoning: [
    ['packages/engineering/src/(quantity|dossier)/', 'packages/(laws|wire)/'],
    'Sums and findings read a dossier and give records; sheets, outings and hours read them, not the other way.',
  ],
};

const TESTS = '\\.test\\.ts$';
/** Files that put parts together; only they and tests may read a barrel of their own package. */
const ENTRIES = '/(index|book|main)\\.ts$';
const PURE = '^packages/(laws|wire|formats|dynamics|guard|engineering)/src/|^packages/[^/]+/src/core/';

const packageRules = Object.entries(PACKAGES).map(([name, [may, comment]]) => ({
  name: `${name}-imports-${may.length === 0 ? 'nothing-of-ours' : `only-${may.join('-')}`}`,
  comment,
  severity: 'error',
  from: { path: `^packages/${name}/` },
  to: { path: '^packages/', pathNot: `^packages/(${[name, ...may].join('|')})/` },
}));

const folderRules = Object.entries(FOLDERS).map(([name, [may, comment]]) => ({
  name: `engineering-${name}-keeps-to-its-place`,
  comment,
  severity: 'error',
  from: { path: `^packages/engineering/src/${name}/`, pathNot: TESTS },
  to: { path: '^packages/', pathNot: [`^packages/engineering/src/${name}/`, ...may.map((path) => `^${path}`)] },
}));

module.exports = {
  forbidden: [
    ...packageRules,
    ...folderRules,
    {
      name: 'no-cycle',
      comment: 'Parts that import each other can be neither read nor replaced one at a time.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'pure-uses-no-node-built-in',
      comment: 'Pure code does no I/O and runs in a browser too: take the data as an argument.',
      severity: 'error',
      from: { path: PURE, pathNot: TESTS },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'laws-and-guard-use-no-library',
      comment: 'A law and the guard are read to the last line: no foreign code decides in them.',
      severity: 'error',
      from: { path: '^packages/(laws|guard)/src/', pathNot: [TESTS, '\\.checks\\.ts$'] },
      to: { path: 'node_modules/' },
    },
    {
      name: 'no-own-barrel-inside',
      comment: 'A barrel read from inside its package makes cycles and hides where a thing lives: import the file.',
      severity: 'error',
      from: { path: '^packages/([^/]+)/src/', pathNot: [TESTS, ENTRIES] },
      to: { path: ['^packages/$1/src/index\\.ts$', '^packages/$1/src/.+/index\\.ts$'] },
    },
    {
      name: 'packages-by-name',
      comment: 'Another package is imported by its name: its exports say what is public.',
      severity: 'error',
      from: { path: '^packages/([^/]+)/' },
      to: { path: '^packages/', pathNot: '^packages/$1/', dependencyTypesNot: ['aliased-workspace'] },
    },
    {
      name: 'shipped-imports-no-tests',
      comment: 'Code in service does not lean on tests, scripts or benchmarks.',
      severity: 'error',
      from: { path: '^packages/', pathNot: TESTS },
      to: { path: `${TESTS}|^(tests|scripts|benchmarks)/` },
    },
    {
      name: 'shipped-imports-no-checks',
      comment: 'Checks are gathered by book.ts; a law that reads its own check would agree with itself.',
      severity: 'error',
      from: { path: '^packages/', pathNot: [TESTS, '\\.checks\\.ts$', '/book\\.ts$'] },
      to: { path: '\\.checks\\.ts$' },
    },
    {
      name: 'shipped-uses-only-its-dependencies',
      comment: 'A development tool is not there in service: list it as a dependency of the package or do without.',
      severity: 'error',
      from: { path: '^packages/', pathNot: [TESTS, '\\.checks\\.ts$'] },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['npm'] },
    },
    {
      name: 'everything-resolves',
      comment: 'An import that is not found is an arrow that is not seen.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['longrein-src', 'import', 'node', 'types', 'default'],
    },
  },
};
