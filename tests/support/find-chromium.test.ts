import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { findChromium } from './find-chromium.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lidwright-find-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** A program that answers like a browser asked for its version, or like a stub that is none. */
function program(path: string, answer = 'Chromium 150.0.1') {
  const whole = join(folder, path)
  mkdirSync(dirname(whole), { recursive: true })
  writeFileSync(whole, answer === '' ? '#!/bin/sh\nexit 1\n' : `#!/bin/sh\necho ${answer}\n`)
  chmodSync(whole, 0o755)
  return whole
}

/** Looks with nothing around but what the test put there. */
const find = (environment: Record<string, string>) =>
  findChromium({ environment: { HOME: folder, ...environment }, mayInstall: false, platform: 'linux' })

describe('a browser is looked for', () => {
  test('first where LIDWRIGHT_CHROMIUM says', () => {
    program('path/chromium')
    const named = program('elsewhere/my-browser')
    expect(find({ LIDWRIGHT_CHROMIUM: named, PATH: join(folder, 'path') })).toBe(named)
  })

  test('and nowhere else when LIDWRIGHT_CHROMIUM is wrong', () => {
    program('path/chromium')
    const wrong = join(folder, 'nothing')
    expect(() => find({ LIDWRIGHT_CHROMIUM: wrong, PATH: join(folder, 'path') })).toThrow(wrong)
  })

  test('then on the path, chromium before chrome before edge', () => {
    const environment = { PATH: `${join(folder, 'a')}:${join(folder, 'b')}` }
    const edge = program('a/microsoft-edge')
    expect(find(environment)).toBe(edge)
    const chrome = program('b/google-chrome')
    expect(find(environment)).toBe(chrome)
    const chromium = program('b/chromium')
    expect(find(environment)).toBe(chromium)
  })

  test('past a stub that only says how to install one', () => {
    program('a/chromium', '')
    const chrome = program('b/google-chrome')
    expect(find({ PATH: `${join(folder, 'a')}:${join(folder, 'b')}` })).toBe(chrome)
  })

  test('then in the cache of downloads, newest first', () => {
    program('.cache/ms-playwright/chromium-999/chrome-linux/chrome')
    const newest = program('.cache/ms-playwright/chromium-1200/chrome-linux64/chrome')
    expect(find({ PATH: join(folder, 'a') })).toBe(newest)
  })

  test('and when there is none, one line says what to do', () => {
    expect(() => find({ PATH: folder })).toThrow(/^No Chromium found: install .*LIDWRIGHT_CHROMIUM.*$/)
  })
})
