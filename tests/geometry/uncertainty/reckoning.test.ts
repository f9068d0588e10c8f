import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  byWorstCase,
  check,
  type Design,
  dimensionsOf,
  measureAgain,
  measureAgainWords,
  reckoningOf,
  solve,
  type WorstCase,
  worstCasesOf,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { samples } from '../../support/samples.ts'

const worstOf = (design: Design, key: string): WorstCase => {
  const worst = worstCasesOf(solve(design)).get(key)
  if (!worst) throw new Error(`${key} has no worst case`)
  return worst
}

const toleranceOf = (stated: Stated, path: string) =>
  dimensionsOf(designOf(stated)).find((one) => one.path === path)?.tolerance

describe('a dimension is known to', () => {
  test('half a line of the rule: 1 mm, or the smallest fraction shown', () => {
    expect(toleranceOf({}, 'box.depth')).toBe(0.5)
    expect(toleranceOf({ units: { display: 'inches', fraction: 32 } }, 'box.depth')).toBeCloseTo(
      25.4 / 64,
      12,
    )
    expect(toleranceOf({ rule: { graduation: 0.5 } }, 'box.depth')).toBe(0.25)
  })

  test('what is stated for it', () => {
    expect(toleranceOf({ tolerances: { 'box.lid.thickness': 0.05 } }, 'box.lid.thickness')).toBe(0.05)
    expect(
      toleranceOf(
        { tolerances: { 'things.hole.along': 2 }, things: [{ kind: 'sound-hole', id: 'hole', along: 50 }] },
        'things.hole.along',
      ),
    ).toBe(2)
    expect(toleranceOf({ tolerances: { 'box.depth': 0 } }, 'box.depth')).toBeUndefined()
  })

  test('the root of the number of its readings better than one of them, and then length and width ask for nothing', () => {
    const box = {
      survey: {
        bass: [240, 240.2, 239.9, 240],
        treble: [240],
        neckEnd: [180],
        tailEnd: [180],
        diagonalFromBass: [300],
      },
    }
    expect(toleranceOf({ box }, 'box.survey.bass')).toBeCloseTo(0.25, 12)
    expect(toleranceOf({ box }, 'box.survey.treble')).toBe(0.5)
    expect(toleranceOf({ box }, 'box.length')).toBeUndefined()
    // With one end alone the stated length is still needed.
    expect(toleranceOf({ box: { survey: { neckEnd: [180] } } }, 'box.length')).toBe(0.5)
  })

  test('nothing where it is 0: flush, or not there, is meant exactly', () => {
    expect(toleranceOf({ brace: { height: 0 } }, 'brace.height')).toBeUndefined()
    expect(toleranceOf({}, 'limits.openingToEdge')).toBeUndefined()
  })
})

