/**
 * `npm run fuzz`: tries random designs, exports, files and sequences of actions, in as many processes as there are
 * processors, and prints a table. Seeds are counted up from `--seed`, so a run can be gone on with where it ended.
 */
import { type ChildProcess, fork } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { build } from 'vite'
import { emptyTally, headOf, type Mishap, missed, type Tally } from './trial.ts'
import { TRIALS } from './trials.ts'
import type { Errand, Told } from './worker.ts'

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '1000' },
    seconds: { type: 'string', default: '600' },
    only: { type: 'string', default: TRIALS.map(({ name }) => name).join(',') },
    processes: { type: 'string', default: String(availableParallelism()) },
    help: { type: 'boolean', default: false },
  },
})

if (values.help) {
  console.log(`npm run fuzz -- [flags]
  --seed N       first seed (1)
  --count N      how many of each trial (1000); the long run is 100000
  --seconds N    at most so long for each trial (600)
  --only A,B     trials: ${TRIALS.map(({ name }) => name).join(', ')}
  --processes N  at once (${availableParallelism()})`)
  process.exit(0)
}

const number = (name: 'seed' | 'count' | 'seconds' | 'processes'): number => {
  const value = Number(values[name])
  if (!(value >= 1)) throw new Error(`--${name} takes a number of 1 or more, not "${values[name]}".`)
  return Math.floor(value)
}

/** So long without a word is a hang, whatever else the machine does, milliseconds. */
const NO_WORD = 60_000
/** Seeds of one errand: enough to be warm, few enough that both processes end together. */
const ERRAND = 500

const root = resolve(import.meta.dirname, '../..')
// Inside node_modules, so that libraries are found where they are installed.
const outDir = join(root, 'node_modules/.fuzz')
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  build: { ssr: join(import.meta.dirname, 'worker.ts'), outDir, emptyOutDir: true, target: 'node20' },
})

function errand(worker: ChildProcess, what: Errand): Promise<Tally> {
  return new Promise((finish) => {
    let at = what.from
    const hung = () => {
      worker.kill('SIGKILL')
      const mishap = {
        trial: what.trial,
        seed: at,
        law: 'ends',
        words: 'no word for a minute, or it died',
        text: '',
      }
      finish({ ...emptyTally(), tried: at - what.from + 1, mishaps: [mishap] })
    }
    let watch = setTimeout(hung, NO_WORD)
    worker.once('exit', hung)
    worker.on('message', (told: Told) => {
      clearTimeout(watch)
      if ('at' in told) {
        at = told.at
        watch = setTimeout(hung, NO_WORD)
        return
      }
      worker.removeAllListeners()
      finish(told.done)
    })
    worker.send(what)
  })
}

function add(tally: Tally, other: Tally): void {
  tally.tried += other.tried
  tally.asked += other.asked
  tally.slowest = Math.max(tally.slowest, other.slowest)
  tally.mishaps.push(...other.mishaps)
  for (const [what, times] of Object.entries(other.reached))
    tally.reached[what] = (tally.reached[what] ?? 0) + times
}

async function tried(name: string): Promise<Tally & { readonly seconds: number }> {
  const began = Date.now()
  const until = began + number('seconds') * 1000
  const [first, count] = [number('seed'), number('count')]
  const tally = emptyTally()
  let next = first
  await Promise.all(
    Array.from({ length: number('processes') }, async () => {
      let worker = fork(join(outDir, 'worker.js'), { cwd: root })
      while (next < first + count && Date.now() < until) {
        const from = next
        next = Math.min(first + count, from + Math.min(ERRAND, Math.ceil(count / number('processes'))))
        add(tally, await errand(worker, { trial: name, from, count: next - from, until }))
        if (worker.killed || worker.exitCode !== null) worker = fork(join(outDir, 'worker.js'), { cwd: root })
      }
      worker.kill()
    }),
  )
  return { ...tally, seconds: (Date.now() - began) / 1000 }
}

let bad = false
const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell)[index === 0 ? 'padEnd' : 'padStart'](10)).join('  '))
row('trial', 'tried', 'laws asked', 'reached', 'findings', 'slowest', 'seconds')
const notes: string[] = []
for (const trial of TRIALS.filter(({ name }) => (values.only ?? '').split(',').includes(name))) {
  const tally = await tried(trial.name)
  const idle = missed(trial, tally)
  const slowest = `${Math.round(tally.slowest)} ms`
  const reached = `${trial.mustReach.length - idle.length}/${trial.mustReach.length}`
  row(trial.name, tally.tried, tally.asked, reached, tally.mishaps.length, slowest, tally.seconds.toFixed(0))
  if (tally.tried === 0 || idle.length > 0)
    notes.push(`${trial.name} was idle: never reached ${idle.join(', ') || 'anything'}`)
  const causes = new Map<string, Mishap[]>()
  for (const one of tally.mishaps) causes.set(headOf(one), [...(causes.get(headOf(one)) ?? []), one])
  for (const mishaps of causes.values()) notes.push(told(mishaps))
  bad ||= tally.mishaps.length > 0 || tally.tried === 0 || idle.length > 0
}
if (notes.length > 0) console.log(`\n${notes.join('\n\n')}`)
process.exitCode = bad ? 1 : 0

/** Mishaps of one cause: how many, by which laws, and the smallest of them whole. */
function told(mishaps: readonly Mishap[]): string {
  const [least] = [...mishaps].sort((a, b) => a.text.length - b.text.length)
  if (!least) return ''
  const seeds = new Set(mishaps.map(({ seed }) => seed)).size
  const laws = [...new Set(mishaps.map(({ law }) => law))]
  const more = laws.length > 1 ? ` (and ${laws.length - 1} more laws)` : ''
  const where = least.words.split('\n').slice(0, 6).join('\n  ')
  return `${least.trial}, seed ${least.seed}, one of ${seeds}: ${least.law}${more}\n  ${where}\n  ${least.text.slice(0, 3000)}`
}
