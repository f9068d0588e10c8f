import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, inject, test } from 'vitest'

/** Bytes of gzipped script that the first usable screen may need. */
const MOST = 200_000

test('the first screen needs little script: everything else is fetched after it', () => {
  const folder = inject('folder')
  const page = readFileSync(join(folder, 'index.html'), 'utf8')
  const scripts = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.js)"/g)].map(([, file]) => file!)
  expect(scripts.length).toBeGreaterThan(1)
  const sizes = scripts.map(
    (file) => [file, gzipSync(readFileSync(join(folder, file)), { level: 9 }).length] as const,
  )
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0)
  expect(whole, `${whole} bytes: ${sizes.map(([file, size]) => `${file} ${size}`).join(', ')}`).toBeLessThan(
    MOST,
  )
})
