/** Puts the engine with switched mutants and its tests into one bundle, that each trial loads afresh. */
import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { build, type Plugin } from 'vite'
import { projectFiles } from '../support/project-files.ts'
import { type Mutant, mutantsOf, withSwitches } from './mutants.ts'

export const root = resolve(import.meta.dirname, '../..')

export interface Placed extends Mutant {
  readonly id: number
  readonly room: string
  readonly file: string
  readonly line: number
  /** The line as it stands, and what stands in it instead. */
  readonly was: string
}

/** Draws without clock or chance: a linear congruence (D. E. Knuth, The Art of Computer Programming 2, 3.3.4, line 26). */
function drawer(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** So many mutants of every room, drawn by the seed from all there are; and how many there are. */
export function sampled(
  rooms: readonly string[],
  most: number,
  seed: number,
): { readonly mutants: readonly Placed[]; readonly all: ReadonlyMap<string, number> } {
  const draw = drawer(seed)
  const all = new Map<string, number>()
  const mutants: Placed[] = []
  for (const room of rooms) {
    const files = projectFiles().filter(
      (name) => name.startsWith(`geometry/${room}/`) && name.endsWith('.ts'),
    )
    if (files.length === 0) throw new Error(`The engine has no room "${room}".`)
    const there = files.flatMap((file) => {
      const source = readFileSync(join(root, file), 'utf8')
      return mutantsOf(file, source).map((one) => ({ ...one, room, file, ...lineOf(source, one) }))
    })
    all.set(room, there.length)
    const rest = [...there]
    for (let count = 0; count < most && rest.length > 0; count++) {
      const [one] = rest.splice(Math.floor(draw() * rest.length), 1)
      if (one) mutants.push({ ...one, id: mutants.length })
    }
  }
  return { mutants, all }
}

function lineOf(source: string, { start }: Mutant): { readonly line: number; readonly was: string } {
  const line = source.slice(0, start).split('\n').length
  return { line, was: (source.split('\n')[line - 1] ?? '').trim() }
}

/** The engine's own tests, but for those that spy with means that only the whole framework has. */
const testFiles = (): string[] =>
  projectFiles().filter(
    (name) =>
      /^tests\/geometry\/.*\.test\.ts$/.test(name) &&
      !/\bvi\b[^;\n]*from 'vitest'/.test(readFileSync(join(root, name), 'utf8')),
  )

/** Where the bundle lies: two folders deep, as the tests that look for files beside themselves are. */
const outDir = join(root, 'node_modules/.mutate')

/** The file to start, and the names of the files of tests that it can load. */
export async function bundled(
  mutants: readonly Placed[],
): Promise<{ readonly entry: string; readonly files: readonly string[] }> {
  const files = testFiles()
  const loaders = files.map(
    (file) => `${JSON.stringify(file)}: () => import(${JSON.stringify(join(root, file))})`,
  )
  const entry = `
import { parentPort, workerData } from 'node:worker_threads'
import { tryMutant } from ${JSON.stringify(join(import.meta.dirname, 'trying.ts'))}
tryMutant(workerData, { ${loaders.join(',\n')} }).then((answer) => parentPort.postMessage(answer))
`
  const switches: Plugin = {
    name: 'mutants',
    enforce: 'pre',
    resolveId: (id) => (id === 'virtual:entry' ? '\0entry' : null),
    load(id) {
      if (id === '\0entry') return entry
      const own = mutants.filter(({ file }) => join(root, file) === id)
      return own.length === 0 ? null : withSwitches(readFileSync(id, 'utf8'), own)
    },
  }
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    plugins: [switches],
    resolve: { alias: { vitest: join(import.meta.dirname, 'shim.ts') } },
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      target: 'node20',
      rolldownOptions: {
        input: 'virtual:entry',
        treeshake: false,
        output: { entryFileNames: 'entry.mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  })
  return { entry: join(outDir, 'entry.mjs'), files }
}
