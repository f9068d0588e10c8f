/**
 * Runs before every script that needs packages, so that one command is enough on a fresh clone: installs
 * what the lock file asks for when node_modules is missing or no longer what the lock file says.
 *
 * Plain JavaScript without packages, because there are none yet when it runs.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'

const project = resolve(import.meta.dirname ?? '.', '../..')

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Lidwright needs Node 20.19 or newer; this is Node ${process.versions.node}.`)
  process.exit(1)
}

const reason = whatIsStale()
if (reason !== undefined) {
  console.log(`Installing packages: ${reason}.`)
  const npm = ['ci', '--include=dev', '--no-audit', '--no-fund']
  const own = process.env.npm_execpath
  const result = own?.endsWith('npm-cli.js')
    ? spawnSync(process.execPath, [own, ...npm], { cwd: project, stdio: 'inherit' })
    : spawnSync('npm', npm, { cwd: project, stdio: 'inherit', shell: process.platform === 'win32' })
  if (result.status !== 0) {
    console.error(
      'The packages could not be installed (see above). The first run needs a network; then `npm ci` is all it takes.',
    )
    process.exit(1)
  }
}

/**
 * Compares the lock file with the record npm keeps of what it installed. Packages for other machines
 * are optional and may be missing.
 * @returns {string | undefined} what is wrong, or undefined when node_modules is as the lock file says
 */
function whatIsStale() {
  const record = resolve(project, 'node_modules/.package-lock.json')
  if (!existsSync(record)) return 'there are none yet'
  const wanted = packagesIn(resolve(project, 'package-lock.json'))
  const installed = packagesIn(record)
  for (const [path, { version, optional }] of Object.entries(wanted)) {
    const found = installed[path]
    if (path === '' || (optional && found === undefined)) continue
    if (found?.version !== version) {
      return `${path} ${version} is wanted and ${found === undefined ? 'missing' : `${found.version} is there`}`
    }
  }
  return undefined
}

/**
 * @param {string} file a lock file
 * @returns {Record<string, { version: string, optional?: boolean }>} its packages by path
 */
function packagesIn(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages
}
