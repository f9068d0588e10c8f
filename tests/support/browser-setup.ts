import type { TestProject } from 'vitest/node'
import { ensureFonts } from './browser.ts'
import { findChromium } from './find-chromium.ts'
import { type Served, serveBuild } from './serve-build.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built page is served, with a slash at the end. */
    address: string
    /** Where the files of the built page lie, on disk. */
    folder: string
  }
}

/** Each project of vitest reads this module anew, so what they share hangs on the process. */
const shared = globalThis as { lidwrightServed?: Promise<Served> | undefined }

/** Runs before the browser tests: finds or fetches a browser, builds the page, serves it; once for all projects. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  shared.lidwrightServed ??= serve()
  const served = await shared.lidwrightServed
  project.provide('address', served.address)
  project.provide('folder', served.folder)
  return async () => {
    if (!shared.lidwrightServed) return
    shared.lidwrightServed = undefined
    await served.close()
  }
}

function serve(): Promise<Served> {
  ensureFonts()
  process.env.LIDWRIGHT_CHROMIUM = findChromium()
  return serveBuild()
}
