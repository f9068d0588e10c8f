#!/usr/bin/env node
/**
 * The command `lidwright`. In a checkout it runs a program made from the source beside it, never older than what one
 * sees; in the published package, which holds no source, it runs the program made when it was packed.
 * A CommonJS module, because those start sooner.
 */
const { existsSync } = require('node:fs')
const { join } = require('node:path')
const { compiled } = require('./launcher/compiled.cjs')

const source = join(__dirname, 'cli.ts')
const packed = join(__dirname, '../dist-cli/lidwright.js')
const words = process.argv.slice(2)

/** As `--help` says: bad input, and whatever else keeps the command from its work. */
const TROUBLE = 2

/** Set once nobody takes the answer any more. */
let unheard = false
let worst = 0

process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
  const first = !unheard
  unheard = true
  // Whoever reads the answer may stop early, as `head` does; that is no error.
  if (error.code === 'EPIPE' || !first) return
  process.exitCode = worst = TROUBLE
  process.stderr.write(`The answer could not be written: ${error.message}.\n`)
})
// Where nobody takes what is wrong, the exit code still says it.
process.stderr.on('error', () => {})

start()

async function start() {
  const cwd = startedIn()
  if (cwd === undefined) return
  const { exports, keep } = compiled(existsSync(source) ? await made() : packed, words[0] ?? '')
  const code = await exports.run(words, {
    out: (/** @type {string} */ text) => unheard || process.stdout.write(text),
    err: (/** @type {string} */ text) => process.stderr.write(text),
    cwd,
  })
  process.exitCode = Math.max(code, worst)
  // A run that was refused, or asked for help, has used little of the code.
  if (code === 0 && !words.includes('--help')) keep()
}

/** The folder that relative paths start from; `undefined`, and said, where it was taken away meanwhile. */
function startedIn() {
  try {
    return process.cwd()
  } catch {
    process.stderr.write('The folder this was started in is gone. Start it in another.\n')
    process.exitCode = TROUBLE
    return undefined
  }
}

function made() {
  return require('./launcher/made.cjs')
    .made()
    .catch((/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== 'ERR_MODULE_NOT_FOUND') throw error
      console.error(`The packages are not installed: run "npm ci" in ${join(__dirname, '..')} first.`)
      process.exit(1)
    })
}
