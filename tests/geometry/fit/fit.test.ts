/**
 * The fit table against exhaustive search: every row is solved and checked by itself, from a copy that shares nothing, and
 * the row must say the same to the last digit. What the rows share, and what they leave out, is so proved not to matter.
 */
import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import {
  apply,
  balanceOf,
  changeTo,
  check,
  checkDesign,
  type Design,
  type Finding,
  fittingOf,
  loadsOf,
  placesBetween,
  type Questions,
  questionsFor,
  type Row,
  reasonOf,
  reasonsOf,
  ruleOf,
  setOf,
  solve,
  soundOf,
  startingDesign,
} from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { PATIENCE } from '../../support/every-design.ts'
import { samples } from '../../support/samples.ts'

const rowsOf = (design: Design, asked: Partial<Questions> = {}): readonly Row[] => {
  const fitting = fittingOf(design, questionsFor(design, asked))
  while (fitting.step()) {
    // Each step is a row.
  }
  return fitting.rows
}

/** Rules that say nothing about the fit, listed here once more by hand. */
const ASIDE =
  /^(hand-stated|tuning-stated|survey-agrees|out-of-square|box-twist|tool-fits|web-left|wiring-.*)$/

/** What speaks against a candidate, found the long way: everything from nothing, all findings gone through. */
function byHand(base: Design, candidate: Design) {
  const layout = solve(structuredClone(candidate))
  const movable = new Set(base.things.filter((one) => !one.locked).map((one) => one.id))
  const findings = check(layout).filter((one) => !ASIDE.test(one.rule) && one.overruled === undefined)
  const own = findings.filter((one) => !one.about.some((id) => movable.has(id)))
  const share = ({ margin, limit }: Finding) => (margin ?? 0) / Math.max(Math.abs(limit ?? 0), 1e-6)
  const measures = own.filter(
    (one) =>
      one.margin !== null &&
      one.grade !== 'note' &&
      !(one.grade === 'clear' && (one.unit === 'count' || (one.limit === 0 && one.measured === 0))),
  )
  return {
    layout,
    stops: own.filter((one) => one.grade === 'stop').map((one) => one.rule),
    cares: own.filter((one) => one.grade === 'care').length,
    least: measures.length === 0 ? null : Math.min(...measures.map(share)),
    things: findings.filter((one) => one.about.some((id) => movable.has(id))),
    findings,
  }
}

const toMillionth = (value: number | undefined) => value && Math.round(value * 1e6) / 1e6

/** What is wrong with a row, held against the long way. */
function wrongWith(base: Design, row: Row): string[] {
  const { numbers } = row
  const long = byHand(base, row.design)
  const at = `${row.scale} × ${row.count} × ${row.place}`
  if (!numbers)
    return row.impossible !== null && long.stops.includes(row.impossible)
      ? []
      : [`${at}: said to be impossible by ${row.impossible}; check stops at ${long.stops.join()}`]
  const { layout } = long
  const { neck, totalPull } = loadsOf(layout)
  const share = numbers.tightest
    ? (numbers.tightest.margin ?? 0) / Math.max(Math.abs(numbers.tightest.limit ?? 0), 1e-6)
    : null
  const wall = long.findings.find((one) => one.rule === 'saddle-to-tail-wall')?.measured
  const pairs: [string, number | null | undefined, number | null | undefined][] = [
    ['cares', numbers.cares, long.cares],
    ['tightest', share, long.least],
    ['pull', numbers.pull, totalPull],
    ['bow', numbers.bow, neck?.bow ?? null],
    ['mass', numbers.mass, balanceOf(layout).mass],
    ['balance', numbers.balance, balanceOf(layout).fromWall],
    ['air', numbers.air?.hertz, toMillionth(soundOf(layout).note?.hertz)],
    ['to the wall', numbers.saddleToWall, wall],
    ['overall', numbers.overall, Math.max(layout.neck.x1, layout.box.x1) - layout.neck.x0],
    ['scale', layout.design.scale.length, row.scale],
    ['count', layout.strings.length, row.count],
  ]
  const before = new Map(check(solve(base)).map((one) => [one.key, one.grade]))
  const graver = long.things.filter(
    ({ key, grade }) =>
      (grade === 'stop' && before.get(key) !== 'stop') ||
      (grade === 'care' && !['stop', 'care'].includes(before.get(key) ?? '')),
  )
  const names = (list: readonly { rule: string; about: readonly string[] }[]) =>
    list.map((one) => `${one.rule} ${one.about.join(' ')}`).sort()
  const inTheWay = [names(numbers.inTheWay), names(graver)].map((list) => list.join('; '))
  return [
    ...(long.stops.length > 0 ? [`${at}: said to fit; check stops at ${long.stops.join()}`] : []),
    ...pairs
      .filter(([, a, b]) => !Object.is(a, b))
      .map(([what, a, b]) => `${at}: ${what} ${a}, and not ${b}`),
    ...(inTheWay[0] === inTheWay[1] ? [] : [`${at}: in the way ${inTheWay[0]}, and not ${inTheWay[1]}`]),
  ]
}

