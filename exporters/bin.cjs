#!/usr/bin/env node
/**
 * The command `lidwright`. In a checkout it runs the source beside it, so it is never older than what one
 * sees; in the published package, which holds no source, it runs the program made when it was packed.
 * A CommonJS module, because those start sooner.
 */
const { existsSync } = require('node:fs')
const { join } = require('node:path')

const source = join(__dirname, 'cli.ts')
const packed = join(__dirname, '../dist-cli/lidwright.js')
const words = process.argv.slice(2)

// Whoever reads the output may stop early, as `head` does; that is no error.
process.stdout.on('error', (error) => {
  if ('code' in error && error.code === 'EPIPE') process.exit()
  throw error
})

start()

async function start() {
  const { run, keep } = existsSync(source) ? await sourceProgram() : packedProgram()
  process.exitCode = await run(words, {
    out: (/** @type {string} */ text) => process.stdout.write(text),
    err: (/** @type {string} */ text) => process.stderr.write(text),
    cwd: process.cwd(),
  })
  // A run that was refused has used little of the code.
  if (process.exitCode === 0) keep()
}

/** TypeScript, which Node 20 does not read by itself. */
async function sourceProgram() {
  const { pathToFileURL } = require('node:url')
  const tsx = await import('tsx/esm/api').catch(() => undefined)
  if (tsx === undefined) {
    console.error(`The packages are not installed: run "npm ci" in ${join(__dirname, '..')} first.`)
    process.exit(1)
  }
  const { run } = await tsx.tsImport(pathToFileURL(source).href, {
    parentURL: pathToFileURL(__filename).href,
    tsconfig: join(__dirname, '../tsconfig.json'),
  })
  return { run, keep() {} }
}

function packedProgram() {
  const { compiled } = require('./cli/compiled.cjs')
  const { exports, keep } = compiled(packed, words[0] ?? '')
  return { run: exports.run, keep }
}
