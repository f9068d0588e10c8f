import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from 'playwright-core'
import { aptInstall } from './apt.ts'
import { findChromium } from './find-chromium.ts'

/** Chromium speaks to nobody: no graphics card to look for, no updates, no accounts. */
const quiet = [
  ...['--disable-gpu', '--disable-quic', '--no-first-run'],
  ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
]

/**
 * A headless Chromium; close it when done. As root the sandbox has to be off, or Chromium will not start.
 *
 * @throws Error that says what to install, when there is no browser and none can be fetched.
 * @example
 * const browser = await launch()
 * const page = await browser.newPage()
 * await page.goto(inject('address'))
 */
export async function launch(): Promise<Browser> {
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  return chromium.launch({ executablePath: findChromium(), args: [...quiet, ...sandbox] })
}

/** What a browser's own `newContext` takes, and what is kept for use without a network. */
export interface ContextOptions extends Omit<BrowserContextOptions, 'offline'> {
  /**
   * `kept`: the page registers its service worker, which fetches every file of it. `left out`, unless stated: the page
   * finds none, as in a browser that refuses them, and opens a third quicker.
   */
  readonly offline?: 'kept' | 'left out'
}

let running: Browser | undefined

/**
 * A window of its own in the browser of this worker of vitest: own store, own cache, own service worker, as good as a
 * browser of its own and much cheaper. The browser is started by the first file that asks and ends with the worker;
 * what a file leaves open is closed after it.
 *
 * @throws Error that says what to install, when there is no browser and none can be fetched.
 * @example
 * const context = await newContext({ viewport: { width: 1600, height: 1000 } })
 */
export async function newContext({
  offline = 'left out',
  ...options
}: ContextOptions = {}): Promise<BrowserContext> {
  // One that has crashed fails the test it crashed in, not all that follow.
  if (!running?.isConnected()) running = await launch()
  const context = await running.newContext(options)
  if (offline === 'left out')
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'))
  return context
}

/** Closes what `newContext` has opened and nobody has closed. */
export async function closeContexts(): Promise<void> {
  await Promise.all((running?.contexts() ?? []).map((context) => context.close()))
}

const fontFolders = [
  '/usr/share/fonts',
  '/usr/local/share/fonts',
  join(homedir(), '.fonts'),
  join(homedir(), '.local/share/fonts'),
]

/**
 * Sees to it that there is a font: without one Chromium draws every text blank and as zero wide, and tests
 * fail far from the reason. Linux only, since the other systems bring theirs.
 *
 * @throws Error that says what to install, when there is none and apt-get cannot help.
 */
export function ensureFonts(): void {
  if (process.platform !== 'linux' || hasFont()) return
  if (aptInstall('fonts-dejavu-core') && hasFont()) return
  throw new Error('No fonts found, so the browser would draw no text: install fonts-dejavu-core.')
}

function hasFont(): boolean {
  const listed = spawnSync('fc-list', { encoding: 'utf8' }).stdout ?? ''
  if (listed.trim() !== '') return true
  return fontFolders.some(
    (folder) =>
      existsSync(folder) &&
      readdirSync(folder, { recursive: true }).some((name) =>
        /\.(ttf|otf|ttc|pfb|woff2?)$/i.test(String(name)),
      ),
  )
}
