/** How it is cut, in Transfer: fields of the design, the line of the tool, sheets of stock. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { act, type ReactNode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { ChoiceRows } from '../../../app/places/cutting/ChoiceRows.tsx'
import { USUAL } from '../../../app/places/cutting/choices.ts'
import { MachineFields } from '../../../app/places/cutting/MachineFields.tsx'
import { StockSheets } from '../../../app/places/cutting/StockSheets.tsx'
import { ToolCorner, ToolLines } from '../../../app/places/cutting/ToolLines.tsx'
import { makeTemplates, makeTestPiece } from '../../../app/places/templates.ts'
import { adopt, setField, useBench } from '../../../app/state/index.ts'
import {
  type Design,
  featuresOf,
  type Part,
  partsOf,
  readDesign,
  solve,
  toolFor,
} from '../../../geometry/index.ts'
import { project } from '../../support/project-files.ts'

let root: Root
let page: HTMLElement

beforeEach(() => {
  page = document.body.appendChild(document.createElement('div'))
  root = createRoot(page)
  const read = readDesign(
    readFileSync(join(project, 'sample-boxes/tea-box-three-strings.lidwright.json'), 'utf8'),
  )
  if (!read.ok) throw new Error(read.faults[0]?.sentence)
  adopt(read.design)
})
afterEach(() => {
  act(() => root.unmount())
  page.remove()
})

/** Waits, as a reader would, until something stands on the page; a test that waits in vain runs out of time. */
async function until(there: () => boolean): Promise<void> {
  while (!there()) await act(() => new Promise((done) => setTimeout(done, 20)))
}

const draw = (node: ReactNode) => act(async () => root.render(node))
const labels = () => [...page.querySelectorAll('.field')].map((field) => field.textContent ?? '')
const design = (): Design => useBench.getState().design
const set = (name: string, value: unknown) => act(() => void setField(['cutting', name], value, name))
const part = (id: string): Part => {
  const found = partsOf(solve(design())).find((one) => one.id === id)
  if (!found) throw new Error(`no ${id}`)
  return found
}

describe('the fields', () => {
  test('by hand there is one question; a laser asks for its kerf, a router for its cutter and corners', async () => {
    await draw(<MachineFields />)
    expect(labels()).toHaveLength(1)
    set('process', 'laser')
    expect(labels().join()).toContain('Smallest web')
    expect(labels().join()).not.toContain('Cutter')
    set('kerfs', 'for each material')
    expect(labels().filter((label) => label.startsWith('Kerf in the'))).toHaveLength(5)
    set('process', 'router')
    expect(labels().join()).toContain('Inside corners')
    expect(labels().join()).not.toContain('Kerf')
  })

  test('what the files are for matters for SVG, the release for DXF, the lines for machines', async () => {
    const rows = (format: 'svg' | 'dxf') =>
      draw(<ChoiceRows choices={USUAL} format={format} onChange={() => undefined} />)
    await rows('svg')
    expect(labels().join()).toContain('SVG for')
    expect(labels().join()).not.toMatch(/Release|Lines are/)
    set('process', 'laser')
    await rows('dxf')
    expect(labels().join()).toMatch(/Release of the DXF.*Lines are/)
  })
})

describe('the line of the tool', () => {
  test('is drawn as wide as the tool, for each feature, beside the part; by hand there is none', async () => {
    const lines = () =>
      draw(
        <svg role="img" aria-label="A part">
          <ToolLines part={part('neck-end-wall')} />
        </svg>,
      )
    await lines()
    expect(page.querySelectorAll('path')).toHaveLength(0)
    set('process', 'router')
    await lines()
    const tool = toolFor(design(), 'neck-end-wall')
    const features = tool ? featuresOf(part('neck-end-wall'), tool) : []
    const swaths = [...page.querySelectorAll<SVGPathElement>('.tool-swath')]
    expect(swaths).toHaveLength(features.length)
    expect(swaths[0]?.style.strokeWidth).toBe('3.175')
    await draw(<ToolCorner part={part('neck-end-wall')} />)
    expect(page.textContent).toMatch(/Cutter 0\.125\sin\. The outline is followed 0\.06[23]\sin outside/)
  })
})

describe('sheets of stock', () => {
  test('show how full each is, and a part larger than the stock as a sentence', async () => {
    const ids = partsOf(solve(design())).map(({ id }) => id)
    await draw(<StockSheets only={ids} lines={USUAL.lines} />)
    await until(() => page.querySelectorAll('.stock-sheet').length > 1)
    expect(page.textContent).toMatch(/\d % full\. .*Lid/)
    set('sheetLength', 120)
    await until(() => page.querySelector('[role=alert]') !== null)
    expect(page.querySelector('[role=alert]')?.textContent).toMatch(/Lid is .* Take a larger sheet/)
  }, 30_000)
})

describe('files', () => {
  const wanted = { format: 'both', dxfUnits: 'mm', only: ['lid', 'base'] } as const

  test('follow the tool, or the parts as drawn; on stock they say how full the sheet is', async () => {
    set('process', 'laser')
    const onStock = (only: readonly string[]) =>
      makeTemplates(solve(design()), { ...wanted, only, choices: { ...USUAL, come: 'laid out on stock' } })
    // Walls are of one stuff and share a sheet; the lid's is another than the base's.
    const made = await onStock(['bass-wall', 'treble-wall'])
    expect(made.files.map(({ format }) => format)).toEqual(['svg', 'dxf'])
    expect((await onStock(wanted.only)).files.map(({ format }) => format)).toEqual([
      'svg',
      'svg',
      'dxf',
      'dxf',
    ])
    expect(made.said.join()).toContain('% full')
    const cut = await makeTemplates(solve(design()), { ...wanted, choices: USUAL })
    const drawn = await makeTemplates(solve(design()), {
      ...wanted,
      choices: { ...USUAL, lines: 'the parts as drawn' },
    })
    expect(cut.files[1]?.text).toContain('laser, kerf 0.2 mm')
    expect(drawn.files[1]?.text).not.toContain('kerf')
  })

  test('a test piece for the machine, none by hand', async () => {
    const writing = { format: 'svg', dxfUnits: 'mm', choices: USUAL } as const
    await expect(makeTestPiece(solve(design()), 4, writing)).rejects.toThrow('by hand')
    set('process', 'laser')
    const files = await makeTestPiece(solve(design()), 4, writing)
    expect(files.map(({ name }) => name)).toEqual([expect.stringMatching(/test-piece\.svg$/)])
    await expect(makeTestPiece(solve(design()), 0.2, writing)).rejects.toThrow('too thin')
  })
})
