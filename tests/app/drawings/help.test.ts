import { describe, expect, test } from 'vitest'
import { DRAWINGS, drawingOf, GRID, isCases, LAYERS } from '../../../app/drawings/help/drawings.ts'
import type { Drawing, Ink } from '../../../app/drawings/help/pen.ts'
import {
  ENTRY_LISTS,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  KINDS,
  sections,
} from '../../../geometry/index.ts'
import { readPath } from '../../support/readSvg.ts'

const ALL: readonly Field[] = [
  ...fieldsOf(''),
  ...sections().flatMap(fieldsOf),
  ...Object.keys(KINDS).flatMap(fieldsOfKind),
  ...ENTRY_LISTS.flatMap(fieldsOfEntry),
]
/** Units whose sentence says from where to where something is measured. */
const DRAWN = new Set(['mm', 'mm, readings', 'mm, a list', 'degrees', 'place'])
/** Options that say that nothing is there or nothing was said. */
const NOTHING = new Set<unknown>(['none', 'not stated'])

const inksOf = (drawing: Drawing): readonly Ink[] =>
  isCases(drawing) ? Object.values(drawing.cases) : [drawing]
const ADDRESSES = new Set(ALL.map(({ address }) => address))

/** Whether path data lies within the grid: ends and middles of its pieces, of which an arc has three on its circle. */
function isWithin(data: string): boolean {
  const pieces = readPath(data).flat()
  const inside = (x: number, y: number) => x >= 0 && x <= GRID.width && y >= 0 && y <= GRID.height
  return (
    pieces.length > 0 &&
    pieces.every((piece) =>
      [piece.from, piece.middle, piece.to].every((one) => one === undefined || inside(one.x, one.y)),
    )
  )
}

describe('the small drawings', () => {
  test('are there for every length, angle and place', () => {
    const missing = ALL.filter(({ unit, address }) => DRAWN.has(unit) && !drawingOf(address)).map(
      ({ address, help }) =>
        `“${address}” (${help}) has no drawing: add one under that name to the file of its section in app/drawings/help.`,
    )
    expect(missing).toEqual([])
    expect(ALL.filter(({ unit }) => DRAWN.has(unit)).length).toBeGreaterThan(250)
  })

  test('of a choice show each of its options, and nothing else', () => {
    const missing = ALL.flatMap(({ address, options = [] }) => {
      const drawing = drawingOf(address)
      if (!drawing || !isCases(drawing)) return []
      const strange = Object.keys(drawing.cases).filter((one) => options.length > 0 && !options.includes(one))
      return [
        ...options
          .filter((option) => !NOTHING.has(option) && !Object.hasOwn(drawing.cases, String(option)))
          .map((option) => `“${address}” draws no “${option}”.`),
        ...strange.map((one) => `“${address}” draws “${one}”, which is no option of it.`),
      ]
    })
    expect(missing).toEqual([])
  })

  test('belong to a field each, or to a group of fields', () => {
    const names = new Set(
      Object.keys(KINDS)
        .flatMap(fieldsOfKind)
        .map(({ name }) => `things.*.${name}`),
    )
    const strange = Object.keys(DRAWINGS).filter(
      (key) =>
        !ADDRESSES.has(key) && !names.has(key) && !ALL.some(({ address }) => address.startsWith(`${key}.`)),
    )
    expect(strange).toEqual([])
  })

  test('of a kind are its own before the general one, and a general one serves a kind without', () => {
    expect(drawingOf('things.pickup.depth')).toBe(DRAWINGS['things.pickup.depth'])
    expect(drawingOf('things.slot.depth')).toBe(DRAWINGS['things.*.depth'])
    expect(drawingOf('things.slot.depth')).toBeDefined()
    expect(drawingOf('things.slot.unheard')).toBeUndefined()
  })

  // Points and pieces lie within it; half of a line's width may stand out, for which the page leaves room.
  test('stay within their frame, and none is empty', () => {
    const wrong = Object.entries(DRAWINGS).flatMap(([address, drawing]) =>
      inksOf(drawing).flatMap((ink) => {
        const drawn = LAYERS.filter((layer) => ink[layer])
        return [
          ...(drawn.length === 0 ? [`“${address}” shows nothing.`] : []),
          ...drawn.flatMap((layer) =>
            isWithin(ink[layer] ?? '') ? [] : [`“${address}” leaves its frame: ${layer}.`],
          ),
        ]
      }),
    )
    expect(wrong).toEqual([])
  })

  test('that are measured have the measure in them', () => {
    const plain = ALL.filter(({ unit }) => DRAWN.has(unit)).flatMap(({ address }) =>
      inksOf(drawingOf(address) ?? {}).some((ink) => !ink.measure && !ink.area) ? [address] : [],
    )
    expect(plain).toEqual([])
  })
})
