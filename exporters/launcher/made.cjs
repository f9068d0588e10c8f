/**
 * The program of a checkout, made from the source beside it and kept until that changes: bundling takes seconds, and a
 * command should not. No part of the package, which holds the program alone.
 */
const { createHash } = require('node:crypto')
const {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} = require('node:fs')
const { tmpdir } = require('node:os')
const { join } = require('node:path')

const ROOT = join(__dirname, '../..')

/** Whatever the program is made of; the lock names the packages. */
const SOURCES = ['geometry', 'exporters', 'package-lock.json']

/**
 * The file of a program that is as new as the source.
 *
 * @returns {Promise<string>} rejects where the packages are not installed
 * @example const file = await made()
 */
async function made() {
  const folder = join(ROOT, 'node_modules/.lidwright')
  const program = join(folder, `${stampOf(SOURCES)}.js`)
  if (existsSync(program)) return program
  const text = await textOf()
  try {
    mkdirSync(folder, { recursive: true })
    const beside = join(folder, `${process.pid}.part`)
    writeFileSync(beside, text)
    for (const old of readdirSync(folder)) if (old.endsWith('.js')) rmSync(join(folder, old), { force: true })
    renameSync(beside, program)
    return program
  } catch {
    // A checkout that cannot be written to: made anew each time.
    const once = join(mkdtempSync(join(tmpdir(), 'lidwright-program-')), 'program.js')
    writeFileSync(once, text)
    process.once('exit', () => rmSync(join(once, '..'), { recursive: true, force: true }))
    return once
  }
}

/**
 * Names, sizes and times of all files: another text where anything was changed, came or went.
 *
 * @param {readonly string[]} paths from the top of the checkout
 */
function stampOf(paths) {
  const hash = createHash('sha256')
  /** @param {string} path */
  const look = (path) => {
    const about = statSync(join(ROOT, path))
    if (about.isDirectory()) for (const name of readdirSync(join(ROOT, path)).sort()) look(`${path}/${name}`)
    else hash.update(`${path} ${about.size} ${about.mtimeMs}\n`)
  }
  for (const path of paths) look(path)
  return hash.digest('hex').slice(0, 32)
}

/** The program as it is packed, but with its names, so that a fault can be found. */
async function textOf() {
  const { build } = await import('vite')
  const result = await build({
    configFile: join(ROOT, 'exporters/vite.config.ts'),
    logLevel: 'silent',
    build: { write: false, minify: false },
  })
  const output = 'output' in result ? result.output : []
  const chunk = output.find((one) => one.type === 'chunk')
  if (chunk?.type !== 'chunk') throw new Error('The program could not be made from its source.')
  return chunk.code
}

module.exports = { made }
