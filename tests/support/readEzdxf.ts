/** DXF read by ezdxf, a Python library with an audit of its own. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { PYTHON } from './outsideTools.ts'
import type { Drawn } from './segments.ts'

type Pair = [x: number, y: number]

export interface Found {
  errors: string[]
  fixes: string[]
  version: string
  units: number
  encoding: string
  extents: [Pair, Pair]
  space: string
  layers: Record<string, [colour: number, lineType: string]>
  entities: {
    type: string
    layer: string
    owner: string
    closed?: boolean
    segments?: [Pair, Pair, Pair][]
    circle?: [x: number, y: number, radius: number]
    text?: string
    at?: Pair
    height?: number
    rotation?: number
  }[]
}

/** From this folder, and from a bundle of the tests that lies as deep. */
const script = resolve(import.meta.dirname, '../../tests/outside/read_dxf.py')

/** Reads the texts of files in one process. Throws where it cannot read one of them. */
export function readAllByEzdxf(texts: readonly string[]): Found[] {
  const folder = mkdtempSync(join(tmpdir(), 'lidwright-'))
  try {
    const files = texts.map((text, index) => {
      const file = join(folder, `${index}.dxf`)
      writeFileSync(file, text)
      return file
    })
    const { stdout, stderr, status } = spawnSync(PYTHON, [script, ...files], {
      encoding: 'utf8',
      maxBuffer: 1 << 29,
    })
    if (status !== 0) throw new Error(`ezdxf could not read a file: ${stderr}`)
    return stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Found)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

export const readByEzdxf = (text: string): Found => readAllByEzdxf([text])[0] as Found

const point = ([x, y]: Pair) => ({ x, y })

/** Contours on a layer. */
export function drawnOn(found: Found, layer: string): Drawn[] {
  return found.entities
    .filter((entity) => entity.layer === layer)
    .flatMap(({ circle, segments }): Drawn[] => {
      if (circle !== undefined) return [{ centre: { x: circle[0], y: circle[1] }, radius: circle[2] }]
      if (segments === undefined) return []
      return [segments.map(([a, b, c]) => ({ from: point(a), middle: point(b), to: point(c) }))]
    })
}
