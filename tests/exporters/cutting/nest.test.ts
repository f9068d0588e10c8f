import { areaD, EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathsD } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  grainOf,
  isFromSheet,
  type NestedSheet,
  nested,
  type Stock,
  stockOf,
  turned,
} from '../../../exporters/cutting/nest.ts'
import { sheetTemplates } from '../../../exporters/cutting/sheets.ts'
import {
  bounds,
  flatten,
  move,
  type Part,
  partsOf,
  rectangle,
  roundedRectangle,
  solve,
} from '../../../geometry/index.ts'
import { evenly } from '../../geometry/plane/shapes.ts'
import { designOf } from '../../support/designs.ts'

const STOCK: Stock = { length: 600, width: 400, margin: 5, spacing: 5, grain: 'along the sheet' }

function board(id: string, length: number, width: number, thickness = 4, radius = 0): Part {
  return {
    id,
    title: `Board ${id}`,
    seen: 'from outside',
    mirrored: false,
    headEnd: 'left',
    hand: 'right',
    thickness,
    outline:
      radius > 0
        ? roundedRectangle({ x: 3, y: -7 }, length, width, radius)
        : rectangle(2, 3, 2 + length, 3 + width),
    operations: [],
  }
}

const along = () => 'along x' as const
const any = () => 'any' as const

const pathOf = ({ part, shift }: NestedSheet['parts'][number]): PathsD => [
  flatten(move(part.outline, shift.x, shift.y), 0.001).map(({ x, y }) => ({ x, y })),
]
const size = (paths: PathsD) => paths.reduce((sum, one) => sum + areaD(one), 0)

/** By a library of polygons: no two parts share wood, nor do they when each is grown by a little under half the space. */
function proveApart({ parts, stock }: NestedSheet): void {
  const grown = parts.map((one) =>
    inflatePathsD(pathOf(one), stock.spacing / 2 - 0.01, JoinType.Round, EndType.Polygon, 2, 4),
  )
  for (const [index, one] of grown.entries())
    for (const other of grown.slice(index + 1))
      expect(size(intersectD(one, other, FillRule.NonZero, 4))).toBe(0)
  for (const { part, shift } of parts) {
    const box = bounds(move(part.outline, shift.x, shift.y))
    expect(Math.min(box.minX, box.minY)).toBeGreaterThanOrEqual(stock.margin - 1e-6)
    expect(box.maxX).toBeLessThanOrEqual(stock.length - stock.margin + 1e-6)
    expect(box.maxY).toBeLessThanOrEqual(stock.width - stock.margin + 1e-6)
  }
}

/** For a busy machine, ms. */
const PATIENCE = 30_000

describe('parts on sheets', () => {
  test(
    'never overlap, keep their space and stay within the rim; all of them are there once',
    async () => {
      const boards = fc.array(
        fc.tuple(evenly(20, 380), evenly(20, 380), fc.constantFrom(3, 4), evenly(0, 9)),
        {
          minLength: 1,
          maxLength: 14,
        },
      )
      await fc.assert(
        fc.asyncProperty(boards, fc.boolean(), evenly(0, 12), async (sizes, matters, spacing) => {
          const parts = sizes.map(([l, w, t, r], index) => board(`${index}`, l, w, t, r))
          const found = await nested(parts, { ...STOCK, spacing }, matters ? along : any)
          if (!found.ok) throw new Error(found.sentences.join(' '))
          for (const sheet of found.sheets) proveApart(sheet)
          const ids = found.sheets.flatMap((sheet) => sheet.parts.map(({ part }) => part.id))
          expect(ids.sort()).toEqual(parts.map(({ id }) => id).sort())
          for (const { parts: on, thickness } of found.sheets)
            for (const { part } of on) expect(part.thickness).toBe(thickness)
        }),
        { numRuns: 40 },
      )
    },
    PATIENCE,
  )

  test('say how full they are: the share of the whole sheet', async () => {
    const found = await nested([board('a', 300, 200), board('b', 120, 200)], STOCK, along)
    if (!found.ok) throw new Error('they fit')
    expect(found.sheets.map(({ full }) => full)).toEqual([expect.closeTo((420 * 200) / (600 * 400), 9)])
  })

  test('keep the grain: not turned along it, turned across it, either way where it does not matter', async () => {
    const sizeOf = async (
      grain: 'along x' | 'along y' | 'any',
      length: number,
      width: number,
      stock = STOCK,
    ) => {
      const found = await nested([board('a', length, width)], stock, () => grain)
      if (!found.ok) return found.sentences
      const [laid] = found.sheets.flatMap((sheet) => sheet.parts)
      if (laid === undefined) return []
      const box = bounds(laid.part.outline)
      return [Math.round(box.maxX - box.minX), Math.round(box.maxY - box.minY)]
    }
    expect(await sizeOf('along x', 200, 300)).toEqual([200, 300])
    expect(await sizeOf('along y', 200, 300)).toEqual([300, 200])
    expect(await sizeOf('any', 200, 500)).toEqual([500, 200])
    const refused = await sizeOf('along x', 200, 500)
    expect(refused).toEqual([expect.stringContaining('across the grain it would fit')])
    expect(await sizeOf('along x', 200, 500, { ...STOCK, grain: 'does not matter' })).toEqual([500, 200])
  })

  test('the same parts come out in the same places, in whichever order they are given', async () => {
    const parts = [board('a', 300, 200), board('b', 120, 200), board('c', 120, 200), board('d', 50, 60)]
    const one = await nested(parts, STOCK, any)
    const other = await nested([...parts].reverse(), STOCK, any)
    expect(JSON.stringify(other)).toBe(JSON.stringify(one))
  })
})

