import { describe, expect, test } from 'vitest'
import { PAPER_NAMES, planPrint, STANDARD_SETUP } from '../../../exporters/index.ts'
import { joinMarks } from '../../../exporters/pdf/joins.ts'
import { letterOf } from '../../../exporters/pdf/plan.ts'
import { SEAM_CLEARANCE } from '../../../exporters/pdf/seams.ts'
import { bounds, type Part, partsOf, rectangle, solve } from '../../../geometry/index.ts'
import { allParts, lid, neck } from '../../support/sampleParts.ts'
import { samples } from '../../support/samples.ts'

const planned = (parts: readonly Part[], changes: Partial<typeof STANDARD_SETUP> = {}) => {
  const reading = planPrint(parts, { ...STANDARD_SETUP, ...changes })
  if (!reading.ok) throw new Error(reading.sentence)
  return reading.plan
}

const everySetup = PAPER_NAMES.flatMap((paper) =>
  (['upright', 'lying', 'fewest'] as const).map((way) => ({ ...STANDARD_SETUP, paper, way })),
)

describe('planPrint', () => {
  test('the tiles of every part cover all that is drawn of it, on every paper, either way round', () => {
    const boxes = samples().map(({ design }) => partsOf(solve(design)))
    for (const setup of everySetup) {
      for (const parts of [allParts, ...boxes]) {
        for (const { drawing, tiles, columns, rows, frame } of planned(parts, setup).parts) {
          expect(tiles).toHaveLength(columns.length * rows.length)
          // Columns and rows leave no gap (seams.test.ts), so their ends tell whether the whole is covered.
          const shown = tiles.map((tile) => tile.shown)
          expect(Math.min(...shown.map((one) => one.minX))).toBeLessThanOrEqual(drawing.extent.minX)
          expect(Math.max(...shown.map((one) => one.maxX))).toBeGreaterThanOrEqual(drawing.extent.maxX)
          expect(Math.min(...shown.map((one) => one.minY))).toBeLessThanOrEqual(drawing.extent.minY)
          expect(Math.max(...shown.map((one) => one.maxY))).toBeGreaterThanOrEqual(drawing.extent.maxY)
          for (const one of shown) {
            expect(one.maxX - one.minX).toBeLessThanOrEqual(frame.window.maxX - frame.window.minX + 1e-9)
            expect(one.maxY - one.minY).toBeLessThanOrEqual(frame.window.maxY - frame.window.minY + 1e-9)
          }
        }
      }
    }
  })

  test('left alone it takes the way round that needs fewer sheets', () => {
    for (const paper of PAPER_NAMES) {
      const count = (way: 'upright' | 'lying' | 'fewest') => planned([neck], { paper, way }).count
      expect(count('fewest')).toBe(Math.min(count('upright'), count('lying')))
    }
    expect(planned([neck]).parts[0]?.frame.way).toBe('lying')
  })

  test('no seam of any sample runs within 3 mm of the centre of a hole or a fret line', () => {
    for (const { design } of samples()) {
      for (const { part, columns, rows, hits } of planned(partsOf(solve(design))).parts) {
        expect(hits).toBe(0)
        for (const operation of part.operations) {
          const centre =
            operation.kind === 'drill'
              ? operation.centre
              : operation.kind === 'slot'
                ? { x: operation.from.x, y: Number.NaN }
                : undefined
          if (centre === undefined) continue
          for (const column of columns.slice(1))
            expect(Math.abs(column.from - centre.x)).toBeGreaterThanOrEqual(SEAM_CLEARANCE)
          for (const row of rows.slice(0, -1))
            expect(Math.abs(row.from - centre.y) < SEAM_CLEARANCE).toBe(false)
        }
      }
    }
  })

  test('rows are lettered from the top and columns counted from the left', () => {
    const board: Part = { ...lid, outline: rectangle(0, 0, 600, 400), operations: [] }
    const { tiles } = planned([board]).parts[0] as ReturnType<typeof planned>['parts'][0]
    const first = tiles.find((tile) => tile.name === 'A1')?.shown
    const last = tiles.at(-1)
    expect(first?.minX).toBeLessThanOrEqual(0)
    expect(first?.maxY).toBeGreaterThanOrEqual(400)
    expect(last?.shown.minY).toBeLessThanOrEqual(0)
    expect(last?.shown.maxX).toBeGreaterThanOrEqual(600)
    expect([letterOf(0), letterOf(25), letterOf(26), letterOf(27)]).toEqual(['A', 'Z', 'AA', 'AB'])
  })

  test('a seam has two joining marks, each whole on both sheets, all of different names', () => {
    const board: Part = { ...lid, outline: rectangle(0, 0, 600, 400), operations: [] }
    const plan = planned([board])
    const sheets = plan.parts[0] as (typeof plan.parts)[0]
    const marks = joinMarks(sheets, plan.setup.overlap)
    const [rows, columns] = [sheets.rows.length, sheets.columns.length]
    expect(marks).toHaveLength(2 * (rows * (columns - 1) + columns * (rows - 1)))
    expect(new Set(marks.map((mark) => mark.name)).size).toBe(marks.length)
    for (const { centre } of marks) {
      const on = sheets.tiles.filter(
        ({ shown }) =>
          centre.x - 4 >= shown.minX &&
          centre.x + 4 <= shown.maxX &&
          centre.y - 4 >= shown.minY &&
          centre.y + 4 <= shown.maxY,
      )
      expect(on).toHaveLength(2)
    }
  })

  test.each([
    [{ margin: 80 }, /margin of 80\.0 mm leaves too little of A4 .* up to 37 mm will do/],
    [{ margin: -1 }, /margin is -1/],
    [{ margin: Number.NaN }, /margin is NaN/],
    [{ overlap: 2 }, /overlap is 2\.0 mm: sheets need 6 to 40 mm/],
    [{ overlap: Number.NaN }, /overlap is NaN/],
    [{ correction: { x: 0.5, y: 1 } }, /off by 50 % along X/],
  ])('%o is refused with a sentence', (changes, sentence) => {
    const reading = planPrint([lid], { ...STANDARD_SETUP, ...changes })
    expect(reading.ok).toBe(false)
    expect(!reading.ok && reading.sentence).toMatch(sentence)
  })

  test('the largest margin it names will do, and a millimetre more will not', () => {
    for (const paper of PAPER_NAMES) {
      const refused = planPrint([lid], { ...STANDARD_SETUP, paper, margin: 300 })
      const most = Number(/up to (\d+) mm/.exec(refused.ok ? '' : refused.sentence)?.[1])
      expect(planPrint([lid], { ...STANDARD_SETUP, paper, margin: most }).ok).toBe(true)
      expect(planPrint([lid], { ...STANDARD_SETUP, paper, margin: most + 1 }).ok).toBe(false)
    }
  })

  test('no part, no plan; a part with a number that is none throws', () => {
    expect(planPrint([], STANDARD_SETUP)).toMatchObject({ ok: false })
    const broken: Part = { ...lid, outline: rectangle(0, 0, 100, 50), thickness: Number.NaN }
    expect(() => planPrint([broken], STANDARD_SETUP)).toThrow('NaN')
    const hole: Part = {
      ...lid,
      operations: [
        { kind: 'drill', centre: { x: Number.NaN, y: 0 }, diameter: 3, depth: 'through', of: 'Hole' },
      ],
    }
    expect(() => planPrint([hole], STANDARD_SETUP)).toThrow('NaN')
  })

  test('the size of a part is not changed by the correction, only its place on the paper', () => {
    const plain = planned([lid]).parts[0]
    const corrected = planned([lid], { correction: { x: 1.01, y: 0.99 } }).parts[0]
    expect(corrected?.drawing.outline).toEqual(plain?.drawing.outline)
    expect(bounds(lid.outline)).toEqual(corrected?.drawing.outline)
  })
})
