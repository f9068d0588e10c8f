/**
 * `npm run bench`: bundles the bench as the application and the command line are bundled, and runs it. A loader that
 * keeps the names of local functions would charge our own code for each of them and no library for any.
 */
import { spawnSync } from 'node:child_process'
import { join, resolve } from 'node:path'
import { build } from 'vite'

const root = resolve(import.meta.dirname, '../..')
// Inside node_modules, so that the libraries measured against are found where they are installed.
const outDir = join(root, 'node_modules/.bench')

await build({
  root,
  configFile: false,
  logLevel: 'warn',
  build: { ssr: join(import.meta.dirname, 'bench.ts'), outDir, emptyOutDir: true, target: 'node20' },
})
// The command and the engine, to be started from nothing: the command exactly as it is packed, the engine bundled alike.
const shipped = join(root, 'node_modules/.bench-shipped')
await build({
  configFile: join(root, 'exporters/vite.config.ts'),
  logLevel: 'warn',
  build: { outDir: shipped, emptyOutDir: true },
})
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
  build: {
    ssr: join(root, 'geometry/index.ts'),
    outDir: shipped,
    emptyOutDir: false,
    target: 'node20',
    minify: true,
    rolldownOptions: { output: { entryFileNames: 'engine.mjs' } },
  },
})
const { status } = spawnSync(process.execPath, [join(outDir, 'bench.js')], {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, LIDWRIGHT_BENCH: shipped },
})
process.exitCode = status ?? 1