describe('what does not fit', () => {
  test('a part larger than the stock is said, with both sizes', async () => {
    const found = await nested([board('a', 700, 100), board('b', 10, 10)], STOCK, any)
    expect(found).toEqual({
      ok: false,
      sentences: [
        expect.stringMatching(
          /^Board a is 700\.0 mm × 100\.0 mm .* room for 590\.0 mm × 390\.0 mm\. Take a larger/,
        ),
      ],
    })
  })

  test('a rim that leaves nothing of the sheet', async () => {
    const found = await nested([board('b', 10, 10)], { ...STOCK, margin: 200 }, any)
    expect(found).toEqual({ ok: false, sentences: [expect.stringContaining('leaves nothing')] })
  })
})

test('a part turned four times is where it was, with all that is on it', () => {
  for (const part of partsOf(solve(designOf({}))).filter(isFromSheet)) {
    const back = turned(turned(turned(turned(part))))
    expect(bounds(back.outline)).toEqual(bounds(part.outline))
    expect(back.operations.map(({ kind, of }) => `${kind} ${of}`)).toEqual(
      part.operations.map(({ kind, of }) => `${kind} ${of}`),
    )
  }
})

test('files of a design: a sheet for each thickness, the neck left out, the same bytes every time', async () => {
  const design = designOf({ box: { lid: { grain: 'across' } } })
  const parts = partsOf(solve(design))
  expect(grainOf(parts[0] as Part, design)).toBe('along y')
  expect(stockOf(design)).toMatchObject({ length: 600, width: 400 })
  const made = await sheetTemplates(parts, design, { title: 'Tea box', formats: ['svg', 'dxf'] })
  if (!made.ok) throw new Error(made.sentences.join(' '))
  expect(made.files.map(({ name }) => name).filter((name) => name.endsWith('svg'))).toEqual(
    made.said.filter((line) => line.startsWith('Sheet')).map((_, index) => `tea-box-sheet-${index + 1}.svg`),
  )
  expect(made.said.at(-1)).toContain('Neck, from the front')
  expect(made.files.every(({ text }) => text.includes('STOCK'))).toBe(true)
  const again = await sheetTemplates(parts, design, { title: 'Tea box', formats: ['svg', 'dxf'] })
  expect(again).toEqual(made)
  const inches = designOf({ units: { display: 'inches' }, cutting: { sheetLength: 127, sheetWidth: 127 } })
  const refused = await sheetTemplates(partsOf(solve(inches)), inches, { title: 'T', formats: ['svg'] })
  expect(refused.ok ? '' : refused.sentences[0]).toContain('a sheet of 5 in × 5 in')
  const small = designOf({ cutting: { sheetLength: 100, sheetWidth: 100 } })
  expect(await sheetTemplates(partsOf(solve(small)), small, { title: 'T', formats: ['svg'] })).toMatchObject({
    ok: false,
    sentences: expect.arrayContaining([expect.stringMatching(/^Lid is /)]),
  })
})

test('parts of one thickness share a sheet only where they are of one stuff', async () => {
  const parts = ['a', 'b', 'c', 'd'].map((id) => board(id, 60, 40))
  const together = await nested(parts, STOCK, any)
  const apart = await nested(parts, STOCK, any, ({ id }) => (id === 'a' || id === 'c' ? 'maple' : 'plywood'))
  if (!together.ok || !apart.ok) throw new Error('they fit')
  expect(together.sheets).toHaveLength(1)
  expect(apart.sheets.map(({ stuff, parts: on }) => [stuff, on.map(({ part }) => part.id).sort()])).toEqual([
    ['maple', ['a', 'c']],
    ['plywood', ['b', 'd']],
  ])
})
