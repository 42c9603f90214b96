/** Counts what ran, from the runner's own report, and words the closing line. */

/** How many passed, failed and were skipped, and anything else that must be said. */
export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  readonly reasons: readonly string[];
}

/** The part of the test runner's JSON report that is used here. */
interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly { readonly name: string }[];
}

/** Each step counts once. */
export function countSteps(steps: readonly boolean[]): Count {
  const passed = steps.filter((step) => step).length;
  return { passed, failed: steps.length - passed, skipped: 0, reasons: [] };
}

/**
 * Counts the tests. A fault that belongs to no test (no report, no test, a file that was not run, a runner that failed
 * with every test passed) counts as one failure each, so that a silent pass is impossible.
 * @param text     the JSON report, if there is one
 * @param passed   whether the runner itself was content
 * @param written  absolute paths of every test file there is
 */
export function countTests(text: string | undefined, passed: boolean, written: readonly string[]): Count {
  if (text === undefined) return { passed: 0, failed: 1, skipped: 0, reasons: ['The tests left no report.'] };
  const report = JSON.parse(text) as Report;
  const ran = new Set(report.testResults.map((result) => result.name));
  const reasons = written.filter((path) => !ran.has(path)).map((path) => `${path} was not run.`);
  if (report.numPassedTests + report.numFailedTests === 0) reasons.push('No test was run.');
  if (!passed && report.numFailedTests === 0) reasons.push('The test runner failed outside its tests.');
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + reasons.length,
    skipped: report.numPendingTests + report.numTodoTests,
    reasons,
  };
}

/**
 * Adds the counts up.
 * @param strict  whether a skipped test is a failure, as on a build machine
 * @returns       the closing line, whether all is good, and what must be said before it
 */
export function summary(
  counts: readonly Count[],
  strict: boolean,
): { readonly line: string; readonly good: boolean; readonly reasons: readonly string[] } {
  const sum = (key: 'passed' | 'failed' | 'skipped'): number => counts.reduce((total, count) => total + count[key], 0);
  const [passed, failed, skipped] = [sum('passed'), sum('failed'), sum('skipped')];
  const reasons = counts.flatMap((count) => count.reasons);
  const forbidden = strict && skipped > 0;
  if (forbidden) reasons.push(`${skipped} tests were skipped; here every test must run.`);
  const line = `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
  return { line, good: passed > 0 && failed === 0 && !forbidden, reasons };
}
