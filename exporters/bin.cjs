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

// Whoever reads the output may stop early, as `head` does; that is no error.
process.stdout.on('error', (error) => {
  if ('code' in error && error.code === 'EPIPE') process.exit()
  throw error
})

start()

async function start() {
  const { exports, keep } = compiled(existsSync(source) ? await made() : packed, words[0] ?? '')
  process.exitCode = await exports.run(words, {
    out: (/** @type {string} */ text) => process.stdout.write(text),
    err: (/** @type {string} */ text) => process.stderr.write(text),
    cwd: process.cwd(),
  })
  // A run that was refused has used little of the code.
  if (process.exitCode === 0) keep()
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
