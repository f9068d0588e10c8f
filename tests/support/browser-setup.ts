import type { TestProject } from 'vitest/node'
import { ensureFonts } from './browser.ts'
import { findChromium } from './find-chromium.ts'
import { serveBuild } from './serve-build.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built page is served, with a slash at the end. */
    address: string
    /** Where the files of the built page lie, on disk. */
    folder: string
  }
}

/** Runs once before the browser tests: finds or fetches a browser, builds the page, serves it. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  ensureFonts()
  process.env.LIDWRIGHT_CHROMIUM = findChromium()
  const served = await serveBuild()
  project.provide('address', served.address)
  project.provide('folder', served.folder)
  return served.close
}