const FEW = { scales: [431.8, 558.8, 635, 762], counts: [1, 3, 4], places: [0.55, 0.7, 0.82] }

/** Enough that rows of one place differ by scale alone, by strings alone and by both. */
const SHARED = { scales: [558.8, 635], counts: [3, 4], places: [0.62, 0.78] }

describe('the fit table against every candidate by itself', () => {
  it.each(samples().map((one, index) => [one.name, one.design, index] as const))(
    '%s',
    (_, design, index) => {
      const strings = index % 2 === 0 ? 'chosen for each' : 'as stated'
      const own = {
        scales: [...SHARED.scales, design.scale.length],
        counts: [...SHARED.counts, design.strings.count],
      }
      const rows = rowsOf(design, { ...SHARED, ...own, strings })
      expect(rows.length).toBeGreaterThanOrEqual(8)
      expect(rows.flatMap((row) => wrongWith(design, row)).slice(0, 5)).toEqual([])
      for (const row of rows) {
        const changed = apply(design, changeTo(design, row.design))
        expect(checkDesign(changed)).toMatchObject({ ok: true })
        expect(changed.saddle.place).toEqual({ share: row.place })
      }
    },
    PATIENCE,
  )
})

describe('what stands in its place is the tightest of rows that share it', () => {
  // Everything else has room, so that what is locked on the lid decides.
  const design = startingDesign({ length: 240, width: 200, depth: 60, strings: 3, hand: 'right' })
  const asked = { scales: [609.6, 635, 647.7, 663.6], counts: [3, 4, 6], places: [0.62, 0.7] }
  const withHole = (hole: object): Design => {
    const { things, neck } = designOf({ things: [hole as never], neck: { length: 1500 } })
    return { ...design, things, neck: { ...design.neck, length: neck.length } }
  }
  const hole = { kind: 'sound-hole', id: 'hole', face: 'lid', diameter: 24, locked: true }
  const holes: readonly (readonly [string, object])[] = [
    ['beside the neck', { ...hole, along: 60, across: 31.4 + design.neck.width / 2 - 19 }],
    ['by the neck-end wall', { ...hole, along: 18.3, across: 70 }],
    ['by the tail-end wall', { ...hole, along: 221.3, across: 70 }],
    ['beside the longest saddle', { ...hole, along: 0.62 * 240, across: 46 }],
  ]
  it.each(holes)('%s', (_, one) => {
    const rows = rowsOf(withHole(one), asked)
    expect(rows.flatMap((row) => wrongWith(withHole(one), row))).toEqual([])
    const decided = rows.filter((row) => row.numbers?.tightest?.about.includes('hole') || row.impossible)
    expect(decided.length).toBeGreaterThan(2)
  })
})

