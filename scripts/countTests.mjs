// Counts the tests of a run by vitest's JSON report, so that nothing is lost without a word.

/**
 * Passed and failed tests, and remarks on what else counts as failed: skipped tests, files that could not be read,
 * a report that is not there, and a run that failed although all its tests passed.
 */
export function countTests(report, status) {
  if (report === null) return { passed: 0, failed: 1, remarks: ['The tests left no report.'] };
  const { numPassedTests: passed, numFailedTests, numPendingTests, numTodoTests, testResults } = report;
  const without = testResults.flatMap(({ assertionResults }) => assertionResults).filter(lacksProgram);
  const skipped = numPendingTests + numTodoTests - without.length;
  const unread = testResults
    .filter(({ status: of, assertionResults }) => of === 'failed' && !assertionResults.some(isFailed))
    .map(({ name }) => name);
  const failed = numFailedTests + skipped + unread.length;
  const remarks = [
    ...(skipped > 0 ? [`${skipped} tests were skipped; none may be.`] : []),
    ...without.map(({ title }) => `Not asked, since the program is not there: ${title}.`),
    ...unread.map((name) => `${name} failed outside its tests.`),
  ];
  if (failed === 0 && status !== 0)
    return { passed, failed: 1, remarks: ['All tests passed, but the run failed: see above.'] };
  if (failed === 0 && passed === 0) return { passed, failed: 1, remarks: ['There were no tests.'] };
  return { passed, failed, remarks };
}

/** An outside program that a machine need not have: its test names it, and is told, and does not count. */
function lacksProgram({ status, title }) {
  return status !== 'passed' && status !== 'failed' && /\(where \S+ is installed\)$/.test(title);
}

function isFailed({ status }) {
  return status === 'failed';
}
