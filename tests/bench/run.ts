/**
 * `npm run bench`: every figure of speed and size in one table. `-- --keep` makes them the baseline, `-- --compare` sets them
 * against it, `-- --without-browser` leaves out the frames.
 *
 * What runs within Node is bundled first, as the application and the command line are: a loader that keeps the names of
 * local functions would charge our own code for each of them and no library for any.
 */
import { spawn } from 'node:child_process'
import { cpSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { join, resolve } from 'node:path'
import { createInterface } from 'node:readline'
import { parseArgs } from 'node:util'
import { build } from 'vite'
import { serveBuild } from '../support/serve-build.ts'
import { answerRows } from './answers.ts'
import { compared, keepBaseline } from './baseline.ts'
import { frameRows } from './frames.ts'
import { HEADING, lineOf, type Row } from './row.ts'
import { memoryRows, sizeRows } from './sizes.ts'

const { values } = parseArgs({
  options: {
    keep: { type: 'boolean', default: false },
    compare: { type: 'boolean', default: false },
    'without-browser': { type: 'boolean', default: false },
  },
})

const root = resolve(import.meta.dirname, '../..')
// Inside node_modules, so that the libraries measured against are found where they are installed.
const inNode = join(root, 'node_modules/.bench')
const shipped = join(root, 'node_modules/.bench-shipped')

for (const name of ['bench', 'held'])
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    build: {
      ssr: join(import.meta.dirname, `${name}.ts`),
      outDir: inNode,
      emptyOutDir: name === 'bench',
      target: 'node20',
    },
  })
// The command and the engine, to be started from nothing: the command exactly as it is packed, the engine bundled alike.
await build({
  configFile: join(root, 'exporters/vite.config.ts'),
  logLevel: 'warn',
  build: { outDir: join(shipped, 'command/dist-cli'), emptyOutDir: true },
})
for (const file of ['exporters/bin.cjs', 'exporters/launcher/compiled.cjs'])
  cpSync(join(root, file), join(shipped, 'command', file))
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
  build: {
    ssr: join(root, 'geometry/index.ts'),
    outDir: join(shipped, 'engine'),
    emptyOutDir: true,
    target: 'node20',
    minify: true,
    rolldownOptions: { output: { entryFileNames: 'engine.mjs' } },
  },
})

/** A group of rows as the bundled bench writes them, line by line. */
async function* rowsInNode(group: string): AsyncGenerator<Row> {
  const child = spawn(process.execPath, ['--expose-gc', join(inNode, 'bench.js'), group], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, LIDWRIGHT_BENCH: shipped },
  })
  const ended = new Promise<number | null>((done) => child.once('close', done))
  for await (const line of createInterface({ input: child.stdout })) yield JSON.parse(line) as Row
  const status = await ended
  if (status !== 0) throw new Error(`the bench ended with ${status}`)
}

async function* allRows(): AsyncGenerator<Row> {
  for (const group of ['engine', 'writing', 'proposals', 'started']) yield* rowsInNode(group)
  yield* memoryRows(join(inNode, 'held.js'))
  const served = await serveBuild()
  try {
    yield* sizeRows(served.folder, join(shipped, 'command'))
    if (values['without-browser']) return
    yield* frameRows(served.address)
    yield* answerRows(served.address)
  } finally {
    await served.close()
  }
}

const machine = `${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, Node ${process.version}`
console.log(`${machine}, load ${loadavg()[0]?.toFixed(1)}`)
console.log(HEADING)
const rows: Row[] = []
for await (const row of allRows()) {
  rows.push(row)
  console.log(lineOf(row))
}
if (values.compare) console.log(`\n${compared(machine, rows).join('\n')}`)
if (values.keep) keepBaseline(machine, rows)
