import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build, preview } from 'vite'

const root = resolve(import.meta.dirname, '../../app')
const configFile = join(root, 'vite.config.ts')

/** A page that is served until it is closed. */
export interface Served {
  /** Ends in a slash, as in `http://127.0.0.1:34567/`. */
  readonly address: string
  /** Where the built files lie, on disk. */
  readonly folder: string
  /** Stops serving and drops the build. */
  close(): Promise<void>
}

/**
 * Builds the page as it is published and serves it on a free port of this machine. Each call builds into
 * a folder of its own, so two runs at once do not get in each other's way.
 *
 * @example
 * const served = await serveBuild()
 * await page.goto(served.address)
 * await served.close()
 */
export async function serveBuild(): Promise<Served> {
  const outDir = await mkdtemp(join(tmpdir(), 'lidwright-build-'))
  const shared = { root, configFile, build: { outDir, emptyOutDir: true } }
  await inProduction(() => build({ ...shared, mode: 'production', logLevel: 'warn' }))
  const server = await preview({ ...shared, logLevel: 'warn', preview: { host: '127.0.0.1', port: 0 } })
  const address = server.resolvedUrls?.local[0]
  if (address === undefined) throw new Error('The built page is served, but at no address.')
  return {
    address,
    folder: outDir,
    async close() {
      await server.close()
      await rm(outDir, { recursive: true, force: true })
    },
  }
}

/** Vitest sets NODE_ENV to "test", and the build would then take React's development half. */
async function inProduction<Result>(work: () => Promise<Result>): Promise<Result> {
  const before = process.env.NODE_ENV
  process.env.NODE_ENV = 'production'
  try {
    return await work()
  } finally {
    if (before === undefined) delete process.env.NODE_ENV
    else process.env.NODE_ENV = before
  }
}
