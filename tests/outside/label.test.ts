/** The label as a camera has it: drawn by librsvg, read by a code reader that this project did not write. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import jsqr from 'jsqr'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readCarried } from '../../exporters/label/carried.ts'
import { labelPicture, writeLabelSvg } from '../../exporters/label/label.ts'
import { checkDesign, type Design } from '../../geometry/index.ts'
import { needRsvgConvert } from '../support/outsideTools.ts'
import { readPng } from '../support/readPng.ts'
import { samples } from '../support/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'lidwright-label-'))
beforeAll(needRsvgConvert)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const DPI = 300

function seen(design: Design) {
  const [svg, png] = [join(folder, 'label.svg'), join(folder, 'label.png')]
  writeFileSync(svg, writeLabelSvg(design))
  const { status, stderr } = spawnSync('rsvg-convert', [
    ...['-d', String(DPI), '-p', String(DPI), '-b', 'white', '-o', png, svg],
  ])
  if (status !== 0) throw new Error(String(stderr))
  return readPng(readFileSync(png))
}

describe.each(samples().map(({ name, design }) => ({ name, design })))('the label of $name', ({ design }) => {
  it('is 106 × 60 mm, and its code read at 300 dots to the inch gives the design back', () => {
    const { width, height, pixel } = seen(design)
    expect((width / DPI) * 25.4).toBeCloseTo(106, 0)
    expect((height / DPI) * 25.4).toBeCloseTo(60, 0)
    const pixels = new Uint8ClampedArray(width * height * 4)
    for (let at = 0; at < width * height; at++)
      pixels.set([...pixel(at % width, Math.floor(at / width)), 255], at * 4)
    const code = jsqr(pixels, width, height)
    expect(readCarried(code?.data ?? '')).toEqual({ ok: true, design })
  })
})

it('a design too large for a code has its checksum instead', () => {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    things: Array.from({ length: 400 }, (_, index) => ({
      kind: 'sound-hole',
      id: `hole-${index}`,
      along: ((index * 7919) % 2311) / 10,
      across: ((index * 104_729) % 1700) / 10 - 85,
      diameter: 3 + ((index * 31) % 97) / 100,
    })),
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const { shapes } = labelPicture(reading.design)
  expect(shapes.some((one) => one.kind === 'squares')).toBe(false)
  const texts = shapes.flatMap((one) => (one.kind === 'text' ? [one.text] : []))
  expect(texts.join(' ')).toMatch(/Design ([0-9A-F]{4} ){3}[0-9A-F]{4}/)
})