describe('what fits and what does not', () => {
  const design = startingDesign({ length: 240, width: 180, depth: 60, strings: 3, hand: 'right' })

  it('asks every scale, count and place once', () => {
    const rows = rowsOf(design, FEW)
    expect(rows).toHaveLength(4 * 3 * 3)
    expect(new Set(rows.map((row) => `${row.scale} ${row.count} ${row.place}`)).size).toBe(36)
    expect(rows.some((row) => row.numbers)).toBe(true)
  })

  it('says of a box too shallow for any neck that nothing fits, and why', () => {
    // A neck of 19 mm hangs 19 mm under the lid of a box that is 14 mm deep inside.
    const shallow = designOf({ box: { length: 240, width: 180, depth: 20 } })
    const rows = rowsOf(shallow, FEW)
    expect(rows.every((row) => row.numbers === null)).toBe(true)
    const withNut = rows.filter((row) => row.impossible === 'room-under-neck')
    expect(withNut.length).toBeGreaterThan(0)
    expect(reasonOf(withNut[0] as Row)).toMatch(/too shallow: the neck runs into the base/)
    expect(reasonsOf(rows).reduce((sum, one) => sum + one.count, 0)).toBe(rows.length)
  })

  it('says of a box longer than the scale that the nut falls on it, without solving', () => {
    const long = designOf({ box: { length: 700, width: 180, depth: 60 } })
    const fitting = fittingOf(long, questionsFor(long, { scales: [330.2], counts: [3], places: [0.8] }))
    while (fitting.step()) {
      // One row.
    }
    expect(fitting.worked.solved).toBe(0)
    expect(reasonOf(fitting.rows[0] as Row)).toMatch(/The nut falls on the box/)
  })

  it('a thing that is locked in the way makes a row impossible; one that could be moved is told apart', () => {
    // Beside the neck, under the foot of a saddle at half the lid.
    const hole = { kind: 'sound-hole', id: 'hole', face: 'lid', along: 120, across: 36, diameter: 30 }
    const at = { scales: [635], counts: [3], places: [0.5] }
    const withHole = (locked: boolean) => ({
      ...design,
      neck: { ...design.neck, length: 1100 },
      things: designOf({ things: [{ ...hole, locked }] }).things,
    })
    const free = rowsOf(withHole(false), at)[0]
    expect(free?.numbers?.inTheWay.map((one) => `${one.grade} ${one.rule}`)).toContain(
      'stop saddle-to-opening',
    )
    const locked = rowsOf(withHole(true), at)[0]
    expect(locked).toMatchObject({ numbers: null, impossible: 'saddle-to-opening' })
  })

  it('says what it took for granted about the strings', () => {
    const [own, other, many] = rowsOf(design, { scales: [635], counts: [3, 4, 9], places: [0.7] })
    expect(setOf(own as Row)).toMatchObject({ from: 'your tuning, gauges chosen for it' })
    expect(setOf(own as Row).pitches.split(' ')).toEqual(design.stringing.tuning)
    expect(setOf(other as Row).pitches.split(' ')).toHaveLength(4)
    expect(other?.design.headstock.bassTuners).toBe(2)
    expect(many?.strung).toBe('not known')
    const [stated] = rowsOf(design, { scales: [600], counts: [3], places: [0.7], strings: 'as stated' })
    expect(stated?.design.strings.gauges).toEqual(design.strings.gauges)
  })

  it('the same questions give the same rows', () => {
    const plain = (rows: readonly Row[]) => rows.map(({ design: _, ...row }) => row)
    expect(plain(rowsOf(structuredClone(design), FEW))).toEqual(plain(rowsOf(design, FEW)))
  })
})

/** The widest of all tightest margins, as a share of its limit; less than anything where nothing fits. */
function bestMargin(rows: readonly Row[]): number {
  const shares = rows.flatMap(({ numbers }) =>
    numbers?.tightest
      ? [(numbers.tightest.margin ?? 0) / Math.max(Math.abs(numbers.tightest.limit ?? 0), 1e-6)]
      : [],
  )
  return Math.max(Number.NEGATIVE_INFINITY, ...shares)
}

