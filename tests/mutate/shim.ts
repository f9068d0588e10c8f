/**
 * Stands in for the test framework while mutants are tried: thousands of runs of a few tests each, in one process, where
 * starting the framework would cost more than the tests. Only what the tests of the engine use; anything else throws.
 */
import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect'
import * as chai from 'chai'

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)

export const expect = chai.expect as unknown as typeof import('vitest')['expect']

type Work = () => unknown

export interface Found {
  /** File, number and name: the same in every run. */
  readonly id: string
  readonly name: string
  run(): Promise<void>
}

export const found: Found[] = []

interface Suite {
  readonly name: string
  readonly each: readonly Work[]
  readonly own: Work[]
}

let file = ''
let suites: Suite[] = []
let number = 0

/** Loads a file of tests; what it says of tests is found under its name. */
export async function collect(name: string, load: () => Promise<unknown>): Promise<void> {
  file = name
  number = 0
  suites = [{ name: '', each: [], own: [] }]
  await load()
}

const workOf = (rest: readonly unknown[]): Work =>
  (rest.find((one) => typeof one === 'function') as Work | undefined) ?? (() => undefined)

export function test(name: string, ...rest: readonly unknown[]): void {
  const work = workOf(rest)
  const around = [...suites]
  const whole = [...around.map((one) => one.name), name].join(' › ')
  found.push({
    id: `${file}#${number++} ${whole}`,
    name: whole,
    async run() {
      for (const suite of around) for (const before of suite.own) await before()
      await work()
    },
  })
}

export function describe(name: string, ...rest: readonly unknown[]): void {
  suites.push({ name, each: [], own: [] })
  workOf(rest)()
  suites.pop()
}

export const beforeEach = (work: Work): void => void suites.at(-1)?.own.push(work)
/** Once is not enough where each test runs alone. */
export const beforeAll = beforeEach
export const afterAll = (): void => undefined
export const afterEach = (): void => undefined

type Each = (table: readonly unknown[]) => (name: string, ...rest: readonly unknown[]) => void

const each =
  (what: (name: string, work: Work) => void): Each =>
  (table) =>
  (name, ...rest) => {
    const work = workOf(rest) as (...row: unknown[]) => unknown
    table.forEach((row, index) => {
      const cells = Array.isArray(row) ? row : [row]
      what(`${name} (${index + 1}, ${calledOf(cells[0])})`, () => work(...cells))
    })
  }

/** What a row of a table is called after: its first cell, or its `name`. */
function calledOf(first: unknown): string {
  if (typeof first === 'object' && first !== null && 'name' in first) return String(first.name)
  return typeof first === 'string' ? first : ''
}

test.each = each(test)
describe.each = each(describe)
export const it = test
