/** What is true of a vehicle: quantities, dossier, sums, findings, limits. Pure: no clock, no I/O. */
export { CHEMISTRIES } from '@longrein/laws';
export { statedAsExact } from './dossier/exact.ts';
export type { Behaviour, QuantityFacts } from './dossier/facts/facts.ts';
export { INPUT_IDS, type InputId, QUANTITIES, type QuantityId, quantityOf } from './dossier/facts/quantities.ts';
export { ERROR_CODES, type ErrorCode, type Fault, wordFault } from './dossier/faults.ts';
export { formatDossier } from './dossier/format.ts';
export { type Reading, readDossier, readShelfFile } from './dossier/read.ts';
export { type Input, type Layout, type Origin, resolve, type Vehicle } from './dossier/resolve.ts';
export { DOSSIER_FORMAT, type Dossier, dossierSchema, type WrittenDossier } from './dossier/schema/dossier.ts';
export { dossierJsonSchema, type JsonSchema, shelfJsonSchema } from './dossier/schema/json-schema.ts';
export { PART_KINDS, type Part, type PartKind, type PartOf, type WrittenPart } from './dossier/schema/parts.ts';
export { BUILT_IN_PARTS, builtInShelf } from './dossier/shelf/built-in.ts';
export { makeShelf, partsOf, type Shelf } from './dossier/shelf/shelf.ts';
export { SURFACE_NAMES } from './dossier/surfaces.ts';
export * from './quantity/index.ts';
export {
  type Explanation,
  explainFinding,
  explainSum,
  type FindingExplanation,
  shownValue,
} from './reckoning/explain.ts';
export { type Finding, HOLDS_FROM, type State, TIGHT_FROM } from './reckoning/finding.ts';
export { FINDINGS, type FindingId } from './reckoning/findings/all.ts';
export { LAWS_VERSION, LimitsMissing, lawsHash, limitsDraft } from './reckoning/limits.ts';
export { type MeasureNext, measureNext, type NextMeasurement } from './reckoning/measure-next.ts';
export { type Decider, type FindingResult, type Reckoning, reckon } from './reckoning/reckon.ts';
export {
  type Report,
  type ReportedFinding,
  type ReportedSum,
  report,
  type Verdict,
  verdictOf,
} from './reckoning/report.ts';
export { CASES_DEFAULT, SEED_DEFAULT, type Study, type StudyOptions, type SumResult } from './reckoning/study.ts';
export type { Constant, Ref, Route, Sum } from './reckoning/sum.ts';
export { SUMS } from './reckoning/sums/all.ts';
export { isSumId, SUBJECTS, SUM_IDS, type Subject, type SumId, subjectOf } from './reckoning/sums/ids.ts';
