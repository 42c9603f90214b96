/**
 * Goal: the closing line of a run tells the truth, and a run that tested nothing cannot look like a pass.
 * Method: reports as the runner writes them, changed in one respect each.
 */
import { describe, expect, it } from 'vitest';
import { countSteps, countTests, summary } from '../../scripts/count.ts';

const report = (change: object = {}): string =>
  JSON.stringify({
    numPassedTests: 5,
    numFailedTests: 0,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults: [{ name: '/a.test.ts' }],
    ...change,
  });
const written = ['/a.test.ts'];

describe('the closing line', () => {
  it('adds steps and tests', () => {
    const { line, good } = summary([countSteps([true, true]), countTests(report(), true, written)], true);
    expect(line).toBe('7 passed, 0 failed');
    expect(good).toBe(true);
  });

  it('counts a failed step and a failed test', () => {
    const failing = countTests(report({ numPassedTests: 3, numFailedTests: 2 }), false, written);
    const { line, good } = summary([countSteps([true, false]), failing], true);
    expect(line).toBe('4 passed, 3 failed');
    expect(good).toBe(false);
  });

  it('names skipped tests, and refuses them where every test must run', () => {
    const skipping = countTests(report({ numPendingTests: 1, numTodoTests: 1 }), true, written);
    expect(summary([skipping], false)).toMatchObject({ line: '5 passed, 0 failed, 2 skipped', good: true });
    expect(summary([skipping], true)).toMatchObject({ line: '5 passed, 0 failed, 2 skipped', good: false });
  });
});

describe('a silent pass', () => {
  it.each([
    ['no report is left', countTests(undefined, true, written)],
    ['no test is run', countTests(report({ numPassedTests: 0 }), true, written)],
    ['a test file is not run', countTests(report(), true, [...written, '/b.test.ts'])],
    ['the runner fails outside its tests', countTests(report(), false, written)],
  ])('is a failure when %s', (_case, count) => {
    expect(count.failed).toBe(1);
    expect(count.reasons).toHaveLength(1);
    expect(summary([count], true).good).toBe(false);
  });

  it('is a failure when nothing at all is counted', () => {
    expect(summary([], true).good).toBe(false);
  });
});
