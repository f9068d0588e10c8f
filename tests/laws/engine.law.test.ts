/** What holds of every design there can be, however foolish: the engine answers, soundly, and always the same. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { idPattern } from '../../geometry/design/place.ts'
import {
  type Chain,
  check,
  checkDesign,
  type Design,
  FACES,
  faults,
  KINDS,
  partsOf,
  ruleOf,
  sentenceOf,
  solve,
} from '../../geometry/index.ts'
import { arbitraryDesign } from '../support/arbitraries.ts'
import { troublesOf } from '../support/contours.ts'
import { fromFile } from '../support/designs.ts'
import { contoursOf, numbersOf } from '../support/walk.ts'

const forEveryDesign = (prove: (design: Design) => void, numRuns = 500) =>
  fc.assert(fc.property(arbitraryDesign, prove), { seed: 635, numRuns })

test('the designs drawn are of many sorts, or these laws would prove little', () => {
  const designs = fc.sample(arbitraryDesign, { seed: 635, numRuns: 500 })
  const share = (is: (design: Design) => boolean) => designs.filter(is).length / designs.length
  const found = (design: Design) => check(solve(design)).filter((one) => one.rule !== 'hand-stated')
  expect(share((one) => found(one).every(({ grade }) => grade !== 'stop'))).toBeGreaterThan(0.05)
  expect(share((one) => found(one).some(({ grade }) => grade === 'stop'))).toBeGreaterThan(0.3)
  expect(share((one) => one.things.length > 2)).toBeGreaterThan(0.3)
  expect(share((one) => solve(one).problems.length > 0)).toBeGreaterThan(0.05)
  for (const face of FACES) expect(share((one) => one.things.some((thing) => thing.face === face))).toBeGreaterThan(0.03)
  for (const kind of Object.keys(KINDS))
    expect(share((one) => one.things.some((thing) => thing.kind === kind))).toBeGreaterThan(0.2)
  const rules = new Set(designs.flatMap((one) => check(solve(one)).map(({ rule, grade }) => `${rule} ${grade}`)))
  expect(rules.size).toBeGreaterThan(80)
})

describe('for every design', () => {
  test('all numbers of layout, parts and findings are finite', () => {
    forEveryDesign((design) => {
      const layout = solve(design)
      const { count, unsound } = numbersOf({ layout, parts: partsOf(layout), findings: check(layout) })
      expect(unsound).toEqual([])
      expect(count).toBeGreaterThan(500)
    })
  })

  test('what is cut or taken away is closed, simple and counter-clockwise', () => {
    forEveryDesign((design) => {
      for (const part of partsOf(solve(design))) {
        const cut = part.operations.flatMap((one) => (one.kind === 'cut' || one.kind === 'recess' ? [one.contour] : []))
        for (const contour of [part.outline, ...cut]) {
          expect([part.id, ...troublesOf(contour), ...faults(contour)]).toEqual([part.id])
        }
      }
    })
  })

  test('what is drawn has a length: lines, slots, holes, words', () => {
    forEveryDesign((design) => {
      for (const part of partsOf(solve(design))) {
        expect(part.thickness).toBeGreaterThan(0)
        for (const one of part.operations) {
          expect(one.of).not.toBe('')
          if (one.kind === 'drill') expect(one.diameter).toBeGreaterThan(0)
          if (one.kind === 'recess') expect(one.depth).toBeGreaterThan(0)
          if (one.kind === 'note') expect(one.text).not.toBe('')
          if (one.kind === 'slot') expect(Math.hypot(one.to.x - one.from.x, one.to.y - one.from.y)).toBeGreaterThan(1e-3)
          if (one.kind === 'datum') expect(lengthOf(one.line)).toBeGreaterThan(1e-3)
        }
      }
    })
  })

  test('outlines of things are sound, and openings lie within what a thing takes up', () => {
    forEveryDesign((design) => {
      for (const { bounds, openings, footprint } of solve(design).placed) {
        for (const contour of [...openings, footprint]) expect([...troublesOf(contour), ...faults(contour)]).toEqual([])
        for (const { contour } of contoursOf(openings)) {
          const inner = solveBounds(contour)
          expect(inner.minX).toBeGreaterThanOrEqual(bounds.minX - 1e-9)
          expect(inner.maxY).toBeLessThanOrEqual(bounds.maxY + 1e-9)
        }
      }
    })
  })

  test('every finding has a name of its own, a place and a sentence', () => {
    forEveryDesign((design) => {
      const layout = solve(design)
      const findings = check(layout)
      expect(new Set(findings.map((one) => one.key)).size).toBe(findings.length)
      for (const finding of findings) {
        const { from, to } = finding.where
        expect([from.x, from.y, to.x, to.y].filter(Number.isFinite)).toHaveLength(4)
        const sentence = sentenceOf(finding, layout)
        expect(sentence).toMatch(/^\S(.|\n)*\.$/u)
        const spoken = design.things.reduce((text, { name }) => (name ? text.replaceAll(name, '…') : text), sentence)
        expect(spoken).not.toMatch(/NaN|undefined|\bnull\b|Infinity|\[object/)
        if (ruleOf(finding.rule).unit === 'mm') expect(sentence).toContain(design.units.display === 'mm' ? ' mm' : ' in')
      }
    })
  })

  test('what a finding is about is a thing, or a name that no thing can bear', () => {
    forEveryDesign((design) => {
      const ids = new Set<string>(design.things.map((one) => one.id))
      for (const name of check(solve(design)).flatMap((one) => one.about)) {
        if (ids.has(name)) continue
        const thing = { kind: 'sound-hole', id: name }
        expect([name, checkDesign({ format: 'lidwright', version: 1, things: [thing] }).ok]).toEqual([name, false])
        expect(name).not.toBe('')
      }
      for (const id of ids) expect(id).toMatch(idPattern)
    }, 200)
  })

  test('the same design, made anew, gives the same answers to the last digit', () => {
    forEveryDesign((design) => {
      const [one, other] = [solve(design), solve(structuredClone(design))]
      expect(other).not.toBe(one)
      expect(JSON.stringify(plain(other))).toBe(JSON.stringify(plain(one)))
    }, 300)
  })

  test('a design read back from its own text gives the same answers', () => {
    forEveryDesign((design) => {
      const read = fromFile(design)
      expect(read).toEqual(design)
      expect(JSON.stringify(plain(solve(read)))).toBe(JSON.stringify(plain(solve(design))))
    }, 300)
  })

  test('solve, check and partsOf leave the design as it was', () => {
    forEveryDesign((design) => {
      const before = JSON.stringify(design)
      const layout = solve(freeze(design))
      check(layout)
      partsOf(layout)
      expect(JSON.stringify(design)).toBe(before)
    }, 200)
  })
})

const plain = (layout: ReturnType<typeof solve>) => ({
  ...layout,
  placed: layout.placed.map(({ kind, ...one }) => ({ ...one, kind: kind.kind })),
  parts: partsOf(layout),
  findings: check(layout),
})

function lengthOf({ vertices }: Chain): number {
  const [first, last] = [vertices[0], vertices.at(-1)]
  return first && last ? Math.hypot(first.x - last.x, first.y - last.y) : 0
}

function solveBounds(contour: Parameters<typeof faults>[0]) {
  const points = contour.shape === 'circle' ? [contour.centre] : contour.vertices
  return { minX: Math.min(...points.map((one) => one.x)), maxY: Math.max(...points.map((one) => one.y)) }
}

function freeze<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(freeze)
  }
  return value
}
