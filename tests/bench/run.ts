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
const { status } = spawnSync(process.execPath, [join(outDir, 'bench.js')], { cwd: root, stdio: 'inherit' })
process.exitCode = status ?? 1
