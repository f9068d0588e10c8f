/** What the pull does to the neck, against what is usually let pass; the loads themselves are proved with `loads/`. */
import { describe, expect, test } from 'vitest'
import { check, loadsOf, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { merged, pullOf, strung, weighed } from './breaking/case.ts'
import { at, graded, to4, told } from './told.ts'

/** The neck 26 thick, let in flush: its underside 26 under the lid's face. The board's top 5 over it; the box begins at 464.7. */
const OUTSIDE = 'section (0, 5) to (464.7, -26)'

describe.each([
  ['neck-bow', 'neckBow', 'bow'],
  ['nut-rise', 'nutRise', 'nutRise'],
  ['action-change', 'actionChange', 'actionChange'],
] as const)('%s', (rule, limit, name) => {
  const measured = Math.abs(loadsOf(solve(designOf(strung()))).neck?.[name] ?? Number.NaN)
  const saysOf = (value: number) => told(rule, strung({ limits: { [limit]: value } }))

  test('is shown on the neck from nut to box, on either side of its limit', () => {
    expect(saysOf(measured + 1e-3)).toEqual([
      `clear neck: ${to4(measured)} of ${to4(measured + 1e-3)}, ${OUTSIDE}`,
    ])
    expect(saysOf(measured - 1e-3)).toEqual([
      `care neck: ${to4(measured)} of ${to4(measured - 1e-3)}, ${OUTSIDE}`,
    ])
  })

  test('is not reckoned without pitches, or where the neck folds', () => {
    expect(told(rule, {})).toEqual([])
    expect(told(rule, FOLDS)).toEqual([])
  })
})

/** A lath of 4 under a cable. */
const FOLDS = weighed(300, 40, {
  neck: { ends: 'at a block', relief: 0, thickness: 4 },
  board: { fitted: false },
})

describe('a neck that gives way', () => {
  test('is told by the whole pull', () => {
    expect(told('neck-gives-way', FOLDS)).toEqual([
      `stop neck: ${to4(pullOf(300, 40))} of nothing, section (0, 0) to (462.2, -4)`,
    ])
  })

  test('is none where it stands, or where nothing pulls', () => {
    expect(told('neck-gives-way', strung())).toEqual([])
    expect(told('neck-gives-way', {})).toEqual([])
  })
})

describe('stress in the neck', () => {
  const weakest = loadsOf(solve(designOf(strung()))).neck?.weakest
  const share = weakest?.share ?? Number.NaN
  const saysOf = (neckStress: number, neckStressMost: number) =>
    told('neck-stress', strung({ limits: { neckStress, neckStressMost } }))
  const where = `section ${at(weakest?.x ?? 0, 0)} to ${at(weakest?.x ?? 0, -26)}`

  test('is shown through the neck where it is weakest', () => {
    expect(saysOf(share + 1e-3, 1)).toEqual([`clear neck: ${to4(share)} of ${to4(share + 1e-3)}, ${where}`])
    expect(saysOf(share - 1e-3, 1)).toEqual([`care neck: ${to4(share)} of ${to4(share - 1e-3)}, ${where}`])
  })

  test('more than the most is a stop, held against that', () => {
    expect(saysOf(0.01, share + 1e-3)).toEqual([`care neck: ${to4(share)} of 0.01, ${where}`])
    expect(saysOf(0.01, share - 1e-3)).toEqual([`stop neck: ${to4(share)} of ${to4(share - 1e-3)}, ${where}`])
    // What is wanted above the most counts up to there.
    expect(saysOf(0.9, share + 1e-3)).toEqual([`clear neck: ${to4(share)} of ${to4(share + 1e-3)}, ${where}`])
  })

  test('follows a raised neck', () => {
    const [line] = told('neck-stress', strung({ neck: { rise: 3 } }))
    expect(line).toMatch(/, section \(-?[\d.]+, 3\) to \(-?[\d.]+, -23\)$/)
  })
})

describe('the head at its root', () => {
  const root = (headstock: Stated, ...more: Stated[]) => told('head-root', strung({ headstock }, ...more))

  test.each([
    // The thinner of head and what is left of a neck of 26 under its step; the slope ends 20 behind the nut's back at -5.
    [{ thickness: 12 }, 'clear headstock: 12 of 12, section (-25, -14) to (-25, -26)'],
    [{ thickness: 11.9 }, 'care headstock: 11.9 of 12, section (-25, -14.1) to (-25, -26)'],
    [{ thickness: 9, reinforcement: 3 }, 'clear headstock: 12 of 12, section (-25, -14) to (-25, -26)'],
  ])('%j', (headstock, line) => expect(root(headstock)).toEqual([line]))

  test('of a stepped head is what the step leaves', () => {
    expect(root({ form: 'stepped', step: 15, thickness: 14 })[0]).toMatch(/^care headstock: 11 of 12,/)
    expect(root({ form: 'stepped', step: 10, thickness: 14 })[0]).toMatch(/^clear headstock: 14 of 12,/)
  })

  test('is asked for once it is known what pulls', () => {
    expect(graded('head-root', { headstock: { thickness: 10 } })).toEqual([])
    expect(graded('head-root', merged(strung(), { headstock: { thickness: 10 } }))).toEqual(['care'])
  })
})

describe('what would make the neck hold', () => {
  const said = (...more: Stated[]) => {
    const layout = solve(designOf(strung(...more)))
    const finding = check(layout).find(({ rule }) => rule === 'neck-bow')
    if (!finding) throw new Error('nothing is said')
    return sentenceOf(finding, layout)
  }
  const weak = { limits: { neckBow: 0.08 } }

  test('a thicker blank, where one does; a stiffer wood, and a bar where there is none', () => {
    expect(said(weak)).toMatch(
      /A blank (2[6-9]|3\d)\.\d mm thick would hold; so may a stiffer wood or a bar in the neck\.$/,
    )
    expect(said(weak, { neck: { bar: { kind: 'steel bar' } }, limits: { neckBow: 0.01 } })).toMatch(
      /so may a stiffer wood\.$/,
    )
    expect(said({ limits: { neckBow: 0 } })).toContain('No thicker blank cures it by itself')
  })

  test('less relief, where a through neck has some', () => {
    expect(said(weak, { neck: { relief: 2 } })).toContain('less relief under the lid')
    expect(said(weak, { neck: { relief: 2, ends: 'at a block' } })).not.toContain('less relief')
    expect(said(weak)).not.toContain('less relief')
  })
})
