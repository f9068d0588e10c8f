import { describe, expect, test } from 'vitest'
import { check, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { forEveryDesign, PATIENCE } from '../../support/every-design.ts'

describe('for every design', { timeout: PATIENCE }, () => {
  test('frets rise from the nut, none reaches the saddle line', () => {
    forEveryDesign((design) => {
      const { frets, saddle } = solve(design)
      return frets.flatMap((fret, index) => {
        const before = frets[index - 1]?.fromNut ?? (fret.number === 0 ? -1 : 0)
        return fret.fromNut > before && fret.fromNut < saddle.x + 10
          ? []
          : [`fret ${fret.number} is at ${fret.fromNut}`]
      })
    })
  })

  test('a fret an octave above another leaves half of what that one leaves', () => {
    let octaves = 0
    forEveryDesign((design) => {
      const { frets } = solve(design)
      const left = (cents: number) => {
        const fret = frets.find((one) => Math.abs(one.cents - cents) < 1e-9)
        return fret && design.scale.length - fret.fromNut
      }
      return frets.flatMap((fret) => {
        const above = left(fret.cents + 1200)
        if (above === undefined) return []
        octaves += 1
        const here = design.scale.length - fret.fromNut
        return Math.abs(above - here / 2) < 1e-9 ? [] : [`${here} and an octave up ${above}`]
      })
    })
    expect(octaves).toBeGreaterThan(1000)
  })

  test('saddle, lid and scale agree on where the box lies', () => {
    forEveryDesign((design) => {
      const { saddle, panels, box, real } = solve(design)
      const line = panels.lid.originX + saddle.along
      const inset = panels.lid.originX - box.x0
      // Measured square to the wall; the centreline may cross a surveyed one at an angle.
      const askew = real ? Math.hypot(1, real.outside.edges.neckEnd.slope) : 1
      const behind = (design.box.walls.neckEnd + design.box.lid.play) * askew
      const wanted = design.box.lid.fit === 'on the walls' ? 0 : behind
      return [
        ...(Math.abs(line - (design.scale.length + design.saddle.setback)) > 1e-9
          ? [`the saddle falls at ${line}`]
          : []),
        ...(Math.abs(inset - wanted) > 1e-9 ? [`the lid begins ${inset} behind the box`] : []),
      ]
    })
  })

  test('turns of a string are no more than a turn and never negative', () => {
    forEveryDesign((design) =>
      solve(design).strings.flatMap((one) =>
        [one.sideAngleAtNut, one.sideAngleAtSaddle]
          .filter((angle) => !(angle >= 0 && angle <= 2 * Math.PI))
          .map(String),
      ),
    )
  })

  test('outer strings span what was stated, at the nut and at the saddle', () => {
    forEveryDesign((design) => {
      const { strings } = solve(design)
      const [first, last] = [strings[0], strings.at(-1)]
      if (!first || !last || strings.length !== design.strings.count) return ['strings are missing']
      if (strings.length === 1)
        return first.yAtNut === 0 && first.yAtSaddle === 0 ? [] : ['one string off the centreline']
      const off = Math.max(
        Math.abs(last.yAtNut - first.yAtNut - design.strings.spanAtNut),
        Math.abs(last.yAtSaddle - first.yAtSaddle - design.strings.spanAtSaddle),
      )
      return off < 1e-9 ? [] : [`off by ${off}`]
    })
  })
})

describe('the hand', () => {
  test('changes which way drawings turn and nothing else', () => {
    const [right, left] = (['right', 'left'] as const).map((hand) => solve(designOf({ hand })))
    expect([right?.up, left?.up]).toEqual([1, -1])
    expect({ ...left, up: 1, design: null }).toEqual({ ...right, design: null })
    expect(solve(designOf({ hand: 'not stated' })).up).toBe(1)
  })
})

describe('five thousand holes', () => {
  const COUNT = 5000
  const columns = 100
  // Two millimetres across, four apart: each has neighbours on all sides well within twice its limit of 8 mm.
  const things = Array.from({ length: COUNT }, (_, n) => ({
    kind: 'sound-hole',
    id: `h${n}`,
    along: 100 + 4 * (n % columns),
    across: 60 + 4 * Math.floor(n / columns),
    diameter: 2,
  }))
  const findings = check(solve(designOf({ box: { length: 700, width: 700 }, things })))

  test('are each held against the neighbour that crowds them, not against all others', () => {
    const pairs = findings.filter((one) => one.rule === 'between-openings')
    expect(pairs.length).toBeGreaterThanOrEqual(COUNT / 2)
    expect(pairs.length).toBeLessThanOrEqual(COUNT)
    for (const pair of pairs) expect(pair.measured).toBeCloseTo(2, 9)
    const named = new Set(pairs.flatMap((one) => one.about))
    expect(named.size).toBe(COUNT)
  })

  test('bring no more findings each than there are rules about a hole', () => {
    expect(findings.length).toBeLessThan(6 * COUNT)
  })
})
