import { spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync, readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { homedir } from 'node:os'
import { delimiter, join } from 'node:path'
import { chromium } from 'playwright-core'
import { aptInstall } from './apt.ts'

type Environment = Readonly<Record<string, string | undefined>>

/** Where to look, and whether to fetch a browser when there is none. */
export interface Search {
  readonly environment?: Environment
  readonly mayInstall?: boolean
  /** Whose habits of where programs lie to follow. */
  readonly platform?: NodeJS.Platform
}

const names = [
  ...['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'],
  ...['microsoft-edge', 'microsoft-edge-stable', 'msedge'],
]

const macApplications = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
]

const windowsPrograms = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
]

/**
 * The path of a Chromium that runs. In this order: the environment variable LIDWRIGHT_CHROMIUM; chromium,
 * chrome or edge on the path or where the system puts applications; what playwright has downloaded before;
 * apt-get, where it exists and we are root; playwright's download.
 *
 * @throws Error with one line that says what to do, when the variable names no browser or none is found.
 * @example const browser = await chromium.launch({ executablePath: findChromium() })
 */
export function findChromium(search: Search = {}): string {
  const { environment = process.env, mayInstall = true, platform = process.platform } = search
  const named = environment.LIDWRIGHT_CHROMIUM
  if (named) {
    if (runs(named)) return named
    throw new Error(
      `LIDWRIGHT_CHROMIUM names ${named}, which is not a browser that runs: correct or unset it.`,
    )
  }
  const here = () =>
    [
      ...onPath(environment, platform),
      ...installed(environment, platform),
      ...downloaded(environment, platform),
    ].find(runs)
  const found = here()
  if (found !== undefined) return found
  if (mayInstall) {
    const fetched = (aptInstall('chromium') && here()) || (download() && here())
    if (fetched) return fetched
  }
  throw new Error(
    'No Chromium found: install chromium, chrome or edge, or run `npx playwright-core install chromium`, or set LIDWRIGHT_CHROMIUM to a browser.',
  )
}

function onPath(environment: Environment, platform: NodeJS.Platform): string[] {
  const folders = (environment.PATH ?? environment.Path ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
  const ending = platform === 'win32' ? '.exe' : ''
  return names.flatMap((name) => folders.map((folder) => join(folder, name + ending)))
}

function installed(environment: Environment, platform: NodeJS.Platform): string[] {
  if (platform === 'darwin') return macApplications
  if (platform !== 'win32') return []
  const roots = [environment.ProgramFiles, environment['ProgramFiles(x86)'], environment.LOCALAPPDATA]
  return roots.flatMap((root) => (root ? windowsPrograms.map((program) => join(root, program)) : []))
}

/** Playwright's cache: the version it wants first, then whatever version is there, newest first. */
function downloaded(environment: Environment, platform: NodeJS.Platform): string[] {
  const cache =
    environment.PLAYWRIGHT_BROWSERS_PATH ??
    join(environment.HOME ?? homedir(), platform === 'darwin' ? 'Library/Caches' : '.cache', 'ms-playwright')
  const versions = existsSync(cache) ? readdirSync(cache).filter((name) => /^chromium-\d+$/.test(name)) : []
  const number = (name: string) => Number(name.slice('chromium-'.length))
  const others = versions
    .sort((a, b) => number(b) - number(a))
    .flatMap((version) =>
      ['chrome-linux64', 'chrome-linux'].map((inside) => join(cache, version, inside, 'chrome')),
    )
  return environment === process.env ? [chromium.executablePath(), ...others] : others
}

function download(): boolean {
  console.log('Downloading Chromium with playwright.')
  const cli = join(createRequire(import.meta.url).resolve('playwright-core/package.json'), '../cli.js')
  return spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'inherit' }).status === 0
}

/** A file called chromium may be a stub that only tells one to install it, so ask it for its version. */
function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
  } catch {
    return false
  }
  // On Windows asking for the version opens a window.
  if (process.platform === 'win32') return true
  const answer = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 30_000 })
  return answer.status === 0 && /\d+\.\d+/.test(answer.stdout)
}
