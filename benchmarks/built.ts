/**
 * The house as it is shipped. Benchmarks time what `npm run build` made, because running the sources directly adds the
 * cost of translating them on the way.
 */
export {
  builtInShelf,
  type CaseInput,
  drawCases,
  parseQuantity,
  type Reckoning,
  type Ref,
  readDossier,
  reckon,
  resolve,
  type SumResult,
  stream,
  type Vehicle,
} from '../packages/engineering/dist/index.js';
export { workOut } from '../packages/engineering/dist/reckoning/study.js';
export { CHEMISTRY_FACTS, MAGNET_COEFFICIENT } from '../packages/laws/dist/index.js';
