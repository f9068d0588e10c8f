/** The process that tries mutants: loads the tests of a bundle and runs those it is told to, with one mutant on or none. */
import { collect, found } from './shim.ts'

export interface Asked {
  /** The mutant that is on; -1 for none. */
  readonly mutant: number
  /** Tests to run in this order; `null`: all, and say what each met. */
  readonly tests: readonly string[] | null
  readonly files: readonly string[]
  /** Milliseconds after which no other test is begun. */
  readonly budget: number
}

export interface Answer {
  /** Names of the tests that failed; with a mutant on, only the first. */
  readonly failed: readonly string[]
  /** Mutants met by each test, those met while loading under the empty name, and how long each took. */
  readonly met: Readonly<Record<string, { readonly mutants: readonly number[]; readonly took: number }>>
  readonly out: boolean
}

let on = -1
let meeting: Set<number> | undefined

Object.assign(globalThis, {
  __mutant(id: number): boolean {
    meeting?.add(id)
    return id === on
  },
})

export async function tryMutant(
  { mutant, tests, files, budget }: Asked,
  loaders: Readonly<Record<string, () => Promise<unknown>>>,
): Promise<Answer> {
  on = mutant
  const began = performance.now()
  const met: Record<string, { mutants: number[]; took: number }> = {}
  const failed: string[] = []
  let why = ''
  const watched = async (name: string, work: () => Promise<void>): Promise<boolean> => {
    meeting = tests === null ? new Set() : undefined
    const start = performance.now()
    const failed = await work().then(
      () => false,
      (error: unknown) => {
        why = error instanceof Error ? (error.stack ?? error.message) : String(error)
        return true
      },
    )
    if (meeting) met[name] = { mutants: [...meeting], took: performance.now() - start }
    meeting = undefined
    return failed
  }
  const loaded = await watched('', async () => {
    for (const file of files) await collect(file, loaders[file] as () => Promise<unknown>)
  })
  // A mutant that breaks the loading is found by whatever loads it.
  if (loaded) return { failed: [`loading: ${why}`], met, out: false }
  const byId = new Map(found.map((one) => [one.id, one]))
  for (const id of tests ?? byId.keys()) {
    const one = byId.get(id)
    if (!one) continue
    if (performance.now() - began > budget) return { failed, met, out: true }
    if (await watched(id, () => one.run())) failed.push(tests === null ? id : one.name)
    if (failed.length > 0 && tests !== null) break
  }
  return { failed, met, out: false }
}
