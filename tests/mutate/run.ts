/**
 * `npm run mutate`: puts small mistakes into the engine and looks whether a test notices. A seeded sample of each room,
 * so that it ends; each mutant is tried with the tests that come by it, those of its own room first, until one fails.
 */
import { readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { basename, join } from 'node:path'
import { parseArgs } from 'node:util'
import { Worker } from 'node:worker_threads'
import { bundled, type Placed, root, sampled } from './bundle.ts'
import type { Answer, Asked } from './trying.ts'

const { values } = parseArgs({
  options: {
    rooms: { type: 'string', default: 'scale,strings,neck,plane,checks' },
    sample: { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    seconds: { type: 'string', default: '12' },
    processes: { type: 'string', default: String(availableParallelism()) },
    help: { type: 'boolean', default: false },
  },
})

if (values.help) {
  console.log(`npm run mutate -- [flags]
  --rooms A,B    folders of the engine (scale,strings,neck,plane,checks)
  --sample N     mutants of each room (60)
  --seed N       which of them (1)
  --seconds N    of tests for each mutant (12)
  --processes N  at once (${availableParallelism()})`)
  process.exit(0)
}

const number = (name: 'sample' | 'seed' | 'seconds' | 'processes'): number => {
  const value = Number(values[name])
  if (!(value >= 1)) throw new Error(`--${name} takes a number of 1 or more, not "${values[name]}".`)
  return Math.floor(value)
}

/** A test slower than this with no mutant on is left out: a thousand times that would be hours. */
const SLOW = 6000

const rooms = (values.rooms ?? '').split(',')
const { mutants, all } = sampled(rooms, number('sample'), number('seed'))
const { entry, files } = await bundled(mutants)

function ask(asked: Asked, most: number): Promise<Answer> {
  return new Promise((finish) => {
    const worker = new Worker(entry, { workerData: asked, stdout: true, stderr: true })
    const gone = (what: string) => {
      void worker.terminate()
      finish({ failed: [what], met: {}, out: false })
    }
    const watch = setTimeout(() => gone('never ends'), most)
    worker.once('error', (error) => gone(`dies: ${error.message}`))
    worker.once('message', (answer: Answer) => {
      clearTimeout(watch)
      void worker.terminate()
      finish(answer)
    })
  })
}

console.log(`${mutants.length} mutants; the tests run once without any.`)
const base = await ask({ mutant: -1, tests: null, files, budget: 1e9 }, 1e9)
const broken = new Set(base.failed)
const tests = Object.entries(base.met)
  .filter(([id, { took }]) => id !== '' && took < SLOW && !broken.has(id))
  .map(([id, { mutants: met, took }]) => ({ id, file: id.split('#')[0] ?? '', met: new Set(met), took }))
const loading = new Set(base.met['']?.mutants)
if (tests.length === 0) throw new Error(`No test ran without a mutant: ${base.failed[0] ?? 'none was found'}`)
const slow = Object.keys(base.met).length - 1 - tests.length - broken.size
console.log(
  `${tests.length} tests; left out: ${slow} slow ones, and ${broken.size} that want the whole framework.\n`,
)

interface Verdict {
  readonly mutant: Placed
  readonly by: string | null
  readonly met: boolean
  /** Not all tests that come by it were run. */
  readonly out: boolean
}

/** What a test about a file is likely to be called after: the file, and what the file itself gives a name, as rules do. */
function namesIn(file: string): string[] {
  const names = [...readFileSync(join(root, file), 'utf8').matchAll(/\bname: '([a-z-]+)'/g)]
  return [basename(file, '.ts'), ...names.flatMap(([, name]) => name ?? [])]
}

/**
 * The tests of the mutant's own room, and then those of all others; of each first those called after its file, and of these
 * the quickest first.
 */
function stepsFor({ id, room, file }: Placed): (typeof tests)[] {
  const names = namesIn(file)
  const isAbout = (test: string) => names.some((name) => test.includes(name))
  const met = tests
    .filter((one) => loading.has(id) || one.met.has(id))
    .map((one) => ({ ...one, about: isAbout(one.id) }))
    .sort((a, b) => Number(b.about) - Number(a.about) || a.took - b.took)
  const own = met.filter((one) => one.file.startsWith(`tests/geometry/${room}/`))
  const others = met.filter((one) => !own.includes(one))
  return [own, others].filter((step) => step.length > 0)
}

async function tried(mutant: Placed): Promise<Verdict> {
  const steps = stepsFor(mutant)
  let ranOut = false
  for (const step of steps) {
    const budget = number('seconds') * 1000
    const asked: Asked = {
      mutant: mutant.id,
      tests: step.map(({ id }) => id),
      files: [...new Set(step.map(({ file }) => file))],
      budget,
    }
    const { failed, out } = await ask(asked, 4 * budget + 30_000)
    if (failed[0] !== undefined) return { mutant, by: failed[0], met: true, out }
    ranOut ||= out
  }
  return { mutant, by: null, met: steps.length > 0, out: ranOut }
}

const verdicts: Verdict[] = []
const queue = [...mutants]
await Promise.all(
  Array.from({ length: number('processes') }, async () => {
    for (let next = queue.shift(); next; next = queue.shift()) {
      verdicts.push(await tried(next))
      if (verdicts.length % 20 === 0) console.log(`${verdicts.length} of ${mutants.length} tried`)
    }
  }),
)

const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell)[index === 0 ? 'padEnd' : 'padStart'](10)).join('  '))
row('room', 'of all', 'tried', 'noticed', 'never met', 'score')
for (const room of rooms) {
  const own = verdicts.filter(({ mutant }) => mutant.room === room)
  const noticed = own.filter(({ by }) => by !== null).length
  const never = own.filter(({ met }) => !met).length
  row(room, all.get(room) ?? 0, own.length, noticed, never, `${((100 * noticed) / own.length).toFixed(0)} %`)
}
console.log('\nNobody noticed:')
for (const { mutant, met, out } of verdicts
  .filter(({ by }) => by === null)
  .sort((a, b) => a.mutant.id - b.mutant.id))
  console.log(
    `${mutant.file}:${mutant.line}${met ? '' : ' (never met)'}${out ? ' (time ran out)' : ''}  ${mutant.was}\n    ${mutant.sort}: ${mutant.text.replace(/\s+/g, ' ').slice(0, 110)}`,
  )