describe('adding room never makes the best margin worse', () => {
  const asked = { scales: [558.8, 635], counts: [3, 4], places: [0.6, 0.75] }
  const box = fc.record({
    length: fc.integer({ min: 180, max: 320 }),
    width: fc.integer({ min: 140, max: 220 }),
    depth: fc.integer({ min: 35, max: 80 }),
  })
  const wider = fc.record({ depth: fc.integer({ min: 0, max: 40 }), blank: fc.integer({ min: 0, max: 300 }) })

  it(
    'a deeper box, a longer blank, or more to choose from',
    () => {
      let fitted = 0
      fc.assert(
        fc.property(box, wider, (sizes, more) => {
          const design = startingDesign({ ...sizes, strings: 3, hand: 'right' })
          const roomier: Design = {
            ...design,
            box: { ...design.box, depth: design.box.depth + more.depth },
            neck: { ...design.neck, length: Math.min(2500, design.neck.length + more.blank) },
          }
          const best = bestMargin(rowsOf(design, asked))
          if (Number.isFinite(best)) fitted += 1
          expect(bestMargin(rowsOf(roomier, asked))).toBeGreaterThanOrEqual(best - 1e-9)
          const wide = {
            scales: [...asked.scales, 609.6],
            counts: asked.counts,
            places: [...asked.places, 0.68],
          }
          expect(bestMargin(rowsOf(design, wide))).toBeGreaterThanOrEqual(best - 1e-9)
        }),
        { seed: 635, numRuns: 12 },
      )
      // Of a box that nothing fits the law would say nothing.
      expect(fitted).toBeGreaterThan(6)
    },
    PATIENCE,
  )
})

describe('what rows share is worked out once', () => {
  const design = startingDesign({ length: 240, width: 180, depth: 60, strings: 3, hand: 'right' })
  const roomy: Design = { ...design, neck: { ...design.neck, length: 1500 } }
  const fitted = (asked: Partial<Questions>) => {
    const fitting = fittingOf(structuredClone(roomy), questionsFor(roomy, asked))
    while (fitting.step()) {
      // Each step is a row.
    }
    return fitting
  }
  const many = { scales: [558.8, 609.6, 635, 685.8], counts: [3, 4], places: placesBetween(0.55, 0.8, 6) }

  it('a rule about what lies within the box is measured once for a place, one about strings once for a set', () => {
    const measured = (name: string) => {
      const rule = ruleOf(name)
      const asked = vi.spyOn(rule, 'measure')
      const { rows } = fitted(many)
      // Once for the design that is asked about, which is checked whole.
      const calls = asked.mock.calls.length - 1
      asked.mockRestore()
      return { calls, fits: rows.filter((row) => row.numbers).length }
    }
    // What is shown of a rule is measured again on the row itself; these rules are seldom the tightest.
    expect(measured('wall-beside-slot').calls).toBeLessThanOrEqual(2 * 6)
    expect(measured('opening-to-edge').calls).toBeLessThanOrEqual(2 * 6)
    expect(measured('string-slack').calls).toBe(4 * 2)
    const bow = measured('neck-bow')
    expect(bow.fits).toBe(4 * 2 * 6)
    expect(bow.calls).toBe(bow.fits)
  })

  it('strings that break wherever the saddle stands are tried at one place', () => {
    const strained: Design = { ...roomy, limits: { ...roomy.limits, stringBreaking: 0.01 } }
    const fitting = fittingOf(strained, questionsFor(strained, many))
    while (fitting.step()) {
      // Each step is a row.
    }
    expect(fitting.rows.every((row) => row.impossible === 'string-breaking')).toBe(true)
    expect(fitting.worked.solved).toBe(4 * 2)
    // Every row says so of its own accord.
    for (const row of fitting.rows)
      expect(check(solve(structuredClone(row.design))).some((one) => one.rule === 'string-breaking')).toBe(
        true,
      )
  })
})
