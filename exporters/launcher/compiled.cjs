/**
 * Runs the packed program with its code as an earlier run compiled it. A command does each thing once, so reading and
 * compiling is a fifth of its time. What was compiled is kept beside the caches of whoever runs the command, a file for
 * each command, and is taken only as it was left there, for the same program. Where it cannot be kept nothing is said:
 * the next run compiles again.
 */
const {
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} = require('node:fs')
const { createRequire } = require('node:module')
const { homedir } = require('node:os')
const { dirname, isAbsolute, join } = require('node:path')
const { Script } = require('node:vm')
const { crc32 } = require('node:zlib')

/** Behind the code: its own sum and that of the program (ISO 3309), four bytes each. Node looks at versions and flags itself. */
const SUMS = 8

/**
 * The program of a packed file.
 *
 * @param {string} file a function that takes `exports`, `require` and `module` as CommonJS has them; its text is ASCII
 * @param {string} command which command will be run; what it needs is kept under this name
 * @returns {{ exports: any, keep(): void }} `keep` is for when the command has done all its work
 * @example const { exports, keep } = compiled('/opt/lidwright/lidwright.js', 'check')
 */
function compiled(file, command) {
  const place = placeOf(command)
  const { script, sum, anew } = scriptOf(file, place)
  const module = { exports: {} }
  script.runInThisContext()(module.exports, createRequire(file), module)
  return {
    exports: module.exports,
    keep() {
      if (place !== undefined && anew) write(place, script.createCachedData(), sum)
    },
  }
}

/**
 * In a function of its own, so that what was read is let go before the work begins.
 *
 * @param {string} file
 * @param {string | undefined} place
 * @returns {{ script: Script, sum: number, anew: boolean }} `anew` where nothing kept could be used
 */
function scriptOf(file, place) {
  const bytes = readFileSync(file)
  const sum = crc32(bytes)
  const cachedData = place === undefined ? undefined : kept(place, sum)
  const script = new Script(bytes.toString('latin1'), {
    filename: file,
    ...(cachedData === undefined ? {} : { cachedData }),
  })
  return { script, sum, anew: cachedData === undefined || script.cachedDataRejected === true }
}

/**
 * Where a command's code is kept; nowhere for what is no command, and where Node is told to keep none.
 *
 * @param {string} command
 * @returns {string | undefined}
 */
function placeOf(command) {
  if (process.env['NODE_DISABLE_COMPILE_CACHE'] || !/^[a-z]+$/.test(command)) return undefined
  const caches = cachesOf(process.env)
  return isAbsolute(caches) ? join(caches, 'lidwright', `${command}.compiled`) : undefined
}

/**
 * The folder of this person for what may be lost at any time: on Windows and macOS as their makers say, elsewhere after
 * the XDG Base Directory Specification.
 *
 * @param {NodeJS.ProcessEnv} environment
 * @returns {string} empty where there is none
 */
function cachesOf({ LOCALAPPDATA, XDG_CACHE_HOME }) {
  if (process.platform === 'win32') return LOCALAPPDATA ?? ''
  if (process.platform !== 'darwin' && XDG_CACHE_HOME && isAbsolute(XDG_CACHE_HOME)) return XDG_CACHE_HOME
  try {
    return join(homedir(), process.platform === 'darwin' ? 'Library/Caches' : '.cache')
  } catch {
    // Somebody whom this machine does not know.
    return ''
  }
}

/**
 * What was kept for this program, if nobody else could have written it and it is whole.
 *
 * @param {string} place
 * @param {number} sum of the program
 * @returns {Buffer | undefined}
 */
function kept(place, sum) {
  try {
    const about = statSync(place)
    if (!about.isFile()) return undefined
    if (process.getuid && (about.uid !== process.getuid() || (about.mode & 0o022) !== 0)) return undefined
    const bytes = readFileSync(place)
    const code = bytes.subarray(0, -SUMS)
    const same =
      bytes.length > SUMS &&
      bytes.readUInt32LE(code.length) === crc32(code) &&
      bytes.readUInt32LE(code.length + 4) === sum
    return same ? code : undefined
  } catch {
    return undefined
  }
}

/**
 * Writes beside the place and gives the name last, so that what lies there is never half of anything.
 *
 * @param {string} place
 * @param {Buffer} code
 * @param {number} sum of the program
 */
function write(place, code, sum) {
  const beside = `${place}.${process.pid}.part`
  const sums = Buffer.alloc(SUMS)
  sums.writeUInt32LE(crc32(code), 0)
  sums.writeUInt32LE(sum, 4)
  try {
    // One after another: Node's own way of making all at once never returns where none can be made.
    for (const folder of [dirname(dirname(place)), dirname(place)])
      if (!existsSync(folder)) mkdirSync(folder, { mode: 0o700 })
    writeFileSync(beside, Buffer.concat([code, sums]), { flag: 'wx', mode: 0o600 })
    renameSync(beside, place)
  } catch {
    try {
      rmSync(beside, { force: true })
    } catch {
      // It was never there: what should be the folder is a file.
    }
  }
}

module.exports = { compiled }
