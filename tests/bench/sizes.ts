/** What has to be fetched and held: sizes of the bundles, memory of a large design. */
import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { firstLoad } from '../support/first-load.ts'
import { exact, type Row } from './row.ts'

/** Thousands of bytes of all scripts in a folder, gzipped one by one. */
function scriptsIn(folder: string): number {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.[cm]?js$/.test(file),
  )
  return (
    files.reduce((sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length, 0) /
    1000
  )
}

/** `page` is the built page, `command` the packed command line. */
export function sizeRows(page: string, command: string): Row[] {
  const first = firstLoad(page).reduce((sum, { bytes }) => sum + bytes, 0) / 1000
  return [
    exact('gzipped script before the first screen', 'kB', first, 200),
    exact('gzipped script of the whole page', 'kB', scriptsIn(page)),
    exact('gzipped script of the command line', 'kB', scriptsIn(command)),
  ]
}

const ROUNDS = 5

/** Most memory a process ever held, with a design of so many holes on its way to templates. */
export function memoryRows(script: string): Row[] {
  return [50, 5000].map((holes): Row => {
    const held = Array.from({ length: ROUNDS }, () => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [script, String(holes)], {
        encoding: 'utf8',
      })
      if (status !== 0) throw new Error(`the design of ${holes} holes failed: ${stderr}`)
      return Number(stdout) / 1024
    }).sort((a, b) => a - b)
    const at = (share: number) => held[Math.floor(share * ROUNDS)] ?? 0
    return {
      name: `most memory of a process: ${holes} holes, from design to SVG`,
      unit: 'MB',
      median: at(0.5),
      low: at(0.25),
      high: at(0.75),
      wanted: null,
    }
  })
}
