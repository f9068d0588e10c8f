/** What a run comes to. */
export interface Count {
  readonly passed: number
  readonly failed: number
  /** Names of the tests that did not run; they are among the failed. */
  readonly notRun: readonly string[]
}

/** What is read of vitest's JSON report. */
export interface Report {
  readonly testResults: readonly {
    readonly status: string
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[]
  }[]
}

/**
 * Counts the tests of a run. Whatever did not pass has failed: a skipped or unwritten test, which nobody
 * would miss otherwise, and a file that broke before it came to its first test.
 *
 * @example
 * countTests({ testResults: [{ status: 'passed', assertionResults: [{ status: 'passed', fullName: 'it adds' }] }] })
 * // { passed: 1, failed: 0, notRun: [] }
 */
export function countTests(report: Report): Count {
  const notRun: string[] = []
  let passed = 0
  let failed = 0
  for (const file of report.testResults) {
    const bad = file.assertionResults.filter((test) => test.status !== 'passed')
    passed += file.assertionResults.length - bad.length
    failed += file.status !== 'passed' && bad.length === 0 ? 1 : bad.length
    notRun.push(...bad.filter((test) => test.status !== 'failed').map((test) => test.fullName))
  }
  return { passed, failed, notRun }
}
