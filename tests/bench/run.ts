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
// The command and the engine as they ship, to be started from nothing.
const shipped = join(root, 'node_modules/.bench-shipped')
const bundled = { logLevel: 'warn', ssr: { noExternal: true }, configFile: false, root } as const
for (const [entry, name, emptyOutDir] of [
  ['exporters/cli.ts', 'lidwright', true],
  ['geometry/index.ts', 'engine', false],
] as const)
  await build({
    ...bundled,
    build: {
      ssr: join(root, entry),
      outDir: shipped,
      emptyOutDir,
      target: 'node20',
      minify: true,
      rolldownOptions: {
        output: { entryFileNames: `${name}.mjs`, chunkFileNames: `${name}-[name]-[hash].mjs` },
      },
    },
  })
const { status } = spawnSync(process.execPath, [join(outDir, 'bench.js')], {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, LIDWRIGHT_BENCH: shipped },
})
process.exitCode = status ?? 1
