import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference, settle } from '../../app/state/settle.ts'
import { apply, type Change, compose, type Design, invert, isEmpty } from '../../geometry/index.ts'
import { AWAY, applied, changeOf, designs, pathsOf, picks } from './random-changes.ts'

const some = fc.array(picks, { maxLength: 6 })
const throughJson = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value))

/** Everything that must hold of one change of one design, proved at once. */
function holds(design: Design, change: Change): void {
  const before = throughJson(design)
  const after = apply(design, change)
  expect(design, 'the design itself is left as it was').toEqual(before)
  expect(apply(after, invert(change)), 'the inverse takes it back').toEqual(design)
  expect(apply(design, invert(invert(change))), 'turned twice it is the same').toEqual(after)
  expect(apply(design, throughJson(change)), 'it survives JSON').toEqual(throughJson(after))
  expect(apply(after, throughJson(invert(change))), 'so does its inverse').toEqual(throughJson(design))
  if (change.edits.length < 2)
    expect(isEmpty(compose(change, invert(change))), 'one edit and its inverse are none').toBe(true)
  expect(apply(design, compose(change, invert(change))), 'there and back is nothing').toEqual(design)
}

describe.each(Object.entries(designs))('changes of the %s design', (_name, design) => {
  test('a change can be taken back, survives JSON and leaves the design as it was', () => {
    fc.assert(fc.property(some, (picked) => holds(design, changeOf(design, picked))))
  })

  test('a change of one field is what the slow way of setting it gives', () => {
    fc.assert(
      fc.property(picks, (pick) => {
        const change = changeOf(design, [pick])
        const path = change.edits[0]?.path ?? []
        expect(apply(design, change)).toEqual(applied(design, path, pick.value))
      }),
    )
  })

  test('two changes composed are the two in turn', () => {
    fc.assert(
      fc.property(some, some, (one, two) => {
        const first = changeOf(design, one)
        const between = apply(design, first)
        const second = changeOf(between, two)
        const both = compose(first, second)
        expect(apply(design, both)).toEqual(apply(between, second))
        holds(design, both)
      }),
    )
  })

  test('composing is associative', () => {
    fc.assert(
      fc.property(some, some, some, (one, two, three) => {
        const a = changeOf(design, one)
        const b = changeOf(apply(design, a), two)
        const c = changeOf(apply(apply(design, a), b), three)
        const left = apply(design, compose(compose(a, b), c))
        expect(apply(design, compose(a, compose(b, c)))).toEqual(left)
        expect(left).toEqual(apply(apply(apply(design, a), b), c))
      }),
    )
  })

  test('many changes of one field composed stay one edit', () => {
    const steps = Array.from({ length: 50 }, (_, index) => index + 1)
    let at = design
    const whole = steps.reduce<Change>(
      (sofar, step) => {
        const next = {
          edits: [{ path: ['box', 'length'], before: at.box.length, after: design.box.length + step }],
        }
        at = apply(at, next)
        return compose(sofar, next)
      },
      { edits: [] },
    )
    expect(whole.edits).toEqual([
      { path: ['box', 'length'], before: design.box.length, after: design.box.length + 50 },
    ])
  })

  test('what a change does not touch is the same object as before', () => {
    fc.assert(
      fc.property(picks, (pick) => {
        const change = changeOf(design, [pick])
        const touched = change.edits[0]?.path[0]
        const after = apply(design, change)
        for (const key of Object.keys(design) as (keyof Design)[])
          if (key !== touched) expect(after[key]).toBe(design[key])
      }),
    )
  })

  test('the difference of two designs leads from the one to the other, and of equal ones is nothing', () => {
    fc.assert(
      fc.property(some, (picked) => {
        const other = apply(design, changeOf(design, picked))
        const between = difference(design, other)
        expect(apply(design, between)).toEqual(other)
        holds(design, between)
        expect(difference(other, structuredClone(other)).edits).toEqual([])
      }),
    )
  })
})

test('things taken from anywhere in the list come back where they were', () => {
  const design = designs.listed as Design
  fc.assert(
    fc.property(fc.subarray(design.things.slice()), (left) => {
      const settled = settle(design, { edits: [{ path: ['things'], before: design.things, after: left }] })
      if (!settled.ok) throw new Error(settled.sentence)
      expect(settled.design.things).toEqual(left)
      holds(design, settled.change)
    }),
  )
})

test('entries of a list put in and taken out by their index keep every law', () => {
  const start = {
    ...(designs.listed as Design),
    strings: { ...(designs.listed as Design).strings, gauges: [1, 2, 3] },
  }
  const step = fc.record({
    what: fc.constantFrom('in', 'out', 'set'),
    at: fc.nat(3),
    value: fc.integer({ min: 4, max: 9 }),
  })
  const path = (at: number) => ['strings', 'gauges', at]
  const editOf = (
    gauges: readonly number[],
    { what, at, value }: { what: string; at: number; value: number },
  ) => {
    const before = gauges[at]
    if (what === 'in' && at <= gauges.length) return { path: path(at), after: value }
    if (before === undefined) return null
    return what === 'out' ? { path: path(at), before } : { path: path(at), before, after: value }
  }
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 8 }), (steps) => {
      let now: Design = start
      let all: Change = { edits: [] }
      for (const one of steps) {
        const made = editOf(now.strings.gauges, one)
        if (!made) continue
        const change = { edits: [made] }
        holds(now, change)
        all = compose(all, change)
        now = apply(now, change)
      }
      expect(apply(start, all)).toEqual(now)
      expect(apply(now, invert(all))).toEqual(start)
    }),
  )
})

test('the picks reach every sort of edit: set, taken away, put behind a list', () => {
  const design = designs.related as Design
  const seen = { set: 0, away: 0, behind: [] as string[] }
  const count = pathsOf(design).length
  for (let field = 0; field < count; field++) {
    for (const value of [1.5, AWAY]) {
      const one = changeOf(design, [{ field, value }]).edits[0]
      if (one === undefined) continue
      if (!('after' in one)) seen.away++
      else if ('before' in one) seen.set++
      else seen.behind.push(one.path.slice(0, -1).join('.'))
    }
  }
  expect(seen.set).toBeGreaterThan(50)
  expect(seen.away).toBeGreaterThan(50)
  expect(seen.behind).toEqual(
    expect.arrayContaining(['saddle.place.midway', 'strings.gauges', 'things', 'things.3.across.midway']),
  )
})
