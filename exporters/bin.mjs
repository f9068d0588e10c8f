#!/usr/bin/env node
/**
 * The command `lidwright`. In a checkout it runs the source beside it, so it is never older than what one
 * sees; in the published package, which holds no source, it runs the bundle made when it was packed.
 */
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const source = new URL('./cli.ts', import.meta.url)
const bundle = new URL('../dist-cli/lidwright.mjs', import.meta.url)

// Whoever reads the output may stop early, as `head` does; that is no error.
process.stdout.on('error', (error) => {
  if ('code' in error && error.code === 'EPIPE') process.exit()
  throw error
})

const { run } = existsSync(source) ? await sourceOf(source) : await import(bundle.href)

process.exitCode = await run(process.argv.slice(2), {
  out: (/** @type {string} */ text) => process.stdout.write(text),
  err: (/** @type {string} */ text) => process.stderr.write(text),
  cwd: process.cwd(),
})

/** @param {URL} url TypeScript, which Node 20 does not read by itself */
async function sourceOf(url) {
  const tsx = await import('tsx/esm/api').catch(() => undefined)
  if (tsx === undefined) {
    console.error(
      `The packages are not installed: run "npm ci" in ${fileURLToPath(new URL('..', url))} first.`,
    )
    process.exit(1)
  }
  const tsconfig = fileURLToPath(new URL('../tsconfig.json', url))
  return tsx.tsImport(url.href, { parentURL: import.meta.url, tsconfig })
}
