// Counts passed and failed tests in the reports that the test runners write.

/**
 * Of a report in Vitest's JSON. A test that is skipped or not written yet counts as failed, and so does a file that
 * could not be loaded.
 */
export function countVitest(report) {
  let passed = 0;
  let failed = 0;
  for (const file of report.testResults) {
    const ran = file.assertionResults;
    if (file.status === 'failed' && !ran.some((test) => test.status === 'failed')) failed++;
    for (const test of ran) {
      if (test.status === 'passed') passed++;
      else failed++;
    }
  }
  return { passed, failed };
}

/** Of a report in Playwright's JSON, by the same rules; a test that passed only on a second try counts as failed. */
export function countPlaywright(report) {
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + skipped + report.errors.length };
}

/** What a stage counts for: a runner that fails, or runs nothing, is never counted as a success. */
export function settle({ passed, failed }, code) {
  return failed === 0 && (code !== 0 || passed === 0) ? { passed, failed: 1 } : { passed, failed };
}