describe('the worst case of a margin', () => {
  test('adds up what stands between: a hole to the edge of the lid', () => {
    // Hole 60 off the centreline, 25 across, in a box 180 wide: 90 - 60 - 12.5 = 17.5; half of ±0.5, ±0.5, half of ±0.5.
    const design = designOf({
      things: [{ kind: 'sound-hole', id: 'hole', along: 120, across: 60, diameter: 25 }],
    })
    const worst = worstOf(design, 'opening-to-edge hole')
    expect(worst.tolerance).toBeCloseTo(0.25 + 0.5 + 0.25, 9)
    expect(worst.worst).toBeCloseTo(17.5 - 12 - 1, 9)
    expect(worst.doubtful).toBe(false)
    expect(worst.parts[0]).toMatchObject({ path: 'things.hole.across', tolerance: 0.5 })
  })

  test('a clearance of 3 mm measured with a rule good to 1 mm is not a clearance of 3 mm', () => {
    // A flush neck 19 thick over a base of 4: depth, base and neck may each be half a millimetre off.
    const room = (depth: number, graduation = 1) => {
      const design = designOf({ box: { depth }, rule: { graduation }, neck: { rise: 0 } })
      return worstOf(design, 'room-under-neck neck')
    }
    // 26 - 4 - 19 = 3, one over the limit of 2: 1.5 off at worst.
    expect(room(26).tolerance).toBeCloseTo(1.5, 9)
    expect(room(26).doubtful).toBe(true)
    expect(room(26, 0.5).doubtful).toBe(false)
    expect(room(30).doubtful).toBe(false)
  })

  test('names the dimension that matters most, and says what to do', () => {
    const design = designOf({ box: { depth: 26 }, tolerances: { 'box.depth': 0.9 } })
    const layout = solve(design)
    const finding = check(layout).find((one) => one.rule === 'room-under-neck')
    const worst = worstOf(design, 'room-under-neck neck')
    if (!finding) throw new Error('the room under the neck was not measured')
    expect(measureAgain(worst)?.path).toBe('box.depth')
    expect(measureAgainWords(finding, worst, layout)).toBe(
      'Measure this again: box, depth, good to 0.90 mm. With every tolerance against it this moves by 1.90 mm and may not hold.',
    )
  })

  test('one that fails and might not is doubtful too; one that is flush with its limit was meant so', () => {
    const fails = designOf({ box: { depth: 24.5 } })
    const worst = worstOf(fails, 'room-under-neck neck')
    expect(worst.worst).toBeLessThan(-0.5)
    expect(worst.doubtful).toBe(true)
    expect(worstOf(designOf({ box: { depth: 25 } }), 'room-under-neck neck').doubtful).toBe(false)
  })

  test('names the side to measure again in a surveyed box', () => {
    const survey = { bass: [240], treble: [240], neckEnd: [180], tailEnd: [180], diagonalFromBass: [300] }
    const design = designOf({
      box: { survey },
      tolerances: { 'box.survey.neckEnd': 3, 'things.hole.across': 0.1 },
      things: [{ kind: 'sound-hole', id: 'hole', along: 20, across: 64.5, diameter: 25 }],
    })
    expect(worstOf(design, 'opening-to-edge hole').parts.map((one) => one.path)).toContain(
      'box.survey.neckEnd',
    )
  })

  test('is never smaller than any sampled case, for margins that are straight in their dimensions', () => {
    const straight = [
      ...[
        'room-under-neck',
        'wall-under-slot',
        'wall-beside-slot',
        'opening-to-edge',
        'opening-to-neck',
        'opening-to-wall',
      ],
      ...[
        'blank-length',
        'tail-hole-web',
        'tail-hole-to-end',
        'strings-apart-at-nut',
        'saddle-to-tail-wall',
        'rim-ledge',
      ],
    ]
    for (const { design } of samples().slice(0, 4)) {
      const worst = worstCasesOf(solve(design))
      const dimensions = dimensionsOf(design)
      const margins = new Map(check(solve(design)).map((one) => [one.key, one]))
      let compared = 0
      fc.assert(
        fc.property(
          fc.array(fc.integer({ min: -1000, max: 1000 }), {
            minLength: dimensions.length,
            maxLength: dimensions.length,
          }),
          (shares) => {
            const off = dimensions.reduce<Design>((before, one, index) => {
              const share = (shares[index] ?? 0) / 1000
              const again = dimensionsOf(before).find((other) => other.path === one.path)
              return again ? again.changed(share * one.tolerance) : before
            }, design)
            for (const { key, rule, margin } of check(solve(off))) {
              const before = margins.get(key)
              const allowed = worst.get(key)
              if (!straight.includes(rule) || margin === null || before?.margin == null || !allowed) continue
              compared += 1
              // A square root over a millimetre of a lid bends by less than this.
              expect(before.margin - margin, key).toBeLessThanOrEqual(allowed.tolerance + 0.02)
            }
          },
        ),
        { numRuns: 25 },
      )
      expect(compared).toBeGreaterThan(100)
    }
  }, 60_000)
})

describe('the work', () => {
  const design = samples()[0]?.design ?? designOf()

  test('is two layouts for each dimension, and asking twice costs nothing', () => {
    const layout = solve(structuredClone(design))
    const reckoning = reckoningOf(layout)
    expect(reckoning.solved).toBe(0)
    worstCasesOf(layout)
    expect(reckoning.solved).toBe(2 * reckoning.total)
    expect(worstCasesOf(layout)).toBe(worstCasesOf(layout))
    expect(reckoningOf(layout).solved).toBe(2 * reckoning.total)
  })

  test('can be done a little at a time', () => {
    const layout = solve(structuredClone(design))
    const reckoning = reckoningOf(layout)
    reckoning.step()
    reckoning.step()
    expect([reckoning.done, reckoning.solved]).toEqual([2, 4])
    worstCasesOf(layout)
    expect(reckoning.solved).toBe(2 * reckoning.total)
    const whole = worstCasesOf(solve(structuredClone(design)))
    expect(JSON.stringify([...worstCasesOf(layout)])).toBe(JSON.stringify([...whole]))
  })

  test('stays within bounds among hundreds of things, the tightest first', () => {
    const things = Array.from({ length: 300 }, (_, index) => ({
      kind: 'screw',
      id: `screw-${index}`,
      along: 20 + (index % 60) * 15,
      across: 30 + Math.floor(index / 60) * 15,
    }))
    const layout = solve(
      designOf({
        box: { length: 960, width: 400 },
        things: [...things, { kind: 'sound-hole', id: 'tight', along: 300, across: 175.2, diameter: 25 }],
      }),
    )
    expect(reckoningOf(layout).total).toBeLessThanOrEqual(120)
    expect(
      worstCasesOf(layout)
        .get('opening-to-edge tight')
        ?.parts.map((one) => one.path),
    ).toContain('things.tight.across')
  }, 60_000)

  test('order: gravest, then doubtful, then by the worst case', () => {
    const layout = solve(designOf({ box: { depth: 26 } }))
    const worst = worstCasesOf(layout)
    const sorted = byWorstCase(check(layout), worst)
    expect(new Set(sorted)).toEqual(new Set(check(layout)))
    const clear = sorted.filter((one) => one.grade === 'clear')
    const firm = clear.findIndex((one) => !worst.get(one.key)?.doubtful)
    expect(clear.slice(firm).some((one) => worst.get(one.key)?.doubtful)).toBe(false)
    expect(clear.findIndex((one) => one.rule === 'room-under-neck')).toBeLessThan(firm)
  })
})
