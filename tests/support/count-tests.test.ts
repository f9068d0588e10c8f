import { expect, test } from 'vitest'
import { countTests } from './count-tests.ts'

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((one) => ({ status: one, fullName: `a ${one} test` })),
})

test('passed and failed tests are counted over all files', () => {
  const report = { testResults: [file('passed', 'passed', 'passed'), file('failed', 'passed', 'failed')] }
  expect(countTests(report)).toEqual({ passed: 3, failed: 1, notRun: [] })
})

test('a skipped or unwritten test is a failure, and named', () => {
  const report = { testResults: [file('passed', 'passed', 'skipped', 'todo')] }
  expect(countTests(report)).toEqual({ passed: 1, failed: 2, notRun: ['a skipped test', 'a todo test'] })
})

test('a file that broke before its first test is a failure', () => {
  expect(countTests({ testResults: [file('failed')] })).toEqual({ passed: 0, failed: 1, notRun: [] })
})

test('a file whose tests passed but whose clean-up failed is a failure', () => {
  expect(countTests({ testResults: [file('failed', 'passed')] })).toEqual({
    passed: 1,
    failed: 1,
    notRun: [],
  })
})
