/** Read before each file of browser tests. */
import { afterAll } from 'vitest'
import { closeContexts } from './browser.ts'

// A page that is left open would go on drawing beside the tests of the next file.
afterAll(closeContexts)
