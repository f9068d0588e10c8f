import { availableParallelism } from 'node:os'
import { resolve } from 'node:path'
import { defineConfig } from 'vitest/config'
import type { InlineConfig } from 'vitest/node'

/**
 * Five kinds of test, told apart by folder:
 * - `dom`: tests/app, as far as it is written in TSX: what needs a document, in jsdom;
 * - `app`: the rest of tests/app, in plain Node, each file with the state of the application to itself;
 * - `browser`: tests/browser, driving a real Chromium over a production build of the page;
 * - `alone`: those of them that measure time, when nothing else runs;
 * - `unit`: everything else, in plain Node.
 */
const app = 'tests/app/**/*.test.{ts,tsx}'
const screen = 'tests/app/**/*.test.tsx'
const browser = 'tests/browser/**/*.test.ts'
/** What is lost when a browser is killed, and what holds the page up, hang on how fast the machine answers. */
const alone = ['tests/browser/killed.test.ts', 'tests/browser/printing.test.ts']

/** On two cores vitest would leave one idle. Projects of one group have to agree about this number. */
const maxWorkers = Math.max(2, availableParallelism() - 1)

const inBrowser = {
  environment: 'node',
  globalSetup: ['tests/support/browser-setup.ts'],
  setupFiles: ['tests/support/browser-file.ts'],
  testTimeout: 60_000,
  hookTimeout: 60_000,
  // A page that is loaded again takes more than the usual second on a slow machine.
  expect: { poll: { timeout: 15_000 } },
  // The files of a worker share its browser.
  isolate: false,
} as const satisfies InlineConfig

export default defineConfig({
  root: resolve(import.meta.dirname, '..'),
  test: {
    // A forgotten `.only` must fail the run rather than shrink it.
    allowOnly: false,
    // A test that hangs is found all the same; a machine that is busy with something else makes no test fail.
    testTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: [app, browser],
          maxWorkers,
          // The engine and the exporters remember only what follows from what they were asked, so files share them
          // once they are read in. Whatever a test puts in the place of something global it has to put back.
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: 'app', environment: 'node', include: [app], exclude: [screen], maxWorkers },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          maxWorkers,
          environment: 'jsdom',
          include: [screen],
          setupFiles: ['tests/support/dom-setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          ...inBrowser,
          name: 'browser',
          include: [browser],
          exclude: alone,
          // While one page waits for a frame or for the disk, another works. More of them starve each other.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: { ...inBrowser, name: 'alone', include: alone, maxWorkers: 1, sequence: { groupOrder: 2 } },
      },
    ],
  },
})
