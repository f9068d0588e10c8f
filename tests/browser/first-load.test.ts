import { expect, inject, test } from 'vitest'
import { firstLoad } from '../support/first-load.ts'

/** Bytes of gzipped script that the first usable screen may need. */
const MOST = 200_000

test('the first screen needs little script: everything else is fetched after it', () => {
  const scripts = firstLoad(inject('folder'))
  expect(scripts.length).toBeGreaterThan(1)
  const whole = scripts.reduce((sum, { bytes }) => sum + bytes, 0)
  expect(
    whole,
    `${whole} bytes: ${scripts.map(({ file, bytes }) => `${file} ${bytes}`).join(', ')}`,
  ).toBeLessThan(MOST)
})
