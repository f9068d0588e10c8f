/** What every builder of this trade knows. Common practice, no source, unless a test says otherwise. */
import { describe, expect, test } from 'vitest'
import {
  type Design,
  headRootOf,
  loadsOf,
  pureTuningOf,
  reinforcementNeeded,
  solve,
  startingDesign,
  thinnestStock,
} from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { strung } from '../checks/breaking/case.ts'

/** Thousandths of an inch in millimetres. */
const mils = (...gauges: number[]) => gauges.map((gauge) => (gauge / 1000) * 25.4)

const pulls = (design: Design) =>
  loadsOf(solve(design)).strings.map(({ atPitch }) => atPitch?.tension ?? Number.NaN)

test('wound .028 and plain .018, .014 and .011 at G3 D3 … E4 on 24 inches pull 60 to 90 N, alike within a quarter', () => {
  const design = designOf({
    scale: { length: 24 * 25.4 },
    strings: { count: 4, gauges: mils(28, 18, 14, 11) },
    stringing: { tuning: ['D3', 'G3', 'B3', 'E4'] },
  })
  const found = pulls(design)
  expect(loadsOf(solve(design)).strings.map(({ make }) => make.construction)).toEqual([
    'wound',
    'plain',
    'plain',
    'plain',
  ])
  for (const pull of found) {
    expect(pull).toBeGreaterThan(60)
    expect(pull).toBeLessThan(90)
  }
  expect(Math.max(...found) / Math.min(...found)).toBeLessThan(1.25)
})

test('four steel strings ask for a stiffer neck than three', () => {
  const stock = (tuning: string[], gauges: number[]) =>
    thinnestStock(
      solve(
        designOf(
          strung({ strings: { count: tuning.length, gauges }, stringing: { tuning }, neck: { relief: 2 } }),
        ),
      ),
    ) ?? Number.NaN
  const three = stock(['G2', 'D3', 'G3'], mils(38, 24, 17))
  const four = stock(['G2', 'D3', 'G3', 'B3'], mils(38, 24, 17, 13))
  expect(four).toBeGreaterThan(three)
  expect(startingDesign({ strings: 4, scale: 650 }).neck.thickness).toBeGreaterThanOrEqual(20)
})

describe('a neck carved thinner at the head', () => {
  const head = (thickness: number, reinforcement = 0) =>
    designOf(strung({ headstock: { thickness, reinforcement } }))

  test('wants material glued on there, and enough of it is enough', () => {
    const glue = reinforcementNeeded(solve(head(8)))
    expect(glue).toBeGreaterThan(2)
    expect(glue).toBeLessThan(8)
    expect(reinforcementNeeded(solve(head(14)))).toBe(0)
    expect(headRootOf(head(8, glue ?? 0))).toBeGreaterThanOrEqual(12)
  })

  test('is more strained there, and less with a piece glued on', () => {
    const share = (design: Design) => loadsOf(solve(design)).neck?.head?.share ?? Number.NaN
    expect(share(head(8))).toBeGreaterThan(2 * share(head(14)))
    expect(share(head(8, 6))).toBeLessThan(share(head(8)))
  })
})

test('the third of an open major chord tuned pure rests about 14 cents under the tuner’s mark', () => {
  const pure = pureTuningOf(
    solve(designOf(strung({ strings: { count: 4 }, stringing: { tuning: ['G2', 'D3', 'G3', 'B3'] } }))),
  )
  // 5/2 against 16 semitones: 1586.314 - 1600. H. von Helmholtz, "On the Sensations of Tone", transl. A. J. Ellis, App. XX.
  expect(pure?.strings.map((one) => Number(one.offset.toFixed(2)))).toEqual([0, 1.96, 0, -13.69])
  expect(pure?.rootName).toBe('G2')
  expect(pure?.strings[3]?.hertz).toBeCloseTo(97.9989 * 2.5, 2)
  expect(pure?.beatsPure.slice(0, 2).map((beats) => Number(beats?.toFixed(6)))).toEqual([0, 0])
  expect(pure?.beatsAsStated[0] ?? 0).toBeGreaterThan(0.1)
})

test('a string thinner, a pitch lower or a scale shorter pulls less', () => {
  const base = designOf(strung())
  const [bass = 0] = pulls(base)
  expect(pulls(designOf(strung({ strings: { gauges: mils(36) } })))[0]).toBeLessThan(bass)
  expect(pulls(designOf(strung({ stringing: { tuning: ['F2', 'D3', 'G3'] } })))[0]).toBeLessThan(bass)
  expect(pulls(designOf(strung({ scale: { length: 600 } })))[0]).toBeLessThan(bass)
})
