/** A Chromium with a profile on disk that can be killed in mid-air and started again on the same profile. */
import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { type Browser, chromium, type Page } from 'playwright-core'
import { findChromium } from '../support/find-chromium.ts'

export interface Killable {
  readonly page: Page
  /** Ends every process of the browser at once, without a chance to write anything (SIGKILL). */
  kill(): Promise<void>
}

/** How long a start may take, in milliseconds. */
const START = 30_000

/**
 * Starts a browser on a profile. playwright's own launch would close it politely; this one is a process of ours.
 * Throws if it does not come up.
 */
export async function launchKillable(profile: string): Promise<Killable> {
  const portFile = join(profile, 'DevToolsActivePort')
  // What a killed browser left there would be taken for this one's.
  rmSync(portFile, { force: true })
  const child = spawn(findChromium(), argumentsFor(profile), {
    // It reads orders from descriptor 3 as well. None come, but when this process ends, however it ends, the
    // descriptor closes and the browser ends too.
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
    detached: true,
  })
  try {
    const browser = await connect(child, portFile)
    const context = browser.contexts()[0]
    if (!context) throw new Error('The browser came up without a window.')
    const page = context.pages()[0] ?? (await context.newPage())
    return { page, kill: () => killed(child, browser) }
  } catch (error) {
    endGroup(child)
    throw error
  }
}

function argumentsFor(profile: string): string[] {
  return [
    ...[
      '--headless=new',
      '--remote-debugging-port=0',
      '--remote-debugging-pipe',
      `--user-data-dir=${profile}`,
    ],
    ...['--disable-gpu', '--disable-quic', '--no-first-run', '--no-default-browser-check'],
    ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
    // After a kill it would offer to restore the pages.
    ...['--hide-crash-restore-bubble', '--password-store=basic', '--use-mock-keychain'],
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    'about:blank',
  ]
}

async function connect(child: ChildProcess, portFile: string): Promise<Browser> {
  const until = Date.now() + START
  while (Date.now() < until) {
    if (child.exitCode !== null) throw new Error(`The browser ended at once, with ${child.exitCode}.`)
    const [port, path] = existsSync(portFile) ? readFileSync(portFile, 'utf8').split('\n') : []
    if (port && path) return chromium.connectOverCDP(`ws://127.0.0.1:${port}${path}`)
    await pause(20)
  }
  throw new Error(`The browser did not come up within ${START} ms.`)
}

async function killed(child: ChildProcess, browser: Browser): Promise<void> {
  const gone = new Promise((resolve) => child.once('exit', resolve))
  endGroup(child)
  await gone
  await browser.close().catch(() => undefined)
}

/** The browser leads a group of its own: page, disk and network live in other processes of it. */
function endGroup(child: ChildProcess): void {
  if (child.pid === undefined) return
  try {
    process.kill(-child.pid, 'SIGKILL')
  } catch {
    child.kill('SIGKILL')
  }
}
